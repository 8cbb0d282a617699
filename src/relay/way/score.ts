import type { TicketSign } from './ticket.ts';

/** What speaks for a program behind a request. None of it alone refuses anybody. */
export interface Signs {
  ticket: TicketSign | 'used';
  /** Something stands in the field no person sees: browsers that fill in forms do that too. */
  filled: boolean;
  /** What the ticket asked to be reckoned isn't there: no worker, an old machine, or no browser. */
  workMissing: boolean;
  /** No Sec-Fetch headers, which every browser we are written for sends. */
  bare: boolean;
  /** More recipients a day than a household has. */
  manyRecipients: boolean;
}

const ofTicket: Record<Signs['ticket'], number> = { good: 0, late: 1, early: 1, absent: 2, bad: 2, used: 2 };
const weights = { filled: 2, workMissing: 2, bare: 1, manyRecipients: 2 } as const;

export const scoreOf = (signs: Signs): number =>
  ofTicket[signs.ticket] + Object.entries(weights).reduce((sum, [sign, weight]) => sum + (signs[sign as keyof typeof weights] ? weight : 0), 0);

/** From here a buyer is asked first whether it was he; from there a person looks at it. An honest buyer's worst (filled in by a helper, at once, without a worker) is still only asked. */
const [asked, held] = [3, 6];

export type Standing = 'queued' | 'unconfirmed' | 'held';
/** What is done with a request: nothing is ever refused by its score. */
export const standingOf = (score: number, confirmFirst: boolean): Standing => (score >= held ? 'held' : score >= asked || confirmFirst ? 'unconfirmed' : 'queued');
