/** What a page behind a link of a mail says: its heading, a sentence or two, and its button where it has one. */
export interface SaidPage {
  title: string;
  says: string;
  button?: string;
}

/** The few pages a relay has, in a language. What is missing fails the type check. */
export interface PageWords {
  language: string;
  /** Before and after, by link. */
  stop: { ask: SaidPage; done: SaidPage };
  notAsked: { ask: SaidPage; done: SaidPage };
  confirm: { ask: SaidPage; done: SaidPage };
  /** The token isn't known: a link cut short, or one whose time is over. */
  unknown: SaidPage;
  tooOften: SaidPage;
  notNow: SaidPage;
}
