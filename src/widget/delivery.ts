import type { CatalogueTrouble } from './trouble.ts';

/** Most bytes of a catalogue, unpacked: a page on a phone has to read and judge them all. */
const mostBytes = 5_000_000;
/** Longest wait for the whole of it [ms], and how often it is tried. */
const longestWait = 8_000;
const tries = 2;

/** A file as it was found; what is in it isn't known yet. */
export interface Found {
  text: string;
}

interface Refused extends CatalogueTrouble {
  /** Whether it may go better the next time. */
  again: boolean;
}

/** What a server may call a JSON document; many send `.json` files as text or as bytes. */
const namesJson = (type: string) => /^\s*(application\/([\w.+-]+\+)?json|text\/(plain|json)|application\/octet-stream)?\s*(;|$)/i.test(type);

/**
 * The whole body, or undefined where it is larger than allowed. It is counted on a copy, for what a script reads
 * piece by piece is told as broken off in the tools of a browser.
 */
async function bodyOf(answer: Response, stop: AbortController): Promise<ArrayBuffer | undefined> {
  const reader = answer.clone().body?.getReader();
  const whole = answer.arrayBuffer();
  // Broken off, both fail, and one of them is enough to hear of.
  whole.catch(() => {});
  for (let size = 0; size <= mostBytes;) {
    const next = await reader?.read();
    if (!next?.value) return whole;
    size += next.value.length;
  }
  stop.abort();
  return undefined;
}

function decoded(body: ArrayBuffer): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(body);
  } catch {
    return undefined;
  }
}

async function fetchedOnce(address: string, stop: AbortController): Promise<Found | Refused> {
  const refuse = (code: CatalogueTrouble['code'], why: string, again = false): Refused => ({ code, details: [`${address}: ${why}`], again });
  let slow = false;
  const clock = setTimeout(() => {
    slow = true;
    stop.abort();
  }, longestWait);
  try {
    const answer = await fetch(address, { signal: stop.signal, credentials: 'omit' });
    const type = answer.headers.get('content-type') ?? '';
    if (!answer.ok) return refuse('catalogue.missing', `the server said ${answer.status}`, answer.status >= 500 || answer.status === 429);
    if (!namesJson(type)) return refuse('catalogue.wrong-type', `came as ${type}, where application/json was expected; a page to log in, or an error page?`);
    const body = await bodyOf(answer, stop);
    if (!body) return refuse('catalogue.too-large', `more than ${mostBytes} bytes`);
    const text = decoded(body);
    return text === undefined ? refuse('catalogue.not-json', 'isn’t UTF-8; save it as that') : { text };
  } catch (trouble) {
    if (slow) return refuse('catalogue.slow', `not there in ${longestWait / 1000} s`, true);
    return refuse('catalogue.missing', `no answer that this page may read (${String(trouble)}): is the address right, does the server send access-control-allow-origin, does the page’s policy allow it in connect-src?`, true);
  } finally {
    clearTimeout(clock);
  }
}

/**
 * Fetches a catalogue within limits of size and time, without cookies, and once more where that may help.
 *
 * @param stopped  breaks it off: the page wants it no longer
 */
export async function fetched(address: string, stopped: AbortSignal): Promise<Found | CatalogueTrouble> {
  for (let left = tries - 1; ; left--) {
    const stop = new AbortController();
    const breakOff = () => stop.abort();
    stopped.addEventListener('abort', breakOff);
    const outcome = await fetchedOnce(address, stop);
    stopped.removeEventListener('abort', breakOff);
    if (left === 0 || stopped.aborted || !('again' in outcome) || !outcome.again) return outcome;
  }
}
