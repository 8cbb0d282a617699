import { day, type Clock } from '../clock.ts';
import { recipientOf, sha256 } from '../hashes.ts';
import type { Keys } from '../settings/keys.ts';
import type { Store } from '../store/store.ts';
import { newIds } from '../way/messages.ts';
import { readReport, weightOf } from './read-report.ts';

/** So many that failed for a passing reason, within so long, and nothing is sent there for a while. */
const [softs, softsWithin, restsFor] = [3, 7 * day, 30 * day];

export type BounceTaken = 'no-report' | 'seen-before' | 'not-sent-by-us' | 'passing' | 'our-fault' | 'stopped' | 'rests';

interface Export { request?: string; dealer?: string; accepted?: number; mails?: { role: string; state: string }[] }

/** Dealers for whom something went to an address, each with the last request for which it did: a report about any other is forged, or none of ours. */
async function sentTo(store: Store, recipient: string, address: string): Promise<Map<string, string>> {
  const held = await store.exportOf(recipient, address) as Export[];
  const sent = held.filter(({ mails = [] }) => mails.some(({ role, state }) => role !== 'dealer' && state === 'sent'));
  const inOrder = sent.sort((a, b) => (a.accepted ?? 0) - (b.accepted ?? 0));
  return new Map(inOrder.flatMap(({ dealer, request }) => (dealer === undefined || request === undefined ? [] : [[dealer, request]])));
}

/**
 * Goes by what came back. A report that comes twice counts once, one about an address nothing was sent to not at all; none
 * is ever answered.
 *
 * @param mail  as it came, headers and all
 */
export async function takeBounce(mail: string, { store, keys, clock, domain }: { store: Store; keys: Keys; clock: Clock; domain: string }): Promise<BounceTaken[]> {
  const reports = readReport(mail);
  if (reports.length === 0) return ['no-report'];
  const now = clock.now();
  if (!await store.spend(`bounce:${sha256(mail)}`, now + restsFor, now)) return ['seen-before'];
  const taken: BounceTaken[] = [];
  for (const report of reports) {
    const recipient = recipientOf(keys.addresses, report.address);
    const weight = weightOf(report);
    const dealers = await sentTo(store, recipient, report.address);
    if (dealers.size === 0) taken.push('not-sent-by-us');
    else if (weight === 'none') taken.push('passing');
    else if (weight === 'ours') taken.push('our-fault');
    else if (weight === 'hard') {
      for (const [dealer, request] of dealers) {
        await store.suppress(recipient, { dealer }, 'bounce', now);
        await store.tell(request, newIds(domain), now);
      }
      taken.push('stopped');
    } else taken.push(await softly(store, recipient, [...dealers.keys()], now));
  }
  return taken;
}

/** Words that last as long as a failure counts: the first that is still free is this one's place among them. */
async function softly(store: Store, recipient: string, dealers: readonly string[], now: number): Promise<BounceTaken> {
  for (let nth = 1; nth <= softs; nth += 1) {
    if (!await store.spend(`soft-bounce:${recipient}:${nth}`, now + softsWithin, now)) continue;
    if (nth < softs) return 'passing';
    break;
  }
  for (const dealer of dealers) await store.suppress(recipient, { dealer }, 'soft bounces', now, now + restsFor);
  return 'rests';
}
