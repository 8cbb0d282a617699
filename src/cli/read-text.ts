import type { Io } from './io.ts';

/** A file as text, or in plain words why there is none. */
export type Text = { text: string } | { complaint: string };

const complaints: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such file',
  EISDIR: 'this is a folder, not a file',
  EACCES: 'you have no permission to read this file',
  EPERM: 'you have no permission to read this file',
  EFBIG: 'this file is too large to be a catalogue or answers',
};

const byteOrderMark = '\uFEFF';
const startsWith = (bytes: Uint8Array, ...first: number[]) => first.every((byte, index) => bytes[index] === byte);

function decoded(bytes: Uint8Array): Text {
  if (bytes.length === 0) return { complaint: 'the file is empty' };
  if (startsWith(bytes, 0xff, 0xfe) || startsWith(bytes, 0xfe, 0xff)) {
    return { complaint: 'this is UTF-16 text; save it as UTF-8' };
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    if (text.startsWith(byteOrderMark)) return { complaint: 'the file begins with a byte-order mark; save it as UTF-8 without one' };
    return text.trim() === '' ? { complaint: 'there is nothing but blanks in the file' } : { text };
  } catch {
    return { complaint: 'this is no UTF-8 text' };
  }
}

/** A file's bytes, or standard input for `-`, or in plain words why there are none. */
export async function readBytes(path: string, io: Io): Promise<{ bytes: Uint8Array } | { complaint: string }> {
  try {
    return { bytes: path === '-' ? await io.readStdin() : await io.readFile(path) };
  } catch (error) {
    const code = (error as { code?: unknown }).code;
    if (typeof code !== 'string') throw error;
    return { complaint: complaints[code] ?? `the file can’t be read (${code})` };
  }
}

/** Reads a file, or standard input for `-`. */
export async function readText(path: string, io: Io): Promise<Text> {
  const read = await readBytes(path, io);
  return 'bytes' in read ? decoded(read.bytes) : read;
}
