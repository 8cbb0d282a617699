import fc from 'fast-check';
import type { Field } from '../../src/answers/questions.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';

/** A value a buyer may give to a field, as the widget would hand it on. */
export function valueOf(field: Field, answers: AnswersDocument): fc.Arbitrary<unknown> {
  const amount = (unit: string, from: number, to: number) => fc.double({ min: from, max: to, noNaN: true }).map((value) => ({ value, unit }));
  switch (field.control) {
    case 'choice':
      return fc.constantFrom(...field.options);
    case 'yes-no':
      return fc.boolean();
    case 'several':
      return fc.subarray([...field.options(answers)]);
    case 'order':
      return fc.shuffledSubarray([...field.options], { minLength: 1, maxLength: field.places });
    case 'quantity':
      return amount(field.boundUnit, field.from, field.to);
    case 'choice-or-quantity':
      return fc.oneof(fc.constantFrom(...field.options.filter((option) => option !== field.opens || !field.amountWanted)), amount(field.boundUnit, field.from, field.to));
    case 'money':
      return fc.integer({ min: field.from, max: field.to }).map((value) => ({ value, currency: 'USD' }));
    default:
      return fc.integer({ min: field.from, max: field.to });
  }
}
