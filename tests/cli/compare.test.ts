import { expect, test } from 'vitest';
import { readAnswers } from '../../src/answers/read-answers.ts';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import { widthOf } from '../../src/cli/sheet/layout.ts';
import { comparableIds, compare } from '../../src/reasons/compare.ts';
import { en } from '../../src/reasons/words/en.ts';
import { aMinute } from '../support/arbitraries.ts';
import { everyLanguage } from '../support/languages.ts';
import { buyers, changedCatalogue, demoAnswers, demoCatalogue, runWith } from './fake-io.ts';

const files = { 'lot.json': demoCatalogue, ...Object.fromEntries(buyers.map((buyer) => [buyer, demoAnswers(buyer)])) };
const compared = (buyer: string, ...typed: string[]) => runWith(files, 'compare', ...typed, '--catalogue', 'lot.json', '--answers', buyer);
const flat = (lines: readonly string[]) => lines.join(' ').replace(/\s+/g, ' ');
const catalogue = readCatalogue(JSON.parse(demoCatalogue)).value!;
const ids = comparableIds(catalogue);
/** Each of them takes a reckoning: some machines and some units stand for all. */
const some = ids.filter((id, index) => id !== 'rill' && index % 8 === 1);

test.each(buyers)('json of %s is what the core says of the two, in the order they were typed', async (buyer) => {
  const answers = readAnswers(JSON.parse(demoAnswers(buyer))).value!;
  for (const [a, b] of [['rill', 'tansy'], [ids.at(-1)!, 'rill']] as const) {
    const { code, out, err } = await compared(buyer, a, b, '--format', 'json');
    expect({ code, err }).toEqual({ code: 0, err: [] });
    expect(out).toEqual([JSON.stringify(compare(catalogue, answers, a, b))]);
    expect(JSON.parse(out[0]!)).toMatchObject({ sides: [{ id: a }, { id: b }] });
  }
}, aMinute);

test.each(buyers)('the sheet of %s says of any two which stands above, in 80 columns, in every language and both units', async (buyer) => {
  const answers = readAnswers(JSON.parse(demoAnswers(buyer))).value!;
  for (const [index, other] of some.entries()) {
    const { words, tag } = everyLanguage[index % everyLanguage.length]!;
    const units = (index + Math.floor(index / everyLanguage.length)) % 2 === 0 ? 'us' : 'metric';
    const { code, out } = await compared(buyer, 'rill', other, '--language', tag, '--units', units);
    expect(code).toBe(0);
    expect(out.filter((line) => widthOf(line) > 80 || /[ \n]$/.test(line))).toEqual([]);
    const { by, gates, lift } = compare(catalogue, answers, 'rill', other);
    const sheet = flat(out);
    expect(sheet).toContain(flat([words.contrast.by[by]]));
    for (const { need } of gates) expect(sheet).toContain(flat([words.needs[need]!]));
    expect(sheet.includes(flat([words.contrast.liftHeading]))).toBe(lift.gates.length + lift.criteria.length > 0);
  }
}, aMinute);

test('an angle at which a machine tips is never shown', async () => {
  const answers = JSON.stringify({
    format: 'acre-to-axle/answers/1', land: { slope: { value: 14, unit: 'deg' }, overhead: 'open' },
    tasks: [{ task: 'lift-bales', must: true, weight: { value: 300, unit: 'lb' }, height: { value: 4, unit: 'ft' } }],
  });
  const of = async (other: string) => (await runWith({ lot: demoCatalogue, answers }, 'compare', 'rill', other, '--catalogue', 'lot', '--answers', 'answers')).out.join('\n');
  const sheets = await Promise.all(some.map(of));
  expect(sheets.filter((sheet) => sheet.includes(en.needs['slope.tip-angle']!)).length).toBeGreaterThan(0);
  expect(sheets.filter((sheet) => /\d ?°|degree/.test(sheet))).toEqual([]);
}, aMinute);

test('an id that isn’t there is named with the nearest, both if both are wrong, and nothing is said else', async () => {
  const { code, out, err } = await compared('first-acre', 'rilll', 'tansy-2O22');
  expect({ code, out }).toEqual({ code: 2, out: [] });
  expect(err).toEqual([expect.stringMatching(/"rilll".*nearest: rill\)/), expect.stringMatching(/"tansy-2O22".*nearest: tansy-2022\)/)]);
  expect((await compared('first-acre', 'rill', 'xyzzyxyzzyxyzzy')).err[0]).not.toContain('nearest');
});

test('a unit that is sold can’t be compared', async () => {
  const lot = changedCatalogue(({ units }) => { units[0].status = 'sold'; });
  const of = (text: string) => runWith({ lot: text, buyer: demoAnswers('first-acre') }, 'compare', 'rill-2024', 'tansy', '--catalogue', 'lot', '--answers', 'buyer');
  expect((await of(lot)).code).toBe(2);
  expect((await of(demoCatalogue)).code, 'control').toBe(0);
});

test('the same twice, one alone or three are a fault of the command', async () => {
  for (const typed of [['rill', 'rill'], ['rill'], [], ['rill', 'tansy', 'crag']]) {
    const { code, out, err } = await compared('first-acre', ...typed);
    expect({ code, out }, typed.join()).toEqual({ code: 2, out: [] });
    expect(err[0]).toMatch(/^acre-to-axle: /);
  }
});

test('faults of a file are listed, and nothing is compared', async () => {
  const { code, out, err } = await runWith({ ...files, bad: '{"format": "acre-to-axle/answers/1", "land": 3}' }, 'compare', 'rill', 'tansy', '--catalogue', 'lot.json', '--answers', 'bad');
  expect({ code, out }).toEqual({ code: 1, out: [] });
  expect(err).toHaveLength(1);
});

test('help lists it and tells how it is typed', async () => {
  expect(flat((await runWith({}, 'help')).out)).toContain(' compare ');
  expect(flat((await runWith({}, 'help', 'compare')).out)).toContain('compare A B --catalogue FILE --answers FILE');
});
