import { readFile, stat } from 'node:fs/promises';
import { mended } from '../../catalogue/mend.ts';
import { readCatalogue } from '../../catalogue/read-catalogue.ts';
import { minute, type Clock } from '../clock.ts';
import { sha256 } from '../hashes.ts';
import type { Log } from '../log.ts';
import type { Dealer } from '../settings/dealer.ts';
import type { Store } from '../store/store.ts';
import { fetchText } from './fetch-text.ts';

/** How often it is looked whether a dealer has put up a newer one. */
const every = 5 * minute;
const mostBytes = 20 * 1024 * 1024;

async function textAt(place: string): Promise<string> {
  if (place.startsWith('https:')) return fetchText(place);
  if ((await stat(place)).size > mostBytes) throw Object.assign(new Error('too large'), { code: 'EFBIG' });
  return readFile(place, 'utf8');
}

export interface KeeperParts {
  store: Store;
  clock: Clock;
  log: Log;
  dealers: ReadonlyMap<string, Dealer>;
}

/**
 * Keeps each dealer's catalogue in the store, version by version, so that a mail is reckoned with what its buyer saw. One
 * that can't be had or used leaves the last in its place.
 */
export class CatalogueKeeper {
  readonly #parts: KeeperParts;
  #timer: NodeJS.Timeout | undefined;

  constructor(parts: KeeperParts) {
    this.#parts = parts;
  }

  /** @returns a line for each dealer whose catalogue can't be used, with what to do */
  async look(): Promise<string[]> {
    const looks = [...this.#parts.dealers.values()].map(async (dealer) => this.#lookAt(dealer));
    return (await Promise.all(looks)).filter((line) => line !== undefined);
  }

  async #lookAt({ id, catalogue: place }: Dealer): Promise<string | undefined> {
    const { store, clock, log } = this.#parts;
    const wrong = (why: string) => {
      log.warn('catalogue not usable', { dealer: id, why });
      return `${id}: the catalogue at ${place} can’t be used (${why}); acre-to-axle check tells its faults`;
    };
    let text: string;
    let document: unknown;
    try {
      text = (await textAt(place)).replace(/^\uFEFF/, '');
      document = JSON.parse(text);
    } catch (error) {
      return wrong(error instanceof SyntaxError ? 'no JSON' : String((error as { code?: unknown }).code ?? 'not to be had'));
    }
    const reading = readCatalogue(document);
    const usable = reading.value ?? readCatalogue(mended(document, reading.faults)).value;
    if (!usable) return wrong(`${reading.faults.length} faults`);
    await store.keepCatalogue({ dealer: id, hash: sha256(text), version: usable.version, asOf: usable.asOf, text }, clock.now());
    return undefined;
  }

  start(): void {
    this.#timer = setInterval(() => void this.look().catch((error: unknown) => this.#parts.log.error('catalogues not kept', error)), every);
    this.#timer.unref();
  }

  stop(): void {
    clearInterval(this.#timer);
  }
}
