import type { Keys } from './fields.ts';
import { ours } from './in-fragment.ts';
import { layouts, unpack, type Packed, type Unpacked } from './pack.ts';
import { toBytes, toSigns } from './signs.ts';
import { readTypedForm } from './typed-form.ts';

/** The alphabet for addresses of RFC 4648, section 5. */
const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const bits = 6;
/** The name of ours in a fragment: `a`, and how what stands behind it is written. */
const written = 1;
/** Signs of a fragment that are looked at. */
const longest = 2_000;

/** The part of an address that holds the answers; it is never sent to a server. */
export const fragmentOf = ({ bytes }: Pick<Packed, 'bytes'>) => `a${written}=${toSigns(bytes, alphabet, bits)}`;

/**
 * A page's address with the answers in its fragment, in place of any fragment it has.
 *
 * @returns undefined where they are longer than is read back: only a document written by hand is
 */
export function linkTo(page: string, packed: Pick<Packed, 'bytes'>): string | undefined {
  const fragment = fragmentOf(packed);
  return fragment.length > longest ? undefined : `${page.split('#', 1)[0]}#${fragment}`;
}

/**
 * Answers from the fragment of an address, or why there are none; undefined where nothing of ours is in it, as on
 * any plain visit.
 *
 * @param fragment  of the address, with its # or without
 */
export function readFragment(fragment: string, known: readonly Keys[] = layouts): Unpacked | undefined {
  const [, version, signs] = ours.exec(fragment.slice(0, longest + 1)) ?? [];
  if (version === undefined || signs === undefined) return undefined;
  if (fragment.length > longest) return { refused: { code: 'too-long' } };
  if (Number(version) > written) return { refused: { code: 'newer' } };
  const bytes = Number(version) === written ? toBytes(signs.replace(/\s/g, ''), alphabet, bits) : undefined;
  return bytes ? unpack(bytes, known) : { refused: { code: 'damaged' } };
}

/** Answers from whatever was pasted, scanned or typed: a link, its fragment, or the typed form. Never throws. */
export function readHandedOn(text: string): Unpacked {
  const given = text.trim();
  if (given === '') return { refused: { code: 'nothing' } };
  const fragment = given.includes('#') ? given.slice(given.indexOf('#')) : given;
  const found = readFragment(fragment);
  if (found) return found;
  return /[#:/?=@]/.test(given) || given.length > longest ? { refused: { code: 'not-ours' } } : readTypedForm(given);
}
