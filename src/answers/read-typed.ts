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
  /** What an ambiguous answer may mean, decimals first; both are within the bounds. */
  either?: readonly [Value, Value];
}

/** A number, an amount with its unit, or a sum of money. */
export type Value = number | { value: number; unit: string } | { value: number; currency: string };

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
  const scale = factors[field.kind] as Record<string, number>;
  const bounds = { from: (field.from * scale[field.boundUnit]!) / scale[own]!, to: (field.to * scale[field.boundUnit]!) / scale[own]!, unit: own };
  const within = (amount: { value: number; unit: string }): Read => {
    const inBound = (amount.value * scale[amount.unit]!) / scale[field.boundUnit]!;
    if (inBound < field.from) return { fault: { at, fault: 'too-small', ...bounds } };
    return inBound > field.to ? { fault: { at, fault: 'too-big', ...bounds } } : { value: amount };
  };
  if ('amount' in read) return within(read.amount);
  if (read.fault === 'ambiguous') return oneOf(at, [within(read.either[0]), within(read.either[1])]);
  return { fault: { at, fault: read.fault, unit: own, ...(read.word && { word: read.word, units: unitsOf(field.kind) }) } };
}

/** Where only one of two readings is within the bounds, it is meant; where both are, the buyer is asked. */
function oneOf(at: string, [decimal, thousands]: readonly [Read, Read]): Read {
  if ('fault' in decimal) return thousands;
  return 'fault' in thousands ? decimal : { fault: { at, fault: 'ambiguous', either: [decimal.value as Value, thousands.value as Value] } };
}

const plainNumber = (at: string, typed: string, { decimalMark }: Typing, from: number, to: number, make: (value: number) => Value): Read => {
  const within = (value: number): Read => {
    if (value < from) return { fault: { at, fault: 'too-small', from, to } };
    return value > to ? { fault: { at, fault: 'too-big', from, to } } : { value: make(value) };
  };
  const number = readNumber(typed, decimalMark);
  if (number === undefined) return { fault: { at, fault: 'not-a-number', from, to } };
  return typeof number === 'number' ? within(number) : oneOf(at, [within(number.either[0]), within(number.either[1])]);
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
