import { keyHeader, paths } from './names.ts';
import type { RequestDocument, SealedRequest } from './schema.ts';

/** What came of handing a request in. */
export type HandedIn =
  /** Stored by the relay: the promise begins here. */
  | { kind: 'accepted'; id: string }
  /** Not now: keep it and try again with the same key, after so many seconds where the relay said so. */
  | { kind: 'later'; why: 'unreachable' | 'slow' | 'busy' | 'not-a-relay'; after?: number }
  /** Never as it is: somebody has to look at it. */
  | { kind: 'refused'; status: number; code: string };

/** Longest wait for an answer [ms]. */
const longestWait = 10_000;
/** Answers that pass: too slow, too early, too many, and whatever a server says of itself (RFC 9110, section 15). */
const passing = (status: number) => [408, 425, 429].includes(status) || status >= 500;

/** Seconds a relay asks to wait (RFC 9110, section 10.2.3); a date instead of a number isn't read. */
function afterOf(response: Response): { after?: number } {
  const said = /^\d{1,6}$/.exec(response.headers.get('retry-after') ?? '');
  return said ? { after: Number(said[0]) } : {};
}

/** @throws where it doesn't end before the deadline: that is no answer, whatever it began with */
async function bodyOf(response: Response, deadline: AbortSignal): Promise<Record<string, unknown>> {
  try {
    const body: unknown = await response.json();
    return typeof body === 'object' && body !== null ? body as Record<string, unknown> : {};
  } catch (trouble) {
    if (deadline.aborted) throw trouble;
    return {};
  }
}

async function read(response: Response, idempotencyKey: string, deadline: AbortSignal): Promise<HandedIn> {
  if (passing(response.status)) return { kind: 'later', why: 'busy', ...afterOf(response) };
  const body = await bodyOf(response, deadline);
  if (response.status === 202) return body.id === idempotencyKey ? { kind: 'accepted', id: idempotencyKey } : { kind: 'later', why: 'not-a-relay' };
  // A page to log in with, as some networks put before everything, is no answer of ours.
  if (response.status < 400) return { kind: 'later', why: 'not-a-relay' };
  // A request of that key is still under way: its end is what counts.
  if (response.status === 409) return { kind: 'later', why: 'busy', ...afterOf(response) };
  return typeof body.code === 'string' ? { kind: 'refused', status: response.status, code: body.code } : { kind: 'later', why: 'not-a-relay' };
}

/**
 * Hands a request to a relay and says what came of it; only its own 202 with the same key counts as taken. Never throws.
 *
 * @param relay  its address, such as `https://mail.example/`
 * @param idempotencyKey  made once for what the buyer wants sent, kept over every attempt
 * @param deviceToken  of a counter, where the relay gave it one
 */
export async function handIn(relay: string, body: RequestDocument | SealedRequest, idempotencyKey: string, { deviceToken, signal }: { deviceToken?: string; signal?: AbortSignal } = {}): Promise<HandedIn> {
  const deadline = AbortSignal.timeout(longestWait);
  try {
    const response = await fetch(new URL(paths.shortlists.slice(1), relay.endsWith('/') ? relay : `${relay}/`), {
      method: 'POST',
      mode: 'cors',
      credentials: 'omit',
      cache: 'no-store',
      redirect: 'error',
      referrerPolicy: 'no-referrer',
      headers: { 'content-type': 'application/json', [keyHeader]: idempotencyKey, ...(deviceToken && { authorization: `Bearer ${deviceToken}` }) },
      body: JSON.stringify(body),
      signal: signal ? AbortSignal.any([signal, deadline]) : deadline,
    });
    return await read(response, idempotencyKey, deadline);
  } catch {
    return { kind: 'later', why: deadline.aborted ? 'slow' : 'unreachable' };
  }
}
