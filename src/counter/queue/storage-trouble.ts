/** Why nothing could be kept. */
export const storageTroubles = [
  /** The browser lets this page keep nothing: storage is shut off, or the address is no secure one. */
  'refused',
  /** There is no room left. */
  'full',
  /** Another window keeps an older queue open and has to be closed. */
  'blocked',
  /** A newer page has taken the queue over: this one has to be loaded anew. */
  'newer-page',
  /** The queue was deleted: this device is retired. */
  'retired',
  /** The browser's storage stopped working; loading the page anew usually mends it. */
  'lost',
  /** It gave no answer in time. */
  'silent',
] as const;
export type StorageWhy = (typeof storageTroubles)[number];

/** Nothing was confirmed, and nothing may be told to be saved. */
export class StorageTrouble extends Error {
  readonly why: StorageWhy;

  constructor(why: StorageWhy, cause?: unknown) {
    super(`the queue can’t be used: ${why}`, { cause });
    this.name = 'StorageTrouble';
    this.why = why;
  }
}

/** What browsers call it (Indexed Database API 3.0, section 4; Web IDL, section 4.3). */
const known: Readonly<Record<string, StorageWhy>> = {
  QuotaExceededError: 'full', VersionError: 'newer-page', SecurityError: 'refused', NotSupportedError: 'refused',
  UnknownError: 'lost', InvalidStateError: 'lost', AbortError: 'lost', TransactionInactiveError: 'lost', TimeoutError: 'silent',
};

/**
 * What is the matter, where the storage is at fault.
 *
 * @throws what was thrown, where it is no fault of the storage
 */
export function troubleOf(thrown: unknown): StorageTrouble {
  if (thrown instanceof StorageTrouble) return thrown;
  const why = thrown instanceof DOMException ? known[thrown.name] : undefined;
  if (!why) throw thrown;
  return new StorageTrouble(why, thrown);
}
