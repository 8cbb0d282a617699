import { mkdir, open, rename } from 'node:fs/promises';
import { join } from 'node:path';
import type { Transport } from './transport.ts';

/** Flushes a file, or a folder's list of names. */
async function flushed(path: string, flags: string, write?: Uint8Array): Promise<void> {
  const handle = await open(path, flags, 0o600);
  try {
    if (write) await handle.writeFile(write);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Disks that may have room or be there again later; everything else somebody has to mend. */
const passing = new Set(['ENOSPC', 'EDQUOT', 'EMFILE', 'ENFILE', 'EAGAIN', 'EBUSY']);

/**
 * Writes every mail to a folder as a file that mail programs open, for trying a relay out. The same mail again is the same
 * file.
 */
export function folderTransport(folder: string): Transport {
  return {
    async send({ raw, name }) {
      const file = join(folder, `${name}.eml`);
      try {
        await mkdir(folder, { recursive: true, mode: 0o700 });
        await flushed(`${file}.part`, 'w', raw);
        await rename(`${file}.part`, file);
        await flushed(folder, 'r');
        return { kind: 'sent', reply: 'written' };
      } catch (error) {
        const code = String((error as { code?: unknown }).code);
        return passing.has(code) ? { kind: 'later', reason: `folder ${code}`, unreached: true, slower: false } : { kind: 'closed', reason: `folder ${code}` };
      }
    },
    abort() { /* A file takes no time worth breaking off. */ },
    async close() { /* Nothing is held open. */ },
  };
}
