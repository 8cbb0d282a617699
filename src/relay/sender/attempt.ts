import type { Log } from '../log.ts';
import type { Settings } from '../settings/read-settings.ts';
import type { Clock } from '../clock.ts';
import { StoreAway } from '../store/failures.ts';
import type { Claim, Outcome, Store } from '../store/store.ts';
import type { Compose } from './composed.ts';
import { messageOf } from './message.ts';
import { isGivenUp, unsureWait, waitAfter } from './schedule.ts';
import type { Transport } from './transport.ts';
import type { Verdict } from './verdict.ts';

export interface AttemptParts {
  store: Store;
  transport: Transport;
  compose: Compose;
  clock: Clock;
  settings: Pick<Settings, 'dealers' | 'sender' | 'bounces'>;
  log: Log;
  /** From 0 to 1. */
  chance: () => number;
}

/** What came of one attempt, for the store, and for whoever decides on the next. `verdict` is undefined where nothing was sent. */
export interface Attempted {
  outcome: Outcome;
  verdict?: Verdict;
}

const held = (reason: string): Attempted => ({ outcome: { state: 'held', reason } });

async function composed({ role, isWord, document, dealer: id, messageId, token, acceptedAt }: Claim, { store, compose, settings }: AttemptParts) {
  const dealer = settings.dealers.get(id)!;
  const { version } = document.seen.catalogue;
  const seen = version === undefined ? undefined : await store.catalogueOf(id, version);
  const mail = await compose({
    role, isWord, document, token, asSeen: seen !== undefined, catalogue: seen ?? await store.catalogueOf(id, undefined),
    dealer: { id, mail: dealer.mail, senderName: dealer.senderName, postalAddress: dealer.postalAddress, ...(dealer.page !== undefined && { page: dealer.page }) },
  });
  const to = role === 'dealer' ? dealer.mail : document.address;
  return messageOf(mail, { to, sender: settings.sender, bounces: settings.bounces, messageId, token, date: acceptedAt });
}

/**
 * Tells what a verdict means for a mail.
 *
 * @param now  by the wall [ms]
 */
export function outcomeOf(verdict: Verdict, { attempt, acceptedAt, wasUnsure }: Pick<Claim, 'attempt' | 'acceptedAt' | 'wasUnsure'>, now: number, chance: number): Outcome {
  switch (verdict.kind) {
    case 'sent': return { state: 'sent', reply: verdict.reply };
    case 'refused': return { state: 'refused', reason: verdict.reason, ...(verdict.reply !== undefined && { reply: verdict.reply }) };
    // The way out is closed: the mail waits its turn as if nothing had been tried.
    case 'closed': return { state: 'queued', at: now, reason: verdict.reason, ...(verdict.reply !== undefined && { reply: verdict.reply }) };
    // Once more, and no third time: a server that never answers would be sent it for days.
    case 'unsure': return wasUnsure ? { state: 'held', reason: 'twice without an answer' } : { state: 'unsure', at: now + unsureWait, reason: verdict.reason };
    case 'later': {
      const reply = verdict.reply === undefined ? {} : { reply: verdict.reply };
      if (isGivenUp(now - acceptedAt, attempt)) return { state: 'expired', reason: verdict.reason, ...reply };
      return { state: 'queued', at: now + waitAfter(attempt, verdict.unreached, chance), reason: verdict.reason, ...reply };
    }
  }
}

async function tried(claim: Claim, parts: AttemptParts, stopped: () => boolean): Promise<Attempted> {
  const { store, transport, clock, settings, log, chance } = parts;
  if (!settings.dealers.has(claim.dealer)) return held('no such dealer');
  let mail;
  try {
    mail = await composed(claim, parts);
  } catch (error) {
    if (error instanceof StoreAway) throw error;
    log.error('mail not made', error, { role: claim.role, dealer: claim.dealer });
    return held('can’t be made');
  }
  if (stopped()) return { outcome: { state: 'queued', at: clock.now(), reason: 'relay stopped' } };
  // Somebody may have stopped it while it was made.
  if (await store.isStopped(claim.recipient, claim.dealer, clock.now())) return { outcome: { state: 'suppressed', reason: 'stopped' } };
  const verdict = await transport.send(mail);
  return { outcome: outcomeOf(verdict, claim, clock.now(), chance()), verdict };
}

/**
 * Makes a claimed mail and sends it. Never throws but where the store failed for good.
 *
 * @param stopped  whether nothing new is to be begun
 */
export async function attempt(claim: Claim, parts: AttemptParts, stopped: () => boolean): Promise<Attempted> {
  try {
    return await tried(claim, parts, stopped);
  } catch (error) {
    if (!(error instanceof StoreAway)) throw error;
    // Nothing was sent, and nothing is wrong with the mail.
    return { outcome: { state: 'queued', at: parts.clock.now(), reason: 'store away' } };
  }
}
