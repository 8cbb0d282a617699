import type { handIn } from '../../request/hand-in.ts';
import { hour, type Clock } from './clock.ts';
import { drain, type RoundEnd } from './drain.ts';
import type { KeyRing } from './key-ring.ts';
import type { Waiting } from './record.ts';
import { fetchKeys, probe } from './relay.ts';
import type { StatusBoard } from './status.ts';
import { troubleOf } from './storage-trouble.ts';
import type { WaitingStore } from './waiting-store.ts';

export interface RoundsParts {
  store: WaitingStore;
  board: StatusBoard;
  keyRing: KeyRing;
  relay: string;
  deviceToken: string | undefined;
  clock: Clock;
  random(): number;
  handIn: typeof handIn;
  fetch: typeof globalThis.fetch;
  /** Ends what is under way. */
  signal: AbortSignal;
  tell(event: 'accepted' | 'refused', waiting: Waiting): void;
}

/** So often it is asked whether the relay has a newer key [ms]. */
const keysGoodFor = hour;

/** Rounds of sending against one relay, with what they show of it. */
export class Rounds {
  readonly #parts: RoundsParts;

  constructor(parts: RoundsParts) {
    this.#parts = parts;
  }

  /** @returns undefined where nothing is left to send */
  async round(): Promise<RoundEnd | undefined> {
    const { store, board, clock, random, relay, deviceToken, signal, handIn } = this.#parts;
    try {
      const end = await drain({
        store, random, now: clock.now, goesOn: () => !signal.aborted,
        probe: () => this.#probe(),
        send: (sealed, id) => handIn(relay, sealed, id, { signal, ...(deviceToken && { deviceToken }) }),
        accepted: (waiting) => this.#moved('accepted', waiting),
        refused: (waiting) => this.#moved('refused', waiting),
      });
      if (!end.idle) board.relay(end.trouble);
      await board.read();
      const { count, needsStaff } = board.status;
      return count > needsStaff ? end : undefined;
    } catch (thrown) {
      board.storage(troubleOf(thrown).why);
      return {};
    }
  }

  /** @throws StorageTrouble */
  async refreshKeys(): Promise<void> {
    const { relay, keyRing, clock, fetch, signal } = this.#parts;
    const keys = await fetchKeys(relay, { fetch, signal });
    if (keys) await keyRing.keep(keys, clock.now());
  }

  async #probe() {
    const { relay, keyRing, clock, fetch, signal } = this.#parts;
    const trouble = await probe(relay, { fetch, signal });
    if (!trouble && Math.abs(clock.now() - (await keyRing.heardAt() ?? 0)) > keysGoodFor) await this.refreshKeys();
    return trouble;
  }

  #moved(event: 'accepted' | 'refused', waiting: Waiting) {
    const { board, tell } = this.#parts;
    board.storage(undefined);
    void board.changed();
    tell(event, waiting);
  }
}
