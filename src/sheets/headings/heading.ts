import type { Kind } from '../../units/quantity.ts';

/** What a cell may hold. */
export type Takes =
  | { as: 'id' | 'text' | 'link' | 'yes-no' | 'whole' | 'year' | 'number' | 'share' | 'hours' | 'decibels' | 'day' | 'money' | 'pairs' }
  | { as: 'amount'; of: Kind; zero?: true }
  | { as: 'choice'; words: readonly string[]; numbers?: true }
  | { as: 'list'; each: Takes };

/**
 * What becomes of a row where this cell is faulty: by default the cell alone is left out, for then the figure is unknown.
 * `row` where its absence would speak for the machine or unit; `part` where the whole it belongs to would be wrong without it.
 */
export type IfBad = 'row' | 'part';

/** A heading of a table, as documented. */
export interface Heading {
  /**
   * Where it goes in an entry, as `hitch.lift610`. Of a thing there may be several of it is `loaders[].breakout`, and the
   * heading then takes a number behind the thing: `loader breakout`, `loader 2 breakout`.
   */
  field: string;
  heading: string;
  takes: Takes;
  /** A cell as one may write it. */
  example: string;
  /** Other words for it. */
  also?: readonly string[];
  /** Without it a row is no entry. */
  needed?: true;
  ifBad?: IfBad;
}

export const id = { as: 'id' } as const;
export const text = { as: 'text' } as const;
export const yesNo = { as: 'yes-no' } as const;
export const money = { as: 'money' } as const;
export const year = { as: 'year' } as const;
export const amount = <K extends Kind>(of: K) => ({ as: 'amount', of }) as const;
export const choice = (...words: readonly string[]) => ({ as: 'choice', words }) as const;
