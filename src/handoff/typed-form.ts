import { unpack, type Packed, type Unpacked } from './pack.ts';
import { toBytes, toSigns } from './signs.ts';

/** D. Crockford's Base 32: no I, L, O or U, so that none is taken for another. */
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const bits = 5;
const group = 5;
/** Characters somebody types without losing his place, hyphens and all. */
export const longestTyped = 60;

/** A form to read out and type, or by how much it would be too long for that. */
export type TypedForm = { text: string } | { tooLong: { length: number; most: number } };

/** Packed answers in groups of five signs. Nothing is cut off: what is too long for typing says so. */
export function typedForm({ bytes }: Pick<Packed, 'bytes'>): TypedForm {
  const groups = toSigns(bytes, alphabet, bits).match(new RegExp(`.{1,${group}}`, 'g')) ?? [];
  const text = groups.join('-');
  return text.length > longestTyped ? { tooLong: { length: text.length, most: longestTyped } } : { text };
}

/** As people type it: small or capital, with blanks or hyphens or none, O for 0, I and L for 1. */
const plain = (typed: string) => typed.normalize('NFKC').toUpperCase().replace(/[\s\p{Pd}._]/gu, '').replaceAll('O', '0').replace(/[IL]/g, '1');

/** Answers from a form as typed, or why there are none. */
export function readTypedForm(typed: string): Unpacked {
  const signs = plain(typed);
  if (signs === '') return { refused: { code: 'nothing' } };
  const strange = [...signs].findIndex((sign) => !alphabet.includes(sign));
  if (strange >= 0) return { refused: { code: 'sign', sign: [...signs][strange]!, group: Math.floor(strange / group) + 1 } };
  if (signs.length > longestTyped) return { refused: { code: 'too-long' } };
  const bytes = toBytes(signs, alphabet, bits);
  return bytes ? unpack(bytes) : { refused: { code: 'damaged' } };
}
