import pg from 'pg';
import { codeOf } from './trouble.ts';

/** Asks a server, on a connection of its own, whether it is there. @param within  time it has for that [ms] @returns false where no word came from it */
async function isThere(address: string, within: number): Promise<boolean> {
  const client = new pg.Client({ connectionString: address, connectionTimeoutMillis: within, query_timeout: within });
  client.on('error', () => {});
  try {
    await client.connect();
    await client.query('SELECT 1');
    return true;
  } catch (error) {
    // One that has no connection left, or is about to go down, says so.
    return codeOf(error) !== undefined;
  } finally {
    void client.end().catch(() => {});
  }
}

/**
 * Looks, while somebody waits long for an answer, whether the server is still there: one that was switched off, or whose cable
 * was pulled, never says that it won't answer.
 *
 * @param every  from one look to the next, and time it has to answer one [ms]
 * @param onGone  called once, where it didn't
 * @returns what ends it
 */
export function watch(address: string, every: number, onGone: () => void): () => void {
  let timer: NodeJS.Timeout;
  let isOver = false;
  const next = () => {
    timer = setTimeout(() => void (async () => {
      const there = await isThere(address, every);
      if (isOver) return;
      if (there) next();
      else onGone();
    })(), every);
    timer.unref();
  };
  next();
  return () => {
    isOver = true;
    clearTimeout(timer);
  };
}
