import { expect, test } from 'vitest';
import { readAnswers } from '../../src/answers/read-answers.ts';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import { widthOf } from '../../src/cli/sheet/layout.ts';
import type { Shortlist } from '../../src/reasons/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { readerFor } from '../../src/reasons/asking-voice.ts';
import { sayFormula } from '../../src/reasons/say-formula.ts';
import { en } from '../../src/reasons/words/en.ts';
import { rules } from '../../src/trade/book.ts';
import { formulaRules } from '../../src/trade/figures/formulas.ts';
import { showAmount } from '../../src/units/show.ts';
import { aMinute } from '../support/arbitraries.ts';
import { everyLanguage } from '../support/languages.ts';
import { buyers, changedCatalogue, demoAnswers, demoCatalogue, faultForm, runWith } from './fake-io.ts';

const files = { 'lot.json': demoCatalogue, ...Object.fromEntries(buyers.map((buyer) => [buyer, demoAnswers(buyer)])) };
const shortlistOf = (buyer: string, ...more: string[]) => runWith(files, 'shortlist', '--catalogue', 'lot.json', '--answers', buyer, ...more);
const flat = (lines: readonly string[]) => lines.join(' ').replace(/\s+/g, ' ');

const reckoned = (catalogueText: string, answersText: string): Shortlist => {
  const { value, unknownTasks } = readAnswers(JSON.parse(answersText));
  return shortlist(readCatalogue(JSON.parse(catalogueText)).value!, value!, unknownTasks);
};

test.each(buyers)('json of %s is the bytes the browser computes', async (buyer) => {
  const { code, out, err } = await shortlistOf(buyer, '--format', 'json');
  expect({ code, err }).toEqual({ code: 0, err: [] });
  expect(out).toEqual([JSON.stringify(reckoned(demoCatalogue, demoAnswers(buyer)))]);
});

const reader = readerFor(en, 'us', 'en-US', 'USD');

test.each(buyers)('the sheet of %s tells every machine, caution and term', async (buyer) => {
  const { code, out, err } = await shortlistOf(buyer);
  expect({ code, err }).toEqual({ code: 0, err: [] });
  const sheet = flat(out);
  const result = reckoned(demoCatalogue, demoAnswers(buyer));
  const { machines, dealer } = JSON.parse(demoCatalogue) as { machines: { id: string; name: string }[]; dealer: { terms: { en: { guidance: string } } } };
  for (const { name } of machines) expect(sheet).toContain(name);
  for (const { id } of result.needs) expect(sheet).toContain(en.needs[id]);
  for (const { id, figures = {} } of result.cautions) {
    const shown = Object.fromEntries(Object.entries(figures).map(([name, { value, unit }]) => [name, showAmount(value, unit, reader)]));
    expect(sheet).toContain(en.cautions[id as keyof typeof en.cautions]('', shown).replace(/\s+/g, ' '));
  }
  expect(sheet).toContain(dealer.terms.en.guidance);
  for (const { units } of [...result.shortlist, ...result.askDealer]) for (const { unit } of units) expect(sheet).toContain(unit);
});

test.each(buyers)('the sheet of %s keeps to 80 columns in every language and both units', async (buyer) => {
  for (const { tag } of everyLanguage) {
    for (const units of ['us', 'metric']) {
      const { out } = await shortlistOf(buyer, '--language', tag, '--units', units);
      expect(out.filter((line) => widthOf(line) > 80)).toEqual([]);
      expect(out.filter((line) => /[ \n]$/.test(line))).toEqual([]);
    }
  }
}, aMinute);

const order = (out: readonly string[], ...headings: string[]) => headings.map((heading) => out.findIndex((line) => line.startsWith(heading)));

test('what is not cleared comes first, then the demands, the machines, and at last the terms', async () => {
  const { out } = await shortlistOf('steep-and-careful');
  const { result } = en;
  const places = order(out, result.notClearedHeading, 'What the work asks for', result.standing(4), '1. ', result.ruledOutHeading(8), result.changesHeading, result.cautionsHeading, result.termsHeading);
  expect(places).not.toContain(-1);
  expect(places).toEqual([...places].sort((a, b) => a - b));
});

test('buyers who left nothing unsaid read of nothing uncleared', async () => {
  expect(flat((await shortlistOf('first-acre')).out)).not.toContain(en.result.notClearedHeading);
});

test('an angle at which a machine tips is never shown, even where it decides', async () => {
  const answers = JSON.stringify({
    format: 'acre-to-axle/answers/1',
    land: { slope: { value: 14, unit: 'deg' }, overhead: 'open' },
    tasks: [{ task: 'lift-bales', must: true, weight: { value: 300, unit: 'lb' }, height: { value: 4, unit: 'ft' } }],
  });
  const { ruledOut, shortlist: [first] } = reckoned(demoCatalogue, answers);
  expect(ruledOut.flatMap(({ because }) => because.map(({ need }) => need))).toContain('slope.tip-angle');
  expect(JSON.stringify(first)).toContain('"formula":"slope.tip-angle"');
  const { out } = await runWith({ lot: demoCatalogue, answers }, 'shortlist', '--catalogue', 'lot', '--answers', 'answers');
  expect(flat(out)).toContain(en.needs['slope.tip-angle']);
  expect(out.join('\n')).not.toMatch(/\d ?°|degree/);
});

test('the serial of a unit is the dealer’s alone', async () => {
  const serials = (JSON.parse(demoCatalogue) as { units: { serial?: string }[] }).units.flatMap(({ serial }) => serial ?? []);
  expect(serials.length).toBeGreaterThan(5);
  for (const buyer of buyers) {
    for (const format of ['text', 'json']) {
      const sheet = flat((await shortlistOf(buyer, '--format', format)).out);
      expect(serials.filter((serial) => sheet.includes(serial))).toEqual([]);
    }
  }
});

test('the parts of a price add up to it', async () => {
  const { out } = await shortlistOf('hay-and-barn');
  const start = out.findIndex((line) => line.includes(en.result.package));
  const end = out.indexOf('', start);
  const dollars = (line: string) => Number(line.match(/\$([\d,]+)(?!.*\$)/)?.[1]?.replace(',', ''));
  const [whole, ...parts] = out.slice(start, end).map((line) => dollars(line.replace(/, fitting.*$/, '')));
  expect(parts.length).toBeGreaterThan(2);
  expect(parts.reduce((sum, part) => sum + part, 0)).toBe(whole);
});

test('every number of a formula in the working is explained', async () => {
  const { out } = await shortlistOf('hay-and-barn');
  const sheet = flat(out);
  const used = [...sheet.matchAll(/\[(\d+)\]:/g)].map(([, number]) => number);
  const told = out.flatMap((line) => /^\[(\d+)\] /.exec(line)?.[1] ?? []);
  expect(used.length).toBeGreaterThan(3);
  expect([...new Set(used)].sort()).toEqual([...told].sort());
});

test('a dealer’s own figure is marked as his', async () => {
  const lot = changedCatalogue((catalogue) => { catalogue.rules = { 'loader.margin': 0.4 }; });
  const of = async (catalogue: string) => flat((await runWith({ lot: catalogue, answers: demoAnswers('hay-and-barn') }, 'shortlist', '--catalogue', 'lot', '--answers', 'answers')).out);
  expect(await of(lot)).toContain(`40% (${en.result.dealersFigure})`);
  expect(await of(changedCatalogue((catalogue) => { delete catalogue.rules; }))).not.toContain(en.result.dealersFigure);
});

test('the sheet is in the dealer’s units unless others are asked for', async () => {
  const metric = changedCatalogue(({ dealer }) => { dealer.units = 'metric'; });
  const of = async (...more: string[]) => flat((await runWith({ lot: metric, answers: demoAnswers('hay-and-barn') }, 'shortlist', '--catalogue', 'lot', '--answers', 'answers', ...more)).out);
  expect(await of()).toContain('at least 408 kg');
  expect(await of('--units', 'us')).toContain('at least 900 lb');
});

test('a dealer without terms in a language has the default ones', async () => {
  const lot = changedCatalogue(({ dealer }) => { dealer.terms = { de: dealer.terms.de }; });
  const { out } = await runWith({ lot, answers: demoAnswers('first-acre') }, 'shortlist', '--catalogue', 'lot', '--answers', 'answers');
  expect(flat(out)).toContain(en.guidance);
});

test('where nothing stands it says so, and why', async () => {
  const answers = '{"format": "acre-to-axle/answers/1", "tasks": [{"task": "dig", "must": true, "depth": {"value": 40, "unit": "ft"}}]}';
  const { code, out } = await runWith({ lot: demoCatalogue, answers }, 'shortlist', '--catalogue', 'lot', '--answers', 'answers');
  expect(code).toBe(0);
  expect(flat(out)).toContain(en.result.none);
  expect(flat(out)).toContain(en.result.ruledOutHeading(12));
});

test('either file may come from standard input', async () => {
  const straight = await shortlistOf('first-acre');
  const answersPiped = await runWith({ ...files, '-': demoAnswers('first-acre') }, 'shortlist', '--catalogue', 'lot.json', '--answers', '-');
  const lotPiped = await runWith({ ...files, '-': demoCatalogue }, 'shortlist', '--catalogue=-', '--answers', 'first-acre');
  expect(answersPiped).toEqual(straight);
  expect(lotPiped).toEqual(straight);
});

test('faults of both files are listed, and nothing is reckoned', async () => {
  const lot = changedCatalogue(({ machines }) => { machines[0].tier = 'delux'; });
  const { code, out, err } = await runWith({ lot, answers: '{"format": "acre-to-axle/answers/1", "land": 3}' }, 'shortlist', '--catalogue', 'lot', '--answers', 'answers');
  expect({ code, out }).toEqual({ code: 1, out: [] });
  expect(err).toHaveLength(2);
  for (const line of err) expect(line).toMatch(faultForm);
});

test('a key that stands twice is a fault here too: nobody knows which was meant', async () => {
  const answers = '{"format": "acre-to-axle/answers/1", "land": {"slope": "flat", "slope": "steep"}}';
  const { code, out, err } = await runWith({ lot: demoCatalogue, answers }, 'shortlist', '--catalogue', 'lot', '--answers', 'answers');
  expect({ code, out }).toEqual({ code: 1, out: [] });
  expect(err).toEqual([expect.stringContaining('a second time')]);
});

test('keys and tasks of a newer version are named, and it goes on', async () => {
  const answers = '{"format": "acre-to-axle/answers/1", "wind": 3, "tasks": [{"task": "fly-kite"}, {"task": "constructor"}]}';
  const { code, out, err } = await runWith({ lot: demoCatalogue, answers }, 'shortlist', '--catalogue', 'lot', '--answers', 'answers');
  expect(code).toBe(0);
  expect(err.map((line) => line.split(' ')[0])).toEqual(['"wind"', '"fly-kite"', '"constructor"'].map((found) => `answers:1:${answers.indexOf(found) + 1}`));
  expect(flat(out)).toContain(en.cautions['task-unknown']('fly-kite'));
  expect(flat(out)).toContain(en.cautions['task-unknown']('constructor'));
  const json = await runWith({ lot: demoCatalogue, answers }, 'shortlist', '--catalogue', 'lot', '--answers', 'answers', '--format', 'json');
  expect(json.out).toEqual([JSON.stringify(reckoned(demoCatalogue, answers))]);
});

test('a name from a catalogue can’t move the cursor', async () => {
  const lot = changedCatalogue(({ machines }) => { machines[0].name = 'Rill\u001b[31m\n\u202eX'; });
  const { out } = await runWith({ lot, answers: demoAnswers('first-acre') }, 'shortlist', '--catalogue', 'lot', '--answers', 'answers');
  expect(flat(out)).toContain('Rill [31m X');
  expect(out.filter((line) => /[\p{Cc}\p{Cf}]/u.test(line))).toEqual([]);
});

/** A colon or a semicolon between words as English sets it; a time of day and a ratio have none behind them. */
const englishJoins = /[^\s:][:;](?=\s|$)/;

test.each(buyers)('the sheet of %s is joined as French sets its marks', async (buyer) => {
  const { out } = await shortlistOf(buyer, '--language', 'fr', '--units', 'metric');
  // What is printed in a source stays as it is.
  const printed = Object.values(rules).flatMap(({ source }) => ('title' in source ? [source.title, source.where ?? ''] : []));
  const ours = printed.filter((each) => englishJoins.test(each)).reduce((text, each) => text.replaceAll(each, ''), flat(out));
  expect(ours.match(/.{0,40}[^\s:][:;](?=\s|$)/g) ?? []).toEqual([]);
  expect((await shortlistOf(buyer)).out.join('\n')).toMatch(englishJoins);
});

test.each(everyLanguage)('the sums of a sheet go by formulas in its language: $tag', async ({ tag, words }) => {
  const { out } = await shortlistOf(buyers[0]!, '--language', tag, '--units', 'metric');
  const notes = flat(out);
  const formulas = Object.values(formulaRules).map(({ formula }) => formula);
  const said = formulas.filter((formula) => notes.includes(flat([sayFormula(formula, words)])));
  expect(said.length).toBeGreaterThan(3);
  if (tag !== 'en') expect(formulas.filter((formula) => notes.includes(`] ${formula}.`))).toEqual([]);
});
