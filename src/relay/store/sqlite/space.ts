import { closeSync, fsyncSync, openSync, rmSync, statfsSync, statSync, writeSync } from 'node:fs';
import { randomBytes } from 'node:crypto';
import { dirname } from 'node:path';

const piece = 1_048_576;

/** Bytes of a file, 0 where it isn't there. */
export const sizeOf = (file: string) => statSync(file, { throwIfNoEntry: false })?.size ?? 0;

/** Free bytes of the file system a file is on, for whoever isn't root. */
export function freeBytesAt(file: string): number {
  const { bavail, bsize } = statfsSync(dirname(file));
  return bavail * bsize;
}

/**
 * Room kept for need. A full disk can't be talked out of being full: not even deleting works, for that is written first. So a
 * file of ballast lies beside the store, to be let go of when what is stored has to be brought to its end.
 */
export class Space {
  readonly #file: string;
  readonly #wal: string;
  readonly #bytes: number;
  readonly #free: () => number;

  /** @param bytes  of ballast; 0 for none */
  constructor(store: string, bytes: number, free: () => number = () => freeBytesAt(store)) {
    this.#file = `${store}.ballast`;
    this.#wal = `${store}-wal`;
    this.#bytes = bytes;
    this.#free = free;
  }

  /** Below it nothing new is taken: the ballast has to fit again, and the log twice. */
  get #line() {
    return this.#bytes - sizeOf(this.#file) + this.#bytes + 2 * sizeOf(this.#wal);
  }

  free(): number {
    return this.#free();
  }

  /** Whether there is room for something new; lays the ballast down again as soon as there is. */
  roomForNew(): boolean {
    if (this.#bytes === 0) return true;
    if (this.#free() < this.#line) return false;
    if (sizeOf(this.#file) < this.#bytes) this.lay();
    return true;
  }

  /** Writes the ballast; where it doesn't fit there is none, and nothing new is taken. */
  lay(): void {
    if (this.#bytes === 0 || sizeOf(this.#file) >= this.#bytes) return;
    if (this.#free() < this.#line) return;
    try {
      const handle = openSync(this.#file, 'w', 0o600);
      try {
        // A disk that packs what it stores makes nothing of zeros.
        for (let left = this.#bytes; left > 0; left -= piece) writeSync(handle, randomBytes(Math.min(piece, left)));
        fsyncSync(handle);
      } finally {
        closeSync(handle);
      }
    } catch {
      this.letGo();
    }
  }

  /** @returns false where there was no ballast */
  letGo(): boolean {
    if (sizeOf(this.#file) === 0) return false;
    rmSync(this.#file, { force: true });
    return true;
  }
}
