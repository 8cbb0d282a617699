import { open, rename } from 'node:fs/promises';
import { dirname } from 'node:path';

/** Writes a file so that there is always the old one or the new one, whole and on disk. */
export async function replaceFile(path: string, text: string, mode: number): Promise<void> {
  const beside = `${path}.new`;
  const file = await open(beside, 'w', mode);
  try {
    await file.writeFile(text);
    await file.sync();
  } finally {
    await file.close();
  }
  await rename(beside, path);
  const folder = await open(dirname(path));
  await folder.sync().catch(() => undefined);
  await folder.close();
}
