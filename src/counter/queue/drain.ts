import type { HandedIn } from '../../request/hand-in.ts';
import type { SealedRequest } from '../../request/schema.ts';
import { waitAfter } from './back-off.ts';
import type { Waiting } from './record.ts';
import type { WaitingStore } from './waiting-store.ts';
import type { WayTrouble } from './relay.ts';

/** What keeps the queue from being sent. */
export type RelayTrouble = Extract<HandedIn, { kind: 'later' }>['why'] | WayTrouble;

export interface DrainParts {
  store: WaitingStore;
  now(): number;
  /** From 0 up to 1. */
  random(): number;
  /** Asks whether the relay is there. */
  probe(): Promise<WayTrouble | undefined>;
  send(sealed: SealedRequest, id: string): Promise<HandedIn>;
  /** The relay has it. */
  accepted(waiting: Waiting): void;
  /** It needs staff now. */
  refused(waiting: Waiting, code: string): void;
  /** Whether to go on. */
  goesOn(): boolean;
}

/** How a round ended, and when the next makes sense [ms since 1970] where that is known. */
export interface RoundEnd {
  trouble?: RelayTrouble;
  at?: number;
  /** Nothing was due, so nothing was learnt of the relay. */
  idle?: true;
}

/**
 * Sends what is due, one after the other in the order it came, until nothing is or the relay can't take it. A record
 * goes only once the relay said it has it, and stays with its code where the relay refused it.
 *
 * @throws StorageTrouble
 */
export async function drain({ store, now, random, probe, send, accepted, refused, goesOn }: DrainParts): Promise<RoundEnd> {
  let next = await store.next(now());
  if (next.is === 'later') return { at: next.at, idle: true };
  if (next.is === 'due') {
    const trouble = await probe();
    if (trouble) return { trouble };
  }
  while (next.is === 'due' && goesOn()) {
    const { waiting } = next;
    const tries = waiting.tries + 1;
    await store.change(waiting.id, { state: 'sending' }, { strict: false });
    const outcome = await send(waiting.sealed, waiting.id);
    if (outcome.kind === 'later') {
      // Where nothing got through, the next probe tells when to try again; only what was heard counts against a record.
      const wasHeard = outcome.why === 'busy' || outcome.why === 'slow';
      const at = wasHeard ? now() + Math.round(waitAfter(tries, outcome.after, random())) : undefined;
      await store.change(waiting.id, { state: 'queued', ...(at !== undefined && { tries, nextAt: at }) });
      return { trouble: outcome.why, ...(at !== undefined && { at }) };
    }
    if (outcome.kind === 'accepted') {
      await store.remove(waiting.id);
      accepted(waiting);
    } else {
      await store.change(waiting.id, { state: 'needs-staff', code: codeOf(outcome.code), tries });
      refused(waiting, outcome.code);
    }
    next = await store.next(now());
  }
  return next.is === 'later' ? { at: next.at } : {};
}

/** A code as a record may keep it: whoever answered might write anything. */
const codeOf = (code: string) => (/^[a-z0-9.-]{1,60}$/.test(code) ? code : 'refused');
