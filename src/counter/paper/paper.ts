import type { TemplateResult } from 'lit';
import type { SheetSize } from './sizes.ts';

/** Something told on paper that is never split over two pages. */
export interface Part {
  /** What it is, for tests and styles. */
  id: string;
  body: TemplateResult;
  /** It may stand earlier than its place, to fill what is left of a page. */
  floats?: true;
}

/** What is to be printed, in ever fewer words. */
export interface Paper {
  size: SheetSize;
  language: string;
  direction: 'ltr' | 'rtl';
  /** Said at the foot of each page, before its number. */
  foot: string;
  columns: 1 | 2;
  /** The same, told from much to little: the first that fits is printed. */
  tellings: readonly (() => Told)[];
}

export interface Told {
  /** Stands across the first page. */
  head: Part;
  parts: readonly Part[];
}

/** More pages than this are no sheet to hand over. */
export const mostPages = 2;
