import type { Finding, SheetKind } from './finding.ts';
import { limits } from './limits.ts';

export interface Decoded {
  /** Without a byte-order mark; undefined where the file is refused. */
  text: string | undefined;
  encoding: 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';
  findings: Finding[];
}

/** The platform's own, which is neither of the page nor of Node alone; the core knows only what it uses of it. */
declare const TextDecoder: new (label: string, options?: { fatal?: boolean }) => { decode(bytes: Uint8Array): string };

const startsWith = (bytes: Uint8Array, ...first: number[]) => first.every((byte, index) => bytes[index] === byte);

/** Bytes 80 to 9F of Windows-1252 after the WHATWG Encoding Standard, index windows-1252. */
const upper = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';
const firstUpper = 0x80;

/** Node 20 decodes Windows-1252 as Latin-1: what it leaves as control characters is put right here, and elsewhere is right. */
const windows1252 = (bytes: Uint8Array) =>
  new TextDecoder('windows-1252').decode(bytes).replace(/[\u0080-\u009f]/g, (control) => upper[control.codePointAt(0)! - firstUpper]!);

function utf8(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

/**
 * A file as text: UTF-16 by its mark, else UTF-8, else Windows-1252 with a notice. Never throws.
 *
 * @param bytes  the whole file; beyond {@link limits} it is refused unread
 */
export function decode(bytes: Uint8Array, sheet: SheetKind): Decoded {
  const refused = (finding: Finding): Decoded => ({ text: undefined, encoding: 'utf-8', findings: [finding] });
  if (bytes.length === 0) return refused({ code: 'file.empty', weight: 'fault', facts: {}, sheet });
  if (bytes.length > limits.bytes) {
    return refused({ code: 'file.too-large', weight: 'fault', facts: { limit: limits.bytes }, sheet, read: String(bytes.length) });
  }
  const marked = startsWith(bytes, 0xff, 0xfe) ? 'utf-16le' : startsWith(bytes, 0xfe, 0xff) ? 'utf-16be' : undefined;
  if (marked) {
    const text = new TextDecoder(marked).decode(bytes);
    return { text, encoding: marked, findings: [{ code: 'file.utf-16', weight: 'notice', facts: {}, sheet }] };
  }
  const text = utf8(bytes);
  const found = text ?? windows1252(bytes);
  if (found.trim() === '') return refused({ code: 'file.empty', weight: 'fault', facts: {}, sheet });
  // UTF-16 without its mark is valid UTF-8 with a NUL beside every letter.
  if (found.includes('\0')) return refused({ code: 'file.nul', weight: 'fault', facts: {}, sheet });
  return text === undefined
    ? { text: found, encoding: 'windows-1252', findings: [{ code: 'file.not-utf-8', weight: 'notice', facts: {}, sheet }] }
    : { text: found, encoding: 'utf-8', findings: [] };
}
