import fc from 'fast-check';
import { expect, test } from 'vitest';
import { buyers, demoAnswers, demoCatalogue, faultForm, runWith, type Ran } from './fake-io.ts';

const aMinute = 60_000;
const runs = { numRuns: 200 };

const said = (text: string, format: string): Promise<Ran> =>
  runWith({ lot: demoCatalogue, answers: text }, 'shortlist', '--catalogue', 'lot', '--answers', 'answers', '--format', format);

function expectWellBehaved({ code, out, err }: Ran) {
  expect([0, 1]).toContain(code);
  expect(err.length > 0 || code === 0).toBe(true);
  expect(out.length > 0).toBe(code === 0);
  for (const line of err) expect(line.replace(/; went on without it$/, '')).toMatch(faultForm);
}

/** Every place of a document, by its path. */
function* pathsIn(value: unknown, path: (string | number)[] = []): Generator<(string | number)[]> {
  yield path;
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inside] of Object.entries(value)) yield* pathsIn(inside, [...path, Array.isArray(value) ? Number(key) : key]);
}

const put = (document: unknown, [key, ...rest]: readonly (string | number)[], value: unknown): unknown => {
  if (key === undefined) return value;
  const copy = (Array.isArray(document) ? [...document as unknown[]] : { ...(document as object) }) as Record<string | number, unknown>;
  copy[key] = put(copy[key], rest, value);
  return copy;
};

/** The answers of a demo buyer with anything at all in one place of them. */
const damaged = fc.constantFrom(...buyers).chain((buyer) => {
  const document: unknown = JSON.parse(demoAnswers(buyer));
  return fc.tuple(fc.constantFrom(...pathsIn(document)), fc.jsonValue()).map(([path, value]) => put(document, path, value));
});

test('any JSON value as answers gives a result or faults of one line each', async () => {
  await fc.assert(fc.asyncProperty(fc.jsonValue(), async (value) => expectWellBehaved(await said(JSON.stringify(value), 'json'))), runs);
}, aMinute);

test('answers with anything at all in one place give a sheet or faults of one line each', async () => {
  await fc.assert(fc.asyncProperty(damaged, async (value) => expectWellBehaved(await said(JSON.stringify(value), 'text'))), runs);
}, aMinute);

test('a text that is cut or scratched anywhere gives a result or faults of one line each', async () => {
  const text = demoAnswers('hay-and-barn');
  const scratched = fc.tuple(fc.nat(text.length), fc.nat(40), fc.string({ maxLength: 6 }))
    .map(([at, length, instead]) => text.slice(0, at) + instead + text.slice(at + length));
  await fc.assert(fc.asyncProperty(scratched, async (damagedText) => {
    const ran = await said(damagedText, 'json');
    if (ran.err.some((line) => line.startsWith('answers: '))) expect(ran.code).toBe(1);
    else expectWellBehaved(ran);
  }), runs);
}, aMinute);

test('control: the same form is not met by a line without a place', () => {
  expect('answers: there is no such file').not.toMatch(faultForm);
  expect('answers:1:1 land: read 1, expected 2\nat').not.toMatch(faultForm);
});
