/** What a dealer reads of what his buyers ask for. */
export interface DemandWords {
  title: string;
  /** How many requests there were, and how many of them were looked at. */
  requests(all: string): string;
  drawn(counted: string, all: string): string;
  unreadable(many: string): string;
  invented: string;
  served: string;
  toAsk: string;
  unserved: string;
  beyond: string;
  few: string;
  /** Of a count from which one that is not told could be worked out. */
  keptBack: string;
  /** A count, its share, and within what the share lies. */
  told(count: string, share: string): string;
  within(low: string, high: string): string;
  firstHeading: string;
  firstExplained: string;
  lackedHeading: string;
  lackedExplained: string;
  wouldHeading: string;
  wouldExplained: string;
  bringHeading: string;
  bringExplained: string;
  /** How near the best these come together: proven, beaten by others, or within the bound of the method. */
  isBest: string;
  better(machines: string, many: string): string;
  bound: string;
  bring(place: number, machine: string, more: string): string;
  alone(many: string): string;
  nobody: string;
  buyers: string;
  machine: string;
  need: string;
  method: string;
  privacy: string;
}
