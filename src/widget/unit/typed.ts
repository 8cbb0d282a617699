import type { Field } from '../../answers/questions.ts';
import { readTyped, type Value } from '../../answers/read-typed.ts';
import type { AskingVoice } from '../../reasons/asking-voice.ts';
import { formatNumber } from '../../units/formats.ts';
import { unitWord } from '../../units/show.ts';
import { sayValue } from '../say-value.ts';

/** A way that no dealer drives is a slip of the pen. */
export const distanceField = { at: 'haul.delivery', control: 'quantity', kind: 'length', us: 'mi', metric: 'km', from: 0, to: 3000, boundUnit: 'mi' } as const satisfies Field;

const examples = { quantity: 10, number: 7 } as const;

export type TypedIn = { value?: Value } | { fault: string };

/** What a box beside a unit says: a value, nothing, or what is wrong with it in words. */
export function typedIn(field: Extract<Field, { control: 'quantity' | 'number' }>, typed: string, label: string, { words, reader }: AskingVoice): TypedIn {
  const read = readTyped(field, typed, { units: reader.units, decimalMark: words.decimalMark, currency: reader.currency });
  if (!('fault' in read)) return read.value === undefined ? {} : { value: read.value as Value };
  const { fault, word = '', units = [], from, to, unit, either } = read.fault;
  const said = (value: number | undefined, digits = 0) => (value === undefined ? '' : `${formatNumber(value, reader.locale, { maximumFractionDigits: digits })}${unit ? ` ${unitWord(unit, reader)}` : ''}`);
  const [one = '', other = ''] = either?.map((value) => sayValue(value, reader)) ?? [];
  const own = field.control === 'quantity' ? ` ${unitWord(field[reader.units], reader)}` : '';
  return { fault: words.faults[fault]({ label, word, units: words.list(units), from: said(from), to: said(to), example: `${examples[field.control]}${own}`, one, other }) };
}
