import type { Fault } from '../../documents/fault.ts';
import type { Database } from './database.ts';
import { retire, type Retired } from './retire.ts';
import { readWaitingFile, writeWaitingFile } from './waiting-file.ts';
import type { WaitingStore } from './waiting-store.ts';

/** An intake as staff see it: they can't read it either. */
export interface Listed {
  /** Undefined for one this page can't read. */
  id: string | undefined;
  /** Its place in the queue: the number a damaged one has too. */
  place: number;
  is: 'queued' | 'sending' | 'needs-staff' | 'newer' | 'damaged';
  createdAt?: number;
  label?: string;
  /** Why it needs staff. */
  code?: string;
}

/** A file of what waits. */
export interface WaitingFile {
  text: string;
  /** Which places of the queue it holds. */
  places: readonly number[];
}

export interface StaffDeskParts {
  database: Database;
  store: WaitingStore;
  /** Shows the queue anew, and sends. */
  changed(): Promise<void>;
  stop(): void;
}

/** What staff can do with a queue. Every call may throw StorageTrouble. */
export class StaffDesk {
  readonly #parts: StaffDeskParts;

  constructor(parts: StaffDeskParts) {
    this.#parts = parts;
  }

  /** All that waits, in its order. */
  async list(): Promise<Listed[]> {
    return (await this.#parts.store.all()).map(({ place, found }) => {
      if (found.is !== 'waiting') return { id: undefined, place, is: found.is };
      const { id, state, createdAt, label, code } = found.waiting;
      return { id, place, is: state, createdAt, ...(label !== undefined && { label }), ...(code !== undefined && { code }) };
    });
  }

  /** Lets what was refused be sent once more, after what stood in its way was put right: one of them, or all. */
  async again(id?: string): Promise<void> {
    await this.#parts.store.sendAgain(id);
    await this.#parts.changed();
  }

  /** Throws one away that needs staff and was seen to. @returns whether it was such a one */
  async remove(place: number): Promise<boolean> {
    const isGone = await this.#parts.store.discard(place);
    await this.#parts.changed();
    return isGone;
  }

  /** All that waits, sealed as it is. It goes on waiting here; who sends it twice does no harm. */
  async toFile(): Promise<WaitingFile> {
    const all = await this.#parts.store.all();
    return { text: writeWaitingFile(all.map(({ record }) => record)), places: all.map(({ place }) => place) };
  }

  /** Takes in what another device wrote; what is here already stays as it is. */
  async fromFile(text: string): Promise<{ taken: number; already: number; faults: readonly Fault[] }> {
    const { records, faults } = readWaitingFile(text);
    const taken = await this.#parts.store.add(records);
    await this.#parts.changed();
    return { taken, already: records.length - taken, faults };
  }

  /**
   * Deletes all that is kept here, where nothing is lost by it; then this page keeps nothing any more.
   *
   * @param saved       a file of {@link toFile} that staff saved
   * @param dropParked  parked intakes may go
   */
  async retire({ saved, dropParked = false }: { saved?: WaitingFile; dropParked?: boolean } = {}): Promise<Retired> {
    const retired = await retire(this.#parts.database, new Set(saved?.places), dropParked);
    if (retired.kind === 'retired' || retired.kind === 'other-window') this.#parts.stop();
    return retired;
  }
}
