import type { Field } from '../../answers/questions.ts';
import { readTyped, type Value } from '../../answers/read-typed.ts';
import type { AskingVoice } from '../../reasons/asking-voice.ts';
import { unitWord } from '../../units/show.ts';
import { sayTypedFault } from '../say-fault.ts';

/** A way that no dealer drives is a slip of the pen. */
export const distanceField = { at: 'haul.delivery', control: 'quantity', kind: 'length', us: 'mi', metric: 'km', from: 0, to: 3000, boundUnit: 'mi' } as const satisfies Field;

const examples = { quantity: 10, number: 7 } as const;

export type TypedIn = { value?: Value } | { fault: string };

/** What a box beside a unit says: a value, nothing, or what is wrong with it in words. */
export function typedIn(field: Extract<Field, { control: 'quantity' | 'number' }>, typed: string, label: string, voice: AskingVoice): TypedIn {
  const { words, reader } = voice;
  const read = readTyped(field, typed, { units: reader.units, decimalMark: words.decimalMark, currency: reader.currency });
  if (!('fault' in read)) return read.value === undefined ? {} : { value: read.value as Value };
  const own = field.control === 'quantity' ? ` ${unitWord(field[reader.units], reader)}` : '';
  return { fault: sayTypedFault(read.fault, { label, example: `${examples[field.control]}${own}`, digits: 0 }, voice) };
}
