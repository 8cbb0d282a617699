import { fromBase64Url } from '../../request/base64url.ts';
import type { RelayKey } from '../../request/schema.ts';
import type { Database } from './database.ts';
import { isObject } from './read-record.ts';
import { troubleOf } from './storage-trouble.ts';

const mostKeys = 10;
const place = 'relay-keys';

/** Whether a key is a point of the curve, so that nothing is sealed to what nobody can open. */
async function isKey(value: unknown): Promise<boolean> {
  if (!isObject(value) || typeof value.id !== 'string' || !/^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/.test(value.id) || typeof value.publicKey !== 'string') return false;
  try {
    await crypto.subtle.importKey('raw', fromBase64Url(value.publicKey), { name: 'ECDH', namedCurve: 'P-256' }, false, []);
    return true;
  } catch {
    return false;
  }
}

/** Reads what a relay says its keys are; undefined unless all of them are. */
export async function readKeys(answer: unknown): Promise<readonly RelayKey[] | undefined> {
  const keys = isObject(answer) ? answer.keys : undefined;
  if (!Array.isArray(keys) || keys.length === 0 || keys.length > mostKeys) return undefined;
  const areKeys = await Promise.all(keys.map(isKey));
  return areKeys.every(Boolean) ? keys.map(({ id, publicKey }: RelayKey) => ({ id, publicKey })) : undefined;
}

/**
 * The relay's keys as they are kept on the device, so that what is typed in can be sealed without a network. They come
 * from the relay's own address over TLS; nothing else vouches for them. What was sealed to an older key is sent as it
 * is: a relay takes that for sixty days, and nobody here could seal it anew.
 */
export class KeyRing {
  readonly #database: Database;
  /** So that an intake can be sealed even where the storage is lost: sealed it can still go into a file. */
  #last: RelayKey | undefined;

  constructor(database: Database) {
    this.#database = database;
  }

  /**
   * The key to seal to; undefined before the set-up.
   *
   * @throws StorageTrouble  where none is known
   */
  async current(): Promise<RelayKey | undefined> {
    try {
      this.#last = (await readKeys(await this.#database.kept(place)))?.[0] ?? this.#last;
    } catch (thrown) {
      if (!this.#last) throw troubleOf(thrown);
    }
    return this.#last;
  }

  /** When they were last heard of [ms since 1970]. @throws StorageTrouble */
  async heardAt(): Promise<number | undefined> {
    const kept = await this.#database.kept(place);
    return isObject(kept) && typeof kept.heardAt === 'number' ? kept.heardAt : undefined;
  }

  /** @throws StorageTrouble */
  async keep(keys: readonly RelayKey[], heardAt: number): Promise<void> {
    await this.#database.keep(place, { keys, heardAt });
    this.#last = keys[0];
  }
}
