import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import { notCleared } from '../../src/needs/all.ts';
import { answersOf } from '../../src/answers/answers.ts';
import { cautionIds } from '../../src/reasons/cautions.ts';
import { readerFor } from '../../src/reasons/asking-voice.ts';
import { namesIn, sayAddition, sayBecause, sayCaution, sayReason, saySourceOfRule, sayWorking, type Voice } from '../../src/reasons/say.ts';
import type { Reason, Shortlist } from '../../src/reasons/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { en } from '../../src/reasons/words/en.ts';
import { ruleBook } from '../../src/trade/book.ts';
import { aMinute, anyAnswers, anyCatalogue, runs } from '../support/arbitraries.ts';
import { catalogueForTests, lb, lineUp, soundUnit, usd, withMachine, withUnits } from '../support/catalogue-for-tests.ts';
import { everyWords } from '../support/languages.ts';
import { mustDo, saying, unitsIn } from '../support/reckon.ts';

const anyLanguage = fc.constantFrom(...everyWords);
const voiceFor = (catalogue: CatalogueDocument, units: 'us' | 'metric', words = en): Voice => {
  const reader = readerFor(words, units, catalogue.dealer.locale, catalogue.dealer.currency);
  return { words, reader, nameOf: namesIn(catalogue, reader) };
};

/** What no sentence may show: a figure or word that was missing when it was made, and the hole it left. French keeps a no-break space before a colon. */
const holes = /undefined|NaN|Infinity|null|\[object|\$\{| {2}|\u00a0{2}|^\s*$|\s[.,]| [;:]|\(\s*\)|^\s|\s$/;
const broken = (sentences: readonly string[]) => [...new Set(sentences.filter((sentence) => holes.test(sentence)))];

test.each(['It needs: .', 'It is undefined long.', 'about NaN', '', 'It needs  two.', 'Ask the dealer for .', 'Not known :', 'a deck ()', ' hangs'])('control: "%s" would be found', (sentence) => {
  expect(broken([sentence])).toEqual([sentence]);
});

const reasonsIn = (result: Shortlist): Reason[] => [...[...result.shortlist, ...result.askDealer].flatMap(({ reasons }) => reasons), ...unitsIn(result).flatMap(({ reasons }) => reasons)];

function sentencesIn(result: Shortlist, voice: Voice): string[] {
  const taskOf = new Map(result.needs.map(({ id, task }) => [id, task]));
  const places = [...result.shortlist, ...result.askDealer];
  const packages = [...places, ...unitsIn(result)].map((each) => each.package);
  return [
    ...reasonsIn(result).map((reason) => sayReason(reason, voice)),
    ...result.askDealer.flatMap(({ because }) => because.map((each) => sayBecause(each, 'unknown', taskOf.get(each.need), voice))),
    ...result.ruledOut.flatMap(({ because }) => because.map((each) => sayBecause(each, 'failed', taskOf.get(each.need), voice))),
    ...unitsIn(result).flatMap(({ because, verdict }) => because.map((each) => sayBecause(each, verdict === 'ruled-out' ? 'failed' : 'unknown', taskOf.get(each.need), voice))),
    ...packages.flatMap(({ additions, unpriced }) => [...additions, ...unpriced].map((each) => sayAddition(each, voice))),
    ...result.cautions.map((each) => sayCaution(each, voice)),
    ...result.notCleared.map(({ id, tasks }) => voice.words.notCleared[id as keyof typeof en.notCleared](voice.words.list(tasks.map((task) => voice.words.tasks[task])))),
  ];
}

test('of whatever answers and figures no sentence shows a hole, in either system of units, in any language', () => {
  fc.assert(fc.property(anyCatalogue, anyAnswers, fc.constantFrom('us', 'metric'), anyLanguage, (catalogue, answers, units, words) => {
    const sentences = sentencesIn(shortlist(catalogue, answers), voiceFor(catalogue, units, words));
    expect(sentences.length).toBeGreaterThan(5);
    expect(broken(sentences)).toEqual([]);
  }), runs(60));
}, aMinute);

test('every need, spec, task and caution that is spoken of has words', () => {
  fc.assert(fc.property(anyCatalogue, anyAnswers, (catalogue, answers) => {
    const result = shortlist(catalogue, answers);
    const specs = [
      ...reasonsIn(result).flatMap(({ missing = [] }) => missing), ...result.unknowns.flatMap(({ missing }) => missing),
      ...[...result.shortlist, ...result.askDealer].flatMap(({ contributions }) => Object.values(contributions).flatMap(({ missing = [] }) => missing)),
    ];
    expect([...new Set(specs.filter((spec) => !Object.hasOwn(en.specs, spec)))]).toEqual([]);
    expect(result.needs.flatMap(({ id }) => (Object.hasOwn(en.needs, id) ? [] : [id]))).toEqual([]);
    expect(reasonsIn(result).flatMap(({ id }) => (Object.hasOwn(en.reasons, id) ? [] : [id]))).toEqual([]);
    expect(result.cautions.flatMap(({ id }) => (Object.hasOwn(en.cautions, id) ? [] : [id]))).toEqual([]);
    expect(result.unknowns.filter(({ missing }) => missing.length === 0)).toEqual([]);
  }), runs(60));
}, aMinute);

test('every working can be followed: its statement, formula, source, and each term by name', () => {
  fc.assert(fc.property(anyAnswers, fc.constantFrom('us', 'metric'), (answers, units) => {
    const result = shortlist(catalogueForTests(), answers);
    const voice = voiceFor(catalogueForTests(), units);
    const workings = [
      ...result.needs.flatMap(({ working }) => working), ...reasonsIn(result).flatMap(({ working = [] }) => working),
      ...result.shortlist.flatMap(({ contributions }) => Object.values(contributions).flatMap(({ working = [] }) => working)),
    ];
    for (const working of workings) {
      expect(Object.keys(working.inputs).filter((name) => !Object.hasOwn(en.terms, name)), working.formula).toEqual([]);
      const { statement, formula, source, result: shown, terms } = sayWorking(working, voice);
      expect(broken([statement, formula, source, shown, ...terms.flatMap(({ name, value }) => [name, value])]), working.formula).toEqual([]);
    }
    const rules = result.needs.flatMap(({ rule }) => rule ?? []);
    expect(broken(rules.map((rule) => saySourceOfRule(rule, en)).filter((said) => said !== ''))).toEqual([]);
  }), runs(50));
}, aMinute);

test.each(everyWords)('every caution and every reason there is has words without a hole: $name', (words) => {
  expect(broken(cautionIds.map((id) => words.cautions[id]('clear snow', { tieDowns: '50%', tongueLeast: '10%', tongueMost: '15%', force: '4 times', above: '3,000 lb', times: '3 times' })))).toEqual([]);
  const full = { has: '5 in', wants: '6 in', apart: '1 in', best: '7 in', worst: '4 in', price: '$5', mass: '6 lb', part: 'a part', task: 'mow a lawn', year: '2018', typical: false, passage: 'door', noCoupling: false, onHitch: false, other: 'another part', deposit: '$2', months: '36 months', rate: '6%', missing: 'its weight' } as const;
  expect(broken(Object.values(words.reasons).flatMap((say) => [say(full), say({ ...full, noCoupling: false, onHitch: true })]))).toEqual([]);
  expect(broken(Object.values(words.additions).map((say) => say(full)))).toEqual([]);
});

test('what a buyer who says nothing leaves open is said of tasks that he hasn’t named either', () => {
  const open = notCleared(answersOf({ format: 'acre-to-axle/answers/1', land: { slope: 'steep' } }), ruleBook());
  expect(broken(open.map(({ id, tasks }) => en.notCleared[id](en.list(tasks.map((task) => en.tasks[task])))))).toEqual([]);
});

test.each([['smoothSeat', 'suspensionSeat'], ['tiltWheel', 'tiltWheel'], ['cruise', 'cruise']] as const)('%s that must be added is named as an addition', (wish, feature) => {
  const catalogue = withMachine(lineUp(), 'mid-economy', () => ({ [feature]: { availability: 'field-kit', price: usd(300) } }));
  const answers: AnswersDocument = saying({ comfort: { [wish]: true } });
  const additions = shortlist(catalogue, answers).shortlist.find(({ machine }) => machine === 'mid-economy')!.package.additions;
  expect(additions).toHaveLength(1);
  expect(broken(additions.map((each) => sayAddition(each, voiceFor(catalogue, 'us'))))).toEqual([]);
});

test('two machines may call their loaders alike, and none is named by that of the other', () => {
  const named = ['mid-deluxe', 'mid-economy'].reduce((catalogue, id) => withMachine(catalogue, id, ({ loaders = [] }) => ({
    loaders: loaders.map((loader) => ({ ...loader, id: 'the-loader', name: `Loader of the ${id}`, availability: 'field-kit' })),
  })), lineUp());
  // Ids that must differ from machine to machine are as good.
  if (readCatalogue(named).value === undefined) return;
  const answers = mustDo({ task: 'lift-pallets', weight: lb(200) });
  const voice = voiceFor(named, 'us');
  const said = (id: string) => shortlist(named, answers).shortlist.find(({ machine }) => machine === id)!.package.additions.filter(({ what }) => what === 'loader').map((each) => sayAddition(each, voice));
  expect(said('mid-economy')).toEqual([expect.not.stringContaining('mid-deluxe')]);
  expect(said('mid-deluxe')).toEqual([expect.not.stringContaining('mid-economy')]);
});

test('figures are said in the reader’s own units', () => {
  const catalogue = withUnits(lineUp(), soundUnit('the-unit', 'mid-economy'));
  const answers = mustDo({ task: 'lift-bales', weight: lb(800) });
  const said = (units: 'us' | 'metric') => sentencesIn(shortlist(catalogue, answers), voiceFor(catalogue, units)).join('\n');
  expect(said('us')).toContain('800\u00a0lb');
  expect(said('us')).not.toMatch(/\d\u00a0kg/);
  expect(said('metric')).toContain('363\u00a0kg');
  expect(said('metric')).not.toMatch(/\d\u00a0lb/);
});
