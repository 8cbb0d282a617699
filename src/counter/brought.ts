import { keepCatalogue, keptCatalogue } from '../widget/last-good.ts';

/** How long a counter waits for the network before it goes by its copy [ms]. */
const patience = 3_000;

/** A text from the network, or the copy that was kept of it the last time. */
export interface Brought {
  text: string;
  from: 'network' | 'copy';
}

async function fetchedText(address: string): Promise<string | undefined> {
  try {
    const answer = await fetch(address, { credentials: 'omit', cache: 'no-cache', signal: AbortSignal.timeout(patience) });
    return answer.ok ? await answer.text() : undefined;
  } catch {
    return undefined;
  }
}

/** What there is, the best first: the network's, and the copy where that doesn't answer in time or is of no use. */
export async function* bring(address: string): AsyncGenerator<Brought> {
  const text = await fetchedText(address);
  if (text !== undefined) yield { text, from: 'network' };
  const copy = await keptCatalogue(address);
  if (copy !== undefined) yield { text: copy, from: 'copy' };
}

/** Once it is known to be of use, and not before: a page to log in with must never take the place of a copy. */
export const keep = (address: string, { text, from }: Brought) => (from === 'network' ? keepCatalogue(address, text) : Promise.resolve());

export function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
