import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** Writes a file and the folders it lies in. */
export function write(path: string, text: string): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}

/** JSON as it is kept in files: the same text for the same content. */
export const json = (content: unknown) => `${JSON.stringify(content, null, 2)}\n`;
