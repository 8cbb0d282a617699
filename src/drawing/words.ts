import type { ThingId } from './buyers-things.ts';
import type { LegendId } from './lay-out.ts';
import type { LineUpItem } from './line-up.ts';

/** What the caller says: the room itself holds no words. Plain text, escaped here. */
export interface LineUpWords {
  /** Name and description of the whole picture. */
  title: string;
  description: string;
  /** A length in the reader's units. */
  length(metres: number): string;
  /** A round length, as a scale bar has it: "5 ft", "1 m". */
  bar(metres: number): string;
  /** What is drawn dashed, "assumed"; what the thin lines within an opening are, "room left on each side". */
  legend: Readonly<Record<LegendId, string>>;
  machine(item: LineUpItem): {
    name: string;
    /** Told under the name: "stands", "ask the dealer", "ruled out"; nothing where it isn't judged. */
    standing?: string;
    /** For who doesn't see the picture: sizes, what fits, and why it is ruled out. */
    description: string;
  };
  thing(id: ThingId): { name: string; description: string };
}
