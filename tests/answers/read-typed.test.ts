import { expect, test } from 'vitest';
import { questions, type Field } from '../../src/answers/questions.ts';
import { readTyped } from '../../src/answers/read-typed.ts';

const typing = { units: 'us', decimalMark: '.', currency: 'USD' } as const;
const fields: readonly Field[] = questions.flatMap((question): readonly Field[] => question.fields);
const sums = fields.filter((field) => field.control === 'money');

test.each(sums)('the example of $at is itself taken', (field) => {
  expect(readTyped(field, String(field.example), typing)).toEqual({ value: { value: field.example, currency: 'USD' } });
});

test.each(sums)('what can only be a slip of the pen in $at is asked about', (field) => {
  expect(readTyped(field, String(field.from - 1), typing)).toMatchObject({ fault: { fault: 'too-small', from: field.from } });
  expect(readTyped(field, String(field.to + 1), typing)).toMatchObject({ fault: { fault: 'too-big', to: field.to } });
});
