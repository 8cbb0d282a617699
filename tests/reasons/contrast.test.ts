import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answersOf } from '../../src/answers/answers.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { rank, type Ranking } from '../../src/ranking/rank.ts';
import { comparableIds, compare } from '../../src/reasons/compare.ts';
import { contrast, sideOf, whyNot } from '../../src/reasons/contrast.ts';
import { figuresTell, sayGap, sayNeedState, sayTradeOff, sayWhyBelow } from '../../src/reasons/say-contrast.ts';
import { readerFor } from '../../src/reasons/asking-voice.ts';
import { namesIn } from '../../src/reasons/say.ts';
import type { Contrast } from '../../src/reasons/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { tradeOffsOf } from '../../src/reasons/trade-offs.ts';
import { anyAnswers, anyCatalogue } from '../support/arbitraries.ts';
import { catalogueForTests, inches, lb, lineUp, soundUnit, usd, withMachine, withUnits } from '../support/catalogue-for-tests.ts';
import { everyWords } from '../support/languages.ts';
import { mustDo, saying } from '../support/reckon.ts';

const rankingOf = (catalogue: CatalogueDocument, answers: AnswersDocument) => rank(catalogueOf(catalogue), answersOf(answers));
const placesIn = ({ standing, toAsk, ruledOut }: Ranking) => [...standing, ...toAsk, ...ruledOut];

/** Every machine beside the next in the order, and the first beside the last. */
function pairsIn(catalogue: CatalogueDocument, answers: AnswersDocument) {
  const ranking = rankingOf(catalogue, answers);
  const sides = placesIn(ranking).map(sideOf);
  return { ranking, pairs: sides.map((side, index) => [side, sides[(index + 1) % sides.length]!] as const) };
}

/** The same cases for every property below: ranking them is what takes the time. */
const sampled = fc.sample(fc.tuple(anyCatalogue, anyAnswers), { numRuns: 60, seed: Number(process.env.SEED ?? 1) })
  .map(([catalogue, answers], index) => ({ catalogue, index, ...pairsIn(catalogue, answers) }));
const pairs = sampled.flatMap(({ ranking, pairs: of, catalogue, index }) => of.map(([a, b]) => ({ a, b, ranking, catalogue, at: `case ${index}: ${a.id}, ${b.id}` })));

const mirrored = (one: Contrast): Contrast => {
  const turned = <T extends { of: [unknown, unknown] }>(list: readonly T[]) => list.map((each) => ({ ...each, of: [each.of[1], each.of[0]] as T['of'] }));
  return {
    ...one, sides: [one.sides[1], one.sides[0]], gates: turned(one.gates), criteria: turned(one.criteria), lacking: { ...one.lacking, needs: turned(one.lacking.needs) },
  };
};

test('a contrast of two mirrors that of the two the other way round', () => {
  for (const { a, b, ranking, at } of pairs) expect(contrast(b, a, ranking), at).toEqual(mirrored(contrast(a, b, ranking)));
  expect(pairs.length).toBeGreaterThan(300);
});

test('what stands above is what the shortlist places above', () => {
  for (const { ranking, index: at } of sampled) {
    for (const group of [ranking.standing, ranking.toAsk]) {
      group.slice(1).forEach((placed, index) => expect(contrast(sideOf(group[index]!), sideOf(placed), ranking).above, `case ${at}`).toBe(group[index]!.machine.id));
    }
  }
});

test('the differences of points, the largest first, add up to the difference of the scores', () => {
  for (const { a, b, ranking, at } of pairs) {
    const { criteria, sides } = contrast(a, b, ranking);
    const apart = criteria.reduce((sum, { favours, points }) => sum + (favours === a.id ? points : -points), 0);
    expect(apart, at).toBeCloseTo(sides[0].score - sides[1].score, 4);
    criteria.slice(1).forEach(({ points }, index) => expect(points).toBeLessThanOrEqual(criteria[index]!.points));
  }
});

test('where figures are told beside the points, the better figure is the one that earns them', () => {
  let [told, silent] = [0, 0];
  for (const { a, b, ranking, at } of pairs) {
    for (const gap of contrast(a, b, ranking).criteria) {
      const [one, other] = gap.of;
      if (!figuresTell(gap)) silent += 1;
      if (!figuresTell(gap) || one.figure === undefined || other.figure === undefined) continue;
      const [best, worst] = one.anchors!;
      expect(Math.sign((one.figure - other.figure) * (best - worst)), `${at} ${gap.criterion}`).toBe(gap.favours === a.id ? 1 : -1);
      told += 1;
    }
  }
  expect(told).toBeGreaterThan(300);
  expect(silent).toBeGreaterThan(0);
});

test('a gate favours the one that meets it, and where the gates decide one favours the upper', () => {
  const better = ['met', 'unknown', 'failed'];
  let seen = 0;
  for (const { a, b, ranking, at } of pairs) {
    const { gates, by, above, sides } = contrast(a, b, ranking);
    for (const { need, favours, of } of gates) {
      const [favoured, other] = favours === a.id ? of : [...of].reverse();
      const { must } = ranking.needs.find(({ id }) => id === need)!;
      // Where it is only wished for, a safety need that fails shuts nothing.
      if (must) expect(better.indexOf(favoured!.outcome), `${at} ${need}`).toBeLessThan(better.indexOf(other!.outcome));
      else expect(other!.outcome, `${at} ${need}`).toBe('unknown');
      seen += 1;
    }
    expect(by === 'standing', at).toBe(sides[0].standing !== sides[1].standing);
    if (by === 'standing') expect(gates.some(({ favours }) => favours === above), at).toBe(true);
  }
  expect(seen).toBeGreaterThan(100);
});

test('were the differences gone that are said to lift it, the lower would be level; with one of them left it would not', () => {
  let seen = 0;
  for (const { a, b, ranking, at } of pairs) {
    const found = contrast(a, b, ranking);
    const { lift, costs, above } = whyNot(found);
    const behind = found.sides.reduce((sum, { id, score }) => sum + (id === above ? score : -score), 0);
    if (behind <= 1e-5) continue;
    const gone = costs.filter(({ criterion }) => lift.criteria.includes(criterion)).map(({ points }) => points);
    const sum = gone.reduce((total, points) => total + points, 0);
    expect(sum, at).toBeGreaterThan(behind - 1e-5);
    for (const points of gone) expect(sum - points, at).toBeLessThan(behind);
    seen += 1;
  }
  expect(seen).toBeGreaterThan(100);
});

test('of one that is ruled out the gates are named that keep it from standing, with both figures', () => {
  const answers = mustDo({ task: 'lift-bales', weight: lb(800) });
  const { above, by, gates, lift } = compare(lineUp(), answers, 'mid-economy', 'large-deluxe');
  expect({ above, by }).toEqual({ above: 'large-deluxe', by: 'standing' });
  const { of, favours } = gates.find(({ need }) => need === 'lift-bales.weight')!;
  expect(favours).toBe('large-deluxe');
  expect(of.map(({ outcome }) => outcome)).toEqual(['failed', 'met']);
  expect(of[0].figures.has!.value).toBeLessThan(of[0].figures.wants!.value);
  expect(of[1].figures.has!.value).toBeGreaterThan(of[1].figures.wants!.value);
  expect(lift.gates).toContain('lift-bales.weight');
});

test('a figure nobody gave leaves the gate unknown, and what is missing is told', () => {
  const without = withMachine(lineUp(), 'mid-deluxe', () => ({ tyres: undefined }));
  const { gates, above } = compare(without, saying({ land: { gate: inches(80) } }), 'mid-deluxe', 'wide-mid-standard');
  expect(above).toBe('wide-mid-standard');
  expect(gates.find(({ need }) => need === 'land.gate')!.of[0]).toMatchObject({ outcome: 'unknown', missing: ['tyres'] });
});

test('a dearer one that is else the same stands below by price alone', () => {
  const lot = withUnits(lineUp(), soundUnit('cheap', 'mid-deluxe', { price: usd(20_000) }), soundUnit('dear', 'mid-deluxe', { price: usd(24_000) }));
  const found = compare(lot, saying(), 'dear', 'cheap');
  expect(found.above).toBe('cheap');
  expect(found.criteria.map(({ criterion }) => criterion)).toEqual(['price']);
  expect(found.lift).toEqual({ gates: [], criteria: ['price'] });
  const same = withUnits(lineUp(), soundUnit('cheap', 'mid-deluxe', { price: usd(20_000) }), soundUnit('dear', 'mid-deluxe', { price: usd(20_000) }));
  expect(compare(same, saying(), 'dear', 'cheap')).toMatchObject({ above: 'cheap', by: 'id', criteria: [], lift: { gates: [], criteria: [] } });
});

test('what neither has is told of both', () => {
  const { lacking } = compare(lineUp(), mustDo({ task: 'lift-pallets', weight: lb(9000) }), 'mid-economy', 'mid-deluxe');
  expect(lacking.needs.map(({ need }) => need)).toContain('lift-pallets.weight');
});

test('units are compared as the shortlist judges them, and every id on sale can be compared', () => {
  const catalogue = catalogueForTests();
  const ids = comparableIds(catalogue);
  const answers = mustDo({ task: 'mow-lawn', deck: 'belly' });
  const { shortlist: standing, askDealer, ruledOut } = shortlist(catalogue, answers);
  const judged = new Map([...standing, ...askDealer, ...ruledOut].flatMap(({ units }) => units).map((unit) => [unit.unit, unit]));
  for (const id of ids.slice(1)) {
    const side = compare(catalogue, answers, ids[0]!, id).sides[1];
    const unit = judged.get(id);
    if (unit) expect(side).toMatchObject({ id, standing: unit.verdict, score: unit.score });
  }
  expect(ids.filter((id) => judged.has(id))).toHaveLength(judged.size);
});

test('the first three trade what they beat and trail each other by: no less than the share, and never what is unknown', () => {
  let told = 0;
  for (const { ranking, index: at } of sampled) {
    const share = ranking.world.book.value('trade-off.share');
    const groups = tradeOffsOf(ranking);
    const firsts = ranking.standing.slice(0, 3);
    expect(groups.flatMap(({ machines }) => machines).sort(), `case ${at}`).toEqual(firsts.length < 2 ? [] : firsts.map(({ machine }) => machine.id).sort());
    const value = (id: string, criterion: keyof Ranking['weights']) => firsts.find(({ machine }) => machine.id === id)!.best.values[criterion]!.value!;
    for (const { machines, than, gains, losses } of groups) {
      for (const machine of machines) {
        for (const criterion of gains) expect(value(machine, criterion) - value(than, criterion), `case ${at} ${machine}`).toBeGreaterThan(share - 1e-6);
        for (const criterion of losses) expect(value(than, criterion) - value(machine, criterion), `case ${at} ${machine}`).toBeGreaterThan(share - 1e-6);
      }
      told += gains.length + losses.length;
    }
  }
  expect(told).toBeGreaterThan(100);
});

test('the share is the rule book’s, and a dealer’s to change', () => {
  const told = (share?: number) => shortlist({ ...lineUp(), ...(share !== undefined && { rules: { 'trade-off.share': share } }) }, saying()).tradeOffs
    .reduce((sum, { gains, losses }) => sum + gains.length + losses.length, 0);
  expect(told(0.02)).toBeGreaterThan(told());
  expect(told(0.5)).toBeLessThan(told());
});

const holes = /undefined|NaN|Infinity|null|\[object| {2}|^\s*$|\s[.,]| [;:]|\(\s*\)/;

test.each(everyWords)('every contrast and trade can be said without a hole: $name', (words) => {
  let said = 0;
  for (const { a, b, ranking, catalogue, at } of pairs) {
    const reader = readerFor(words, a.id < b.id ? 'us' : 'metric', catalogue.dealer.locale, catalogue.dealer.currency);
    const voice = { words, reader, nameOf: namesIn(catalogue, reader) };
    const found = contrast(a, b, ranking);
    const { costs, despite, lift } = sayWhyBelow(found, voice);
    const sentences = [
      ...tradeOffsOf(ranking).map((each) => sayTradeOff(each, voice)), ...costs, ...despite, ...lift,
      ...found.criteria.map((gap) => sayGap(gap, a.id, found, voice)),
      ...[...found.gates, ...found.lacking.needs].flatMap((each) => each.of.map((state, index) => sayNeedState(state, each, { ...voice, machine: [a, b][index]!.id }))),
    ];
    expect(sentences.filter((sentence) => holes.test(sentence)), at).toEqual([]);
    said += sentences.length;
  }
  expect(said).toBeGreaterThan(1000);
});
