import { paths } from '../../request/names.ts';

/** What a relay gives to whoever opens a form, and what it wants done for it; nothing where it gives none. */
export interface Ticket {
  ticket: string;
  /** Asked for when it has reason to: so many leading zero bits of a hash. */
  work?: { bits: number };
}

/** Hardest work a page does for a relay: seconds on a slow phone. */
const mostBits = 20;
/** Longest wait [ms]: without a ticket the request is sent all the same. */
const longestWait = 5_000;

function ticketOf(body: unknown): Ticket | undefined {
  const { ticket, work } = (body ?? {}) as Partial<Ticket>;
  if (typeof ticket !== 'string') return undefined;
  const can = work && Number.isInteger(work.bits) && work.bits > 0 && work.bits <= mostBits;
  return can ? { ticket, work: { bits: work.bits } } : { ticket };
}

/** Asks for a ticket when a form is opened. Never throws. */
export async function askTicket(relay: string, dealer: string): Promise<Ticket | undefined> {
  try {
    const address = new URL(paths.ticket.slice(1), relay.endsWith('/') ? relay : `${relay}/`);
    address.searchParams.set('dealer', dealer);
    const response = await fetch(address, { credentials: 'omit', cache: 'no-store', redirect: 'error', referrerPolicy: 'no-referrer', signal: AbortSignal.timeout(longestWait) });
    return response.ok ? ticketOf(await response.json()) : undefined;
  } catch {
    return undefined;
  }
}
