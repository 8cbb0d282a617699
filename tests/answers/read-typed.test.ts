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

const german = { units: 'metric', decimalMark: ',', currency: 'EUR' } as const;
const fieldAt = (at: string) => fields.find((field) => field.at === at)!;

test('a mark that may be read two ways is asked about only where both readings are within the bounds', () => {
  // A lawn of 1.5 ha or of 1,500 ha: the second is out of bounds. Of a pile of gravel both may be meant.
  expect(readTyped(fieldAt('land.mown'), '1,500', german)).toEqual({ value: { value: 1.5, unit: 'ha' } });
  expect(readTyped(fieldAt('budget.limit'), '18,000', german)).toEqual({ value: { value: 18_000, currency: 'EUR' } });
  expect(readTyped(fieldAt('tasks.move-loose.volume'), '1,500', german)).toEqual({
    fault: { at: 'tasks.move-loose.volume', fault: 'ambiguous', either: [{ value: 1.5, unit: 'm3' }, { value: 1500, unit: 'm3' }] },
  });
});
