/** What a mail is made of, in the order it is read; its text and its HTML are two ways to write the same parts. */

/** An address to follow, checked, and what it is called. */
export interface Link {
  href: string;
  text: string;
}

export interface Line {
  text: string;
  links?: readonly Link[];
}

/** A heading with what stands under it; alerts come first. */
export interface Block {
  kind: 'block';
  heading?: string;
  alerts?: readonly string[];
  lines: readonly string[];
}

export interface MachinePart {
  kind: 'machine';
  name: string;
  price: string;
  groups: readonly { heading: string; lines: readonly Line[] }[];
}

export interface Bar {
  text: string;
  /** Of the longest bar in the mail. */
  percent: number;
  /** One of the buyer's own things. */
  own: boolean;
}

/** Sizes as bars of one scale. All of it is said in words as well. */
export interface LineUpPart {
  kind: 'line-up';
  heading: string;
  about: string;
  groups: readonly { heading: string; bars: readonly Bar[] }[];
}

export interface LinkPart {
  kind: 'link';
  says: string;
  label: string;
  href: string;
}

export type Part = Block | MachinePart | LineUpPart | LinkPart;

/** A mail before it is written down. */
export interface Sheet {
  language: string;
  direction: 'ltr' | 'rtl';
  subject: string;
  /** Whose mail it is. */
  from: string;
  title: string;
  /** What a list of mails shows behind the subject. */
  preview: string;
  parts: readonly Part[];
  footer: readonly Line[];
}
