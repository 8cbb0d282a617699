import type { RelayKey } from '../../request/schema.ts';
import { paths } from '../../request/names.ts';
import { second } from './clock.ts';
import { readKeys } from './key-ring.ts';
import { version } from '../../widget/version.ts';
import { isOlder } from './is-older.ts';
import { isObject } from './read-record.ts';

/** What stands between a counter and its relay; `outdated` is the page itself, of which the relay wants a newer one. */
export type WayTrouble = 'unreachable' | 'not-a-relay' | 'outdated';

/** Longest wait for a short answer [ms]. */
const longestWait = 5 * second;

/** Reads a short answer of a relay. A page some network put in between is none. */
async function read(relay: string, path: string, { fetch, signal }: { fetch: typeof globalThis.fetch; signal: AbortSignal }): Promise<{ answer: unknown } | { trouble: WayTrouble }> {
  let response: Response;
  try {
    response = await fetch(new URL(path.slice(1), relay.endsWith('/') ? relay : `${relay}/`), {
      mode: 'cors', credentials: 'omit', cache: 'no-store', redirect: 'error', referrerPolicy: 'no-referrer', signal: AbortSignal.any([signal, AbortSignal.timeout(longestWait)]),
    });
  } catch {
    return { trouble: 'unreachable' };
  }
  try {
    return response.ok ? { answer: await response.json() as unknown } : { trouble: 'unreachable' };
  } catch {
    return { trouble: 'not-a-relay' };
  }
}

/**
 * Asks whether the relay is there and takes what this page sends: a browser that believes itself online may sit behind a page to log in with.
 *
 * @returns undefined where it is; else what is the matter
 */
export async function probe(relay: string, way: { fetch: typeof globalThis.fetch; signal: AbortSignal }): Promise<WayTrouble | undefined> {
  const heard = await read(relay, paths.health, way);
  if ('trouble' in heard) return heard.trouble;
  if (!isObject(heard.answer) || heard.answer.ok !== true) return 'not-a-relay';
  return isOlder(version, heard.answer.minVersion) ? 'outdated' : undefined;
}

/** The keys to seal to, the one in use first; undefined where they can't be had. */
export async function fetchKeys(relay: string, way: { fetch: typeof globalThis.fetch; signal: AbortSignal }): Promise<readonly RelayKey[] | undefined> {
  const heard = await read(relay, paths.keys, way);
  return 'answer' in heard ? readKeys(heard.answer) : undefined;
}
