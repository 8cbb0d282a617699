import { readAmount, readNumber, type ReadFault } from '../units/read.ts';
import { factors, unitsOf, type Kind, type UnitOf } from '../units/quantity.ts';
import type { Field, Typed } from './questions.ts';

/** What was wrong with a typed answer; the words name the field, the rule and an example. */
export interface TypedFault {
  at: string;
  fault: ReadFault | 'too-small' | 'too-big' | 'amount-wanted';
  /** The word that wasn't understood as a unit. */
  word?: string;
  /** The units that would have been. */
  units?: readonly string[];
  from?: number;
  to?: number;
  unit?: string;
}

export interface Typing {
  units: 'us' | 'metric';
  decimalMark: '.' | ',';
  currency: string;
}

/** What a field's box said: a value for the document, nothing, or a fault. */
export type Read = { value: unknown } | { fault: TypedFault };

function readQuantity(at: string, typed: string, field: Typed, { units, decimalMark }: Typing): Read {
  const own = field[units] as UnitOf<Kind>;
  const read = readAmount(field.kind, typed, own, decimalMark);
  if ('fault' in read) {
    return { fault: { at, fault: read.fault, unit: own, ...(read.word && { word: read.word, units: unitsOf(field.kind) }) } };
  }
  const { value, unit } = read.amount;
  const scale = factors[field.kind] as Record<string, number>;
  const inBound = (value * scale[unit]!) / scale[field.boundUnit]!;
  const bounds = { from: (field.from * scale[field.boundUnit]!) / scale[own]!, to: (field.to * scale[field.boundUnit]!) / scale[own]!, unit: own };
  if (inBound < field.from) return { fault: { at, fault: 'too-small', ...bounds } };
  if (inBound > field.to) return { fault: { at, fault: 'too-big', ...bounds } };
  return { value: read.amount };
}

const plainNumber = (at: string, typed: string, { decimalMark }: Typing, from: number, to: number, make: (value: number) => unknown): Read => {
  const value = readNumber(typed, decimalMark);
  if (value === 'ambiguous') return { fault: { at, fault: 'ambiguous' } };
  if (value === undefined) return { fault: { at, fault: 'not-a-number', from, to } };
  if (value < from) return { fault: { at, fault: 'too-small', from, to } };
  if (value > to) return { fault: { at, fault: 'too-big', from, to } };
  return { value: make(value) };
};

/**
 * Reads the text of one field's box. An empty box is no answer (`value` undefined), never zero.
 *
 * @param typed  what stands in the box, as typed
 */
export function readTyped(field: Field, typed: string, typing: Typing): Read {
  const text = typed.trim();
  if (text === '') return { value: undefined };
  switch (field.control) {
    case 'quantity':
    case 'choice-or-quantity':
      return readQuantity(field.at, text, field, typing);
    case 'money':
      return plainNumber(field.at, text.replace(/^\p{Sc}\s*|\s*\p{Sc}$|\s*[A-Z]{3}$/gu, ''), typing, field.from, field.to,
        (value) => ({ value, currency: typing.currency }));
    case 'number':
      return plainNumber(field.at, text, typing, field.from, field.to, (value) => value);
    default:
      return { value: text };
  }
}
