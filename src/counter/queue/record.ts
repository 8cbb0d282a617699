import type { SealedRequest } from '../../request/schema.ts';

/** Of a record. A page reads its own and every older one, and leaves a newer one alone. */
export const recordVersion = 1;

/**
 * Where an intake stands on its way. Before it is `queued` it is a draft, in the page alone; once the relay has it, it
 * is gone. `sending` that nobody sends, because its window was killed, is as good as `queued`.
 */
export const waitingStates = ['queued', 'sending', 'needs-staff'] as const;
export type WaitingState = (typeof waitingStates)[number];

/** An intake that waits to be sent: nothing in it says who it is of, but initials he agreed to. */
export interface Waiting {
  /** A UUID made once for what the buyer wants sent; the Idempotency-Key of every attempt. */
  id: string;
  v: number;
  /** Milliseconds since 1970. */
  createdAt: number;
  dealer: string;
  sealed: SealedRequest;
  /** How often the relay had it and could not take it. */
  tries: number;
  /** Not before then [ms since 1970]. */
  nextAt: number;
  state: WaitingState;
  /** Why it needs staff: what the relay called it, or `damaged`. */
  code?: string;
  /** Initials, where the buyer agreed. */
  label?: string;
}

/** What was found in a place of the queue. */
export type Found = { is: 'waiting'; waiting: Waiting } | { is: 'newer' } | { is: 'damaged' };

const mostInitials = 4;
const oneLetter = /^\p{L}\p{M}*$/u;

/** Whether a text is initials and no name: up to four letters, none beside another without a dot, hyphen or blank. */
export function isInitials(text: string): boolean {
  const parts = text.split(/[\s.-]+/u).filter((part) => part !== '');
  return parts.length > 0 && parts.length <= mostInitials && parts.every((part) => oneLetter.test(part));
}

/** Some letters become two as capitals, and stay as they are. */
const capital = (letter: string) => (oneLetter.test(letter.toUpperCase()) ? letter.toUpperCase() : letter);

/** @example initialsOf('Ann O’Neill-Müller') // 'A. O. M.' */
export const initialsOf = (name: string) =>
  name.split(/[\s-]+/u).map((part) => /\p{L}\p{M}*/u.exec(part)?.[0]).filter((letter) => letter !== undefined)
    .slice(0, mostInitials).map((letter) => `${capital(letter)}.`).join(' ');
