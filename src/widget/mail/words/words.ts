import type { GoodTime } from '../../../request/names.ts';

/** All that is said around sending a shortlist by mail. */
export interface MailWords {
  language: string;
  shortlist: { heading: string; what: string; send: string; sent: string };
  /** None that does is on the lot: word from the dealer instead. */
  notify: { heading: string; what(dealer: string): string; send: string; sent(dealer: string): string };
  address: string;
  addressHint: string;
  /** Nothing typed, something that is no one address, and one that ends as none does. */
  addressFault: { missing: string; wrong: string };
  /** Offered, never put in unasked. */
  addressNear(address: string): string;
  dealerCopy(dealer: string): string;
  statistics(dealer: string): string;
  forTheDealer: string;
  name: string;
  nameFault: string;
  phone: string;
  phoneFault: string;
  goodTime: string;
  goodTimes: Record<GoodTime, string>;
  privacy: string;
  sending: string;
  working: string;
  /** Where it went, and what to do where nothing comes. */
  sentTo(address: string): string;
  mayTake: string;
  later: { busy: string; unreachable: string; tryingAgain(seconds: number): string; tryAgain: string; otherWays: string };
  refused: { faulty: string; other(code: string): string };
  close: string;
}
