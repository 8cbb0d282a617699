import type { Unit } from '../units/quantity.ts';
import type { SheetKind } from './finding.ts';
import type { Table } from './table.ts';

/** A column that was matched to a heading, or might be. */
export interface ColumnMatch {
  /** From 1. */
  column: number;
  /** As the file has it. */
  heading: string;
  /** What it was taken for; undefined where nothing is near enough. */
  field: string | undefined;
  /** The unit its bare numbers are in, where the heading says one. */
  unit: Unit | undefined;
  /** `exact`: the documented heading; `same`: another way to write it; `near`: a guess to be confirmed; `none`. */
  sure: 'exact' | 'same' | 'near' | 'none';
  /** Fields whose headings are nearest, the nearest first, each with its documented heading. */
  nearest: readonly { field: string; heading: string }[];
}

/** What a column is taken for; undefined leaves it out. */
export interface ColumnTaken {
  field: string;
  unit?: Unit;
}

/** One entry a column of the file, in its order. */
export type Mapping = readonly (ColumnTaken | undefined)[];

/** What each column of a table is taken for, with how sure that is. */
export function matchColumns(_table: Pick<Table, 'sheet' | 'headings'>): ColumnMatch[] {
  return [];
}

/** The matches as they are, for whoever has nothing to correct; a guess is taken too, and told by its reading. */
export const mappingOf = (matches: readonly ColumnMatch[]): Mapping =>
  matches.map(({ field, unit }) => (field === undefined ? undefined : { field, ...(unit && { unit }) }));

export type { SheetKind };
