import type { RefusalCode } from '../refusal.ts';

/** Why nothing was taken over, in three short sentences: what happened, why, and what to do. */
export interface SaidRefusal {
  what: string;
  why: string;
  mend: string;
}

/** What handing on says in a language. What is missing fails the type check. */
export interface HandoffWords {
  language: string;
  subject(dealer: string): string;
  /** Said behind a price: the day it was set. */
  priceOf(day: string): string;
  /** Stands above the link with the answers. */
  goOn: string;
  /** Said at the head of a mail that tells less than the whole. */
  shortened: Readonly<Record<'withLink' | 'alone', string>>;
  /** The cautions of all work in a sentence or two, where there is no room for them one by one. */
  cautionsInShort: string;
  /** What the QR code is, for who can't see it. */
  codeTitle: string;
  /** Said of what isn't in a link, by its places. */
  leftOut(places: string): string;
  tooLongToType(length: number, most: number): string;
  /** By why; the sign and the group of a typed form it stands in, where it is one. */
  refusals: Readonly<Record<RefusalCode, (said: { sign: string; group: number }) => SaidRefusal>>;
}
