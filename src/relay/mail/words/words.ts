import type { GoodTime, RequestKind } from '../../../request/names.ts';

/** What mails of a relay say besides the result, in a language. What is missing fails the type check. */
export interface MailWords {
  language: string;
  /** Subjects are made of these words and the dealer's name alone. That of a shortlist is the letter's. */
  subjects: Readonly<Record<'notify' | 'confirm' | 'dealerShortlist' | 'dealerNotify' | 'undelivered', (dealer: string) => string>>;
  /** Why it comes, at its head. */
  asked(dealer: string): string;
  /** That the list isn't the one the buyer saw; its day where that is known. */
  otherList(now: string, seen: string | undefined): string;
  otherRules: string;
  /** That a mail tells less than there is. */
  shortened: string;
  /** On the button that leads back. */
  open: string;
  lineUp: Readonly<Record<'about' | 'across' | 'up' | 'along', string>>;
  demands: {
    heading: string;
    none: string;
    atLeast(amount: string): string;
    atMost(amount: string): string;
    safety: string;
  };
  notify: { title: string; says(dealer: string): string };
  confirm: { title: string; says(dealer: string): string; button: string };
  /** The dealer's copy. */
  dealer: {
    titles: Readonly<Record<RequestKind, string>>;
    says: Readonly<Record<RequestKind, string>>;
    contactHeading: string;
    name: string;
    phone: string;
    mail: string;
    goodTime: string;
    goodTimes: Readonly<Record<GoodTime, string>>;
    language: string;
    noContact: string;
    /** Above the shortlist as the buyer was told it. */
    toldBuyer: string;
    /** That the buyer's own mail came to nothing. */
    undelivered: Readonly<Record<'title' | 'says', string>>;
  };
  /** At its end: why it comes, how to stop it, and that somebody else may have typed the address. */
  footer: {
    why(dealer: string): string;
    stop: string;
    stopLink: string;
    notAsked: string;
    notAskedLink: string;
    toDealer(dealer: string): string;
  };
}
