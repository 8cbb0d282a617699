import type { SheetKind } from '../finding.ts';

/** One documented heading. */
export interface Heading {
  /** Where it goes in an entry, as `hitch.lift610`, or `loaders[2].breakout` for the second loader. */
  field: string;
  heading: string;
  example: string;
}

/** The documented headings of a table. */
export const headingsOf = (_sheet: SheetKind): readonly Heading[] => [];
