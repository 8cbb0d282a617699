import type { Field, Question } from '../answers/questions.ts';
import type { TypedFault } from '../answers/read-typed.ts';
import type { AskingVoice } from '../reasons/asking-voice.ts';
import { formatNumber } from '../units/formats.ts';
import { unitWord } from '../units/show.ts';
import type { StepFault } from './box.ts';
import { sayValue } from './say-value.ts';

const examples: Readonly<Record<string, number>> = { length: 8, mass: 800, area: 2, time: 2, angle: 12 };

/** A value that would have been right, in the reader's own units. */
function exampleOf(field: Field, { reader }: AskingVoice): string {
  const number = (value: number) => formatNumber(value, reader.locale);
  if (field.control === 'money') return number(field.example);
  if (field.control === 'number') return number(field.from < 10 ? 7 : 100);
  if (field.control !== 'quantity' && field.control !== 'choice-or-quantity') return '';
  const unit = field[reader.units];
  return `${number(unit === 'm' ? 2.4 : unit === 'kg' ? 360 : unit === 'in' ? 60 : unit === 'cm' ? 150 : examples[field.kind]!)} ${unitWord(unit, reader)}`;
}

/** A fault of what was typed, in words that name the field, the rule and an example. */
export function sayTypedFault({ fault, word = '', units = [], from, to, unit, either }: TypedFault, { label, example, digits = 2 }: { label: string; example: string; digits?: number }, { words, reader }: AskingVoice): string {
  const number = (value: number | undefined) =>
    (value === undefined ? '' : `${formatNumber(value, reader.locale, { maximumFractionDigits: digits })}${unit ? ` ${unitWord(unit, reader)}` : ''}`);
  const [one = '', other = ''] = either?.map((value) => sayValue(value, reader)) ?? [];
  return words.faults[fault]({ label, word, units: words.list(units), one, other, from: number(from), to: number(to), example });
}

/** A fault of a step in words. */
export function sayFault(fault: StepFault, field: Field, question: Question, voice: AskingVoice): string {
  const { words } = voice;
  if (fault.fault === 'nothing-chosen') return words.wizard.chooseOne;
  const label = words.questions[question.id as keyof typeof words.questions].fields[field.at]?.label ?? '';
  return sayTypedFault(fault, { label, example: exampleOf(field, voice) }, voice);
}
