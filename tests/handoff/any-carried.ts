import fc from 'fast-check';
import { answersFormat } from '../../src/answers/names.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { Field, Keys } from '../../src/handoff/fields.ts';

const asAnswers = (said: unknown) => ({ format: answersFormat, ...(said as object) }) as unknown as AnswersDocument;

/** Fields whose schema wants more than a number of zero or more. */
const wholeFromOne = ['drivers.count'];
const positive = /^owned\.(?!price|labourHours)/;

const double = fc.double({ min: 0, noNaN: true, noDefaultInfinity: true }).map((value) => value + 0);
/** Numbers as people type them, and any other. */
const anyNumber = fc.oneof(
  fc.nat(2000), fc.integer({ min: 1, max: 99 }).map((value) => value * 1000), fc.integer({ min: 1, max: 9999 }).map((value) => value / 100),
  fc.integer({ min: 1, max: 4000 }).map((value) => Number((value / 60).toPrecision(12))), double,
);
const numberAt = (place: string) => (wholeFromOne.includes(place) ? fc.integer({ min: 1, max: 9 }) : positive.test(place) ? anyNumber.filter((value) => value > 0) : anyNumber);

function valuesOf(field: Field, place: string): fc.Arbitrary<unknown> {
  switch (field.is) {
    case 'choice':
      return fc.constantFrom(...field.of);
    case 'yes-no':
      return fc.boolean();
    case 'number':
      return numberAt(place);
    case 'amount':
      return fc.record({ value: numberAt(place), unit: fc.constantFrom(...field.units) });
    case 'money':
      return fc.record({ value: anyNumber, currency: fc.oneof(fc.constantFrom(...field.currencies), fc.stringMatching(/^[A-Z]{3}$/)) });
    case 'several':
      return fc.oneof(fc.subarray([...field.of]), fc.shuffledSubarray([...field.of]), fc.array(fc.constantFrom(...field.of), { maxLength: 12 }));
    case 'record':
      return recordOf(field.keys, place);
    case 'records':
      return fc.array(recordOf(field.keys, place), { maxLength: 4 });
    case 'kinds':
      return fc.shuffledSubarray(Object.keys(field.of), { maxLength: 6 })
        .chain((kinds) => fc.tuple(...kinds.map((kind) => recordOf(field.of[kind]!, place).map((rest) => ({ [field.key]: kind, ...(rest as object) })))));
    case 'either':
      return fc.oneof(...field.of.filter(({ is }) => is !== 'kept-back').map((each) => valuesOf(each, place)));
    default:
      throw new Error(`${place} is kept back`);
  }
}

const recordOf = (keys: Keys, place: string): fc.Arbitrary<unknown> => fc.record(
  Object.fromEntries(Object.entries(keys).filter(([, { field }]) => field.is !== 'kept-back').map(([key, { field }]) => [key, valuesOf(field, place ? `${place}.${key}` : key)])),
  { requiredKeys: [] },
);

/** Any answers a layout carries: all words, all units, any numbers, lists in any order. */
export const anyCarried = (keys: Keys): fc.Arbitrary<AnswersDocument> => recordOf(keys, '').map(asAnswers);

/** The n-th value of each field: its n-th word or unit, and a number that goes with it. */
function nth(field: Field, n: number): unknown {
  const word = (of: readonly string[]) => of[n % of.length]!;
  const amount = [7, 12, 1500, 0.5, 6.66666666667, 0, 123.456, 1e6][n % 8]!;
  switch (field.is) {
    case 'choice': return word(field.of);
    case 'yes-no': return n % 2 === 1;
    case 'number': return amount;
    case 'amount': return { value: amount, unit: word(field.units) };
    case 'money': return { value: amount, currency: word([...field.currencies, 'SEK']) };
    case 'several': return n % 2 === 0 ? [word(field.of)] : [word(field.of), field.of[0]!];
    case 'record': return nthOf(field.keys, n);
    case 'records': return [nthOf(field.keys, n)];
    case 'kinds': return [{ [field.key]: word(Object.keys(field.of)), ...(nthOf(field.of[word(Object.keys(field.of))]!, n) as object) }];
    case 'either': return nth(field.of.filter(({ is }) => is !== 'kept-back')[n % field.of.filter(({ is }) => is !== 'kept-back').length]!, n);
    default: return undefined;
  }
}
const nthOf = (keys: Keys, n: number): unknown => Object.fromEntries(Object.entries(keys).map(([key, { field }]) => [key, nth(field, n)]));

const mostWords = 60;
/** Documents that between them say every word, kind and unit of a layout. */
export const answersWithEveryWord = (keys: Keys) => Array.from({ length: mostWords }, (_, n) => asAnswers(nthOf(keys, n)));
