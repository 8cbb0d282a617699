import { createHash, randomBytes } from 'node:crypto';
import { hour, second } from '../clock.ts';
import { keyedHash, same } from '../hashes.ts';
import type { Instant } from '../store/store.ts';

/** Nobody reads a form, types an address and ticks a box in less; programs that fill in forms for people do, so it only counts. */
const soonest = 3 * second;
export const longestOpen = 2 * hour;
const nonceBytes = 16;

export interface TicketSecret {
  id: string;
  secret: Uint8Array;
}

/** For which form it was given out. */
export interface Form {
  dealer: string;
  origin: string;
}

const macOf = (secret: Uint8Array, { dealer, origin }: Form, shown: string) => keyedHash(secret, 'ticket', JSON.stringify([dealer, origin, shown]));

/**
 * What shows that a form was open: when, a word used once, and how many leading zero bits its proof of work needs.
 *
 * @param bits  0 where none is asked for
 */
export function newTicket({ id, secret }: TicketSecret, form: Form, now: Instant, bits: number): string {
  const shown = `${id}.${now.toString(36)}.${randomBytes(nonceBytes).toString('base64url')}.${bits}`;
  return `${shown}.${macOf(secret, form, shown)}`;
}

export type TicketSign = 'good' | 'absent' | 'bad' | 'early' | 'late';
export interface ReadTicket {
  sign: TicketSign;
  /** To be spent; only of one that was given out by us. */
  nonce?: string;
  bits: number;
}

/** Reads a ticket. Never throws: a bad one says something of who sent it, and refuses nobody. */
export function readTicket(ticket: string | undefined, secrets: readonly TicketSecret[], form: Form, now: Instant): ReadTicket {
  if (ticket === undefined) return { sign: 'absent', bits: 0 };
  const [id, given = '', nonce = '', bits = '', mac = '', more] = ticket.split('.');
  const secret = secrets.find((each) => each.id === id);
  if (!secret || more !== undefined || !same(mac, macOf(secret.secret, form, `${id}.${given}.${nonce}.${bits}`))) return { sign: 'bad', bits: 0 };
  const open = now - Number.parseInt(given, 36);
  return { sign: open < soonest ? 'early' : open > longestOpen ? 'late' : 'good', nonce, bits: Number(bits) };
}

const bitsInByte = 8;
/** Whether SHA-256 of `ticket:work` begins with so many zero bits. */
export function isWorked(ticket: string, work: string | undefined, bits: number): boolean {
  if (work === undefined) return bits === 0;
  const digest = createHash('sha256').update(`${ticket}:${work}`).digest();
  for (let bit = 0; bit < bits; bit += 1) {
    if ((digest[Math.floor(bit / bitsInByte)]! >> (bitsInByte - 1 - (bit % bitsInByte))) & 1) return false;
  }
  return true;
}
