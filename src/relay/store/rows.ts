/** What every store makes of what it is handed. */
import { sha256 } from '../hashes.ts';
import { ends, waitingStates, type Instant, type NewMessage } from './store.ts';

/** Whether a mail has come to its end, as both databases ask. */
export const ended = `state IN (${ends.map((end) => `'${end}'`).join(', ')})`;

/** Whether it is to go out, as both databases ask. */
export const isWaiting = `state IN (${waitingStates.map((state) => `'${state}'`).join(', ')})`;

/** What a mail is made of and for whom, in one figure. */
export const digestOf = (body: string, { role, recipient, messageId, token }: Pick<NewMessage, 'role' | 'recipient' | 'messageId' | 'token'>) =>
  sha256(JSON.stringify([body, role, recipient, messageId, token]));

/** The domain a mail goes to; copies go to the dealer's, whom the settings know. */
export const destinationOf = (address: string, role: NewMessage['role'], dealer: string) =>
  (role === 'dealer' ? `dealer:${dealer}` : address.slice(address.lastIndexOf('@') + 1).toLowerCase());

export const dayOf = (at: Instant) => new Date(at).toISOString().slice(0, 'yyyy-mm-dd'.length);

/** Longest anything is told to wait, and more [ms]. What is due later was put off by a clock that was wrong. */
export const farthest = 86_400_000;

const minute = 60_000;
/** Ages by which waiting mail is told apart: what shows where a queue stands still (as the trade of mail draws it: doubling twice each). */
export const ages = [1, 5, 20, 80, 320, 1_280].map((minutes) => minutes * minute);
