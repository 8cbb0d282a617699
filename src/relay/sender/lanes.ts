/** Mails at once to one domain, to begin with. */
const first = 2;
/** Domains remembered while nothing goes to them. */
const mostRemembered = 1_000;

/** How much may be on its way to each domain at once: it grows while that goes well, and halves where a server asks for less. */
export class Lanes {
  readonly #most: number;
  readonly #lanes = new Map<string, { busy: number; limit: number }>();

  /** @param most  on the way in all */
  constructor(most: number) {
    this.#most = most;
  }

  enter(destination: string): void {
    const lane = this.#lanes.get(destination) ?? { busy: 0, limit: first };
    lane.busy += 1;
    this.#lanes.set(destination, lane);
  }

  leave(destination: string, how: 'well' | 'slower' | 'neither'): void {
    const lane = this.#lanes.get(destination)!;
    lane.busy -= 1;
    // By one for each round of successes, as one feels one's way up a line of unknown width.
    if (how === 'well') lane.limit = Math.min(this.#most, lane.limit + 1 / lane.limit);
    if (how === 'slower') lane.limit = Math.max(1, Math.floor(lane.limit) / 2);
    if (lane.busy === 0 && (this.#lanes.size > mostRemembered || (lane.limit >= first && lane.limit < first + 1))) this.#lanes.delete(destination);
  }

  /** Those that have enough. */
  full(): string[] {
    return [...this.#lanes].filter(([, { busy, limit }]) => busy >= Math.floor(limit)).map(([destination]) => destination);
  }
}
