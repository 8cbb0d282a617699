import type { HandoffWords } from '../../../handoff/words/words.ts';

/** What is said around taking answers and shortlist along, and where a link brought answers. What is missing fails the type check. */
export interface HandOnWords {
  /** What the hand-over itself says. */
  handoff: HandoffWords;
  explained: string;
  /** Under the code: what to do with it. */
  code: string;
  /** The answers are longer than any link or code. */
  noLink: string;
  link: { label: string; copy: string };
  typed: { label: string; copy: string };
  share: string;
  shareTitle: string;
  copied: string;
  /** The browser doesn't let a page copy; what is to be copied is selected instead. */
  marked: string;
  notShared: string;
  /** What no link carries, where no question has a name for it: by the last key of its place. */
  kept: Readonly<Record<'delivery' | 'tradeIn' | 'owned', string>>;
  mail: {
    heading: string; explained: string; save: string; saved(file: string): string; write: string;
    /** The link to a mail has little room. */
    shortened: string;
    noRoom: string;
    /** Name of the file, without its ending. */
    file: string;
  };
  /** A link brought answers, and here is what they come to. */
  opened: string;
  /** A link brought none that can be used: that it is so, and what to do; the reason is said between. */
  notOpened: { what: string; again: string; newer: string; other: string };
}
