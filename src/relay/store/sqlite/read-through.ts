import { closeSync, openSync, readSync, statSync } from 'node:fs';
import { freemem } from 'node:os';

const piece = 1_048_576;

/**
 * Reads a file from its beginning to its end, so that the system has it at hand. What looks at all of it in an order of its own,
 * as a check of its pages does, otherwise waits for a disk that jumps to and fro. What is larger than free memory is left alone.
 *
 * @throws as Node does where the disk fails
 */
export function readThrough(file: string): void {
  if (statSync(file).size > freemem()) return;
  const handle = openSync(file, 'r');
  try {
    const into = Buffer.allocUnsafe(piece);
    while (readSync(handle, into) > 0);
  } finally {
    closeSync(handle);
  }
}
