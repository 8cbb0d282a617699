import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answersOf, type Answers } from '../../src/answers/answers.ts';
import { catalogueOf, type Catalogue, type Machine } from '../../src/catalogue/catalogue.ts';
import type { Need } from '../../src/needs/need.ts';
import { keyOf } from '../../src/ranking/build.ts';
import { rank, type Placed, type Ranking, type Weighed } from '../../src/ranking/rank.ts';
import { isFailedGate, isOpenGate } from '../../src/ranking/verdict.ts';
import { becauseOf } from '../../src/reasons/because.ts';
import { reasonsOf } from '../../src/reasons/reasons-of.ts';
import type { Reason } from '../../src/reasons/schema.ts';
import { byCriterion, byFigure } from '../support/altered-machine.ts';
import { anyAnswers, anyCatalogue } from '../support/arbitraries.ts';
import { lb, lineUp } from '../support/catalogue-for-tests.ts';
import { mustDo } from '../support/reckon.ts';

/** Judged entries, one of a machine for a buyer. RUNS=… judges another number, and tries the causes of each of them. */
const entries = Number(process.env.RUNS ?? 10_000);
const everyOne = process.env.RUNS !== undefined;
/** Of the others every so manieth is: altering a machine takes four reckonings more. */
const tried = 20;
const minutes = (many: number) => many * 60_000 * Math.max(1, entries / 10_000);

interface Case {
  at: string;
  catalogue: Catalogue;
  answers: Answers;
  ranking: Ranking;
  placed: Placed;
  reasons: readonly Reason[];
}

/** What was found wrong, told by case, and how often each thing was tried. */
const faults = { need: [] as string[], sole: [] as string[], figure: [] as string[], criterion: [] as string[], against: [] as string[], order: [] as string[] };
const counts = { entries: 0, dropped: 0, otherWay: 0, otherBuild: 0, sole: 0, cured: 0, spoiled: 0, moved: 0, still: 0, ordered: 0, beyond: 0 };
const noted = (list: keyof typeof faults, { at }: Case, what: string) => { if (faults[list].length < 20) faults[list].push(`${at}: ${what}`); };

const alone = ({ catalogue, answers }: Case, machine: Machine, only?: (need: Need) => boolean): Placed => {
  const { standing, toAsk, ruledOut } = rank({ ...catalogue, machines: [machine] }, answers, only);
  return [...standing, ...toAsk, ...ruledOut][0]!;
};
const gatesOf = ({ best }: Placed, outcome: 'failed' | 'unknown') => becauseOf(best.judged, outcome).map(({ need }) => need);
/** Made to serve in the same way, with the same wishes left out. */
const wayOf = ({ build }: Weighed) => `${keyOf(build)} ${build.leftOut?.join() ?? ''}`;
const sameBuild = (a: Weighed, b: Weighed) => wayOf(a) === wayOf(b);

/** Without the need one entry fewer is left, and all others are as they were, unless another way to serve is now the best. */
function tryNeed(each: Case, need: string, outcome: 'failed' | 'unknown') {
  const before = gatesOf(each.placed, outcome);
  const without = alone(each, each.placed.machine, ({ id }) => id !== need);
  const after = gatesOf(without, outcome);
  counts.dropped += 1;
  if (after.includes(need)) noted('need', each, `${need} is still told`);
  if (after.length > before.length - 1) noted('need', each, `without ${need} of ${before.join()} are left ${after.join()}`);
  else if (after.join() !== before.filter((id) => id !== need).join()) {
    if (sameBuild(each.placed.best, without.best)) noted('need', each, `without ${need} of ${before.join()} are left ${after.join()} in the same build`);
    counts.otherWay += 1;
  }
  if (before.length === 1) {
    counts.sole += 1;
    const turned = outcome === 'failed' ? without.standing !== 'ruled-out' : without.standing === 'stands';
    if (!turned) noted('sole', each, `without ${need}, its only cause, it is ${without.standing}`);
  }
}

const factors = [1.001, 1.01, 1.03, 1.1, 1.25, 1.5, 2, 3, 5, 10];

/** The figure altered across its bound, by as little as is tried, turns the need and no other that goes by other figures. */
function tryFigure(each: Case, { id, capability }: Need, better: boolean) {
  const known = byFigure[capability];
  if (!known) return;
  const outcomes = (weighed: Weighed) => new Map(weighed.judged.map((judged) => [judged.need.id, judged.verdict.outcome]));
  const before = outcomes(each.placed.best);
  for (const factor of factors) {
    const altered = alone(each, known.better(each.placed.machine, better ? factor : 1 / factor));
    const after = outcomes(altered.best);
    if (after.get(id) === before.get(id)) continue;
    if (better ? after.get(id) !== 'met' : after.get(id) !== 'failed') continue;
    counts[better ? 'cured' : 'spoiled'] += 1;
    if (better && gatesOf(altered, 'failed').includes(id)) noted('figure', each, `${id} is still told`);
    if (!sameBuild(each.placed.best, altered.best)) { counts.otherBuild += 1; return; }
    const others = altered.best.judged.flatMap(({ need }) => (need.id !== id && need.capability !== capability && after.get(need.id) !== before.get(need.id) && !known.alsoOf.includes(need.capability) ? [need.id] : []));
    if (others.length > 0) noted('figure', each, `${id} ${better ? 'cured' : 'spoiled'} by ${factor} turns ${others.join()}`);
    return;
  }
  counts.beyond += 1;
  // What must be added may cost more than the limit by itself, and what is towed goes by the masses too.
  if (better && capability !== 'price' && capability !== 'tow.mass') noted('figure', each, `${id} is still told of a machine ten times as good`);
}

const points = (weighed: Weighed, weights: Ranking['weights']) =>
  Object.entries(weighed.values).reduce((sum, [criterion, { value = 0 }]) => sum + weights[criterion as keyof typeof weights]! * value, 0);

/** The score moves with the criterion a reason names, the same way and by its weight. */
function tryCriterion(each: Case, criterion: NonNullable<Reason['criterion']>) {
  const { placed: { machine, best }, ranking: { weights } } = each;
  const had = best.values[criterion]!.value ?? 0;
  for (const times of [1.1, 0.9, 2, 0.5]) {
    const altered = alone(each, byCriterion[criterion](machine, times)).best;
    const has = altered.values[criterion]!.value ?? 0;
    if (Math.abs(has - had) * weights[criterion]! < 1e-5) continue;
    counts.moved += 1;
    const moved = altered.score - best.score;
    if (Math.abs(moved - (points(altered, weights) - points(best, weights))) > 2e-6) noted('criterion', each, `${criterion}: the score moved by ${moved}, not by its values`);
    const others = Object.keys(weights).filter((other) => other !== criterion && altered.values[other as keyof typeof weights]!.value !== best.values[other as keyof typeof weights]!.value);
    if (others.length === 0 && Math.sign(moved) !== Math.sign(has - had)) noted('criterion', each, `${criterion} went from ${had} to ${has}, the score by ${moved}`);
    const told = altered.standing === best.standing && reasonsOf(altered, each.ranking).find((reason) => reason.criterion === criterion);
    if (told && told.figures.has && told.figures.has.value !== altered.values[criterion]!.figure) noted('criterion', each, `${criterion} is told by ${told.figures.has.value}`);
    return;
  }
  counts.still += 1;
}

const classOf = ({ must, safety }: Need) => (safety ? 'safety' : must ? 'must' : 'wish');

/** Those told first weigh most; of two needs alike in kind and class the one that more machines fail. */
function tryOrder(each: Case) {
  const { needs, standing, toAsk, ruledOut } = each.ranking;
  const all = [...standing, ...toAsk, ...ruledOut];
  const failedBy = (id: string) => all.filter(({ inGeneral }) => inGeneral.judged.some(({ need, verdict }) => need.id === id && verdict.outcome === 'failed')).length;
  for (const kind of ['for', 'against', 'unknown'] as const) {
    const of = each.reasons.filter((reason) => reason.kind === kind);
    const least = Math.min(...of.slice(0, 3).map(({ weight }) => weight));
    if (of.slice(3).some(({ weight }) => weight > least)) noted('order', each, `a weightier reason ${kind} than the first three`);
    const told = of.flatMap(({ need, id }) => (need && !id.startsWith('addition.') ? [needs.find((one) => one.id === need)!] : []));
    told.slice(1).forEach((need, index) => {
      const former = told[index]!;
      counts.ordered += 1;
      if (classOf(former) === classOf(need) && failedBy(former.id) < failedBy(need.id)) noted('order', each, `${former.id} before ${need.id}, ${kind}`);
    });
  }
}

function judge(each: Case, experiment: boolean) {
  const { placed, reasons } = each;
  counts.entries += 1;
  if (placed.standing !== 'ruled-out') {
    if (!reasons.some(({ kind }) => kind === 'against' || kind === 'unknown')) noted('against', each, 'nothing against it and nothing unknown');
    tryOrder(each);
  }
  if (!experiment) return;
  const turn = counts.entries;
  const pick = <T>(list: readonly T[]) => list[turn % (list.length || 1)];
  const { judged } = placed.best;
  const [failed, open] = [judged.filter(isFailedGate), judged.filter(isOpenGate)];
  const cause = failed.length > 0 ? pick(failed) : pick(open);
  if (cause) tryNeed(each, cause.need.id, failed.length > 0 ? 'failed' : 'unknown');
  const measured = (list: typeof judged) => list.filter(({ need, verdict: { has, wants } }) => byFigure[need.capability] && has !== undefined && wants !== undefined);
  const curable = pick(measured(failed));
  if (curable) tryFigure(each, curable.need, true);
  const met = pick(measured(judged.filter(({ verdict }) => verdict.outcome === 'met')));
  if (met) tryFigure(each, met.need, false);
  const drawn = pick(reasons.flatMap(({ criterion, id }) => (criterion && !id.endsWith('.unknown') ? [criterion] : [])));
  if (drawn) tryCriterion(each, drawn);
}

test(`of ${entries} machines judged for a buyer, what each reason names is what decides`, () => {
  const seed = Number(process.env.SEED ?? 1);
  for (let round = 0; counts.entries < entries; round++) {
    for (const [document, said] of fc.sample(fc.tuple(anyCatalogue, anyAnswers), { numRuns: 50, seed: seed + round })) {
      if (counts.entries >= entries) break;
      const catalogue = catalogueOf({ ...document, units: [] });
      const answers = answersOf(said);
      const ranking = rank(catalogue, answers);
      for (const placed of [...ranking.standing, ...ranking.toAsk, ...ranking.ruledOut]) {
        const at = `SEED=${seed} entry ${counts.entries}, ${placed.machine.id}`;
        judge({ at, catalogue, answers, ranking, placed, reasons: reasonsOf(placed.best, ranking) }, everyOne || counts.entries % tried === 0);
      }
    }
  }
  expect(counts.entries).toBeGreaterThanOrEqual(entries);
  if (process.env.TOLD) console.log(counts, faults);
}, minutes(5));

test('control: a need that isn’t the cause, or a figure that isn’t, is found out', () => {
  const catalogue = catalogueOf(lineUp());
  const answers = answersOf(mustDo({ task: 'lift-bales', weight: lb(800) }, { task: 'mow-lawn', deck: 'belly' }));
  const ranking = rank(catalogue, answers);
  const placed = ranking.ruledOut.find(({ machine }) => machine.id === 'mid-economy')!;
  const each: Case = { at: 'control', catalogue, answers, ranking, placed, reasons: reasonsOf(placed.best, ranking).reverse() };
  const found = (list: keyof typeof faults, attempt: () => void) => {
    const before = faults[list].length;
    attempt();
    return faults[list].splice(before).length > 0;
  };
  const need = (id: string) => ranking.needs.find((one) => one.id === id)!;
  expect(found('need', () => { tryNeed(each, 'lift-bales.weight', 'failed'); }), 'the cause').toBe(false);
  expect(found('need', () => { tryNeed(each, 'lift-bales.loader', 'failed'); }), 'another').toBe(true);
  expect(found('figure', () => { tryFigure(each, need('lift-bales.weight'), true); }), 'its figure').toBe(false);
  expect(found('figure', () => { tryFigure(each, { ...need('lift-bales.weight'), capability: 'width' } as Need, true); }), 'another’s').toBe(true);
  expect(found('order', () => { tryOrder(each); }), 'the least reasons first').toBe(true);
});

test('without the need that is named its entry goes, and no other', () => {
  expect(faults.need).toEqual([]);
  expect(counts.dropped).toBeGreaterThan(entries / 100);
  // Another way to make it serve may be the best then; that is the exception.
  expect(counts.otherWay).toBeLessThan(counts.dropped / 20);
});
test('without its only cause the verdict turns', () => {
  expect(faults.sole).toEqual([]);
  expect(counts.sole).toBeGreaterThan(entries / 200);
});
test('a figure altered across its bound turns the reason that names it, and none that goes by another', () => {
  expect(faults.figure).toEqual([]);
  expect(Math.min(counts.cured, counts.spoiled)).toBeGreaterThan(entries / 200);
});
test('a criterion that is named moves the score, its way and by its weight', () => {
  expect(faults.criterion).toEqual([]);
  expect(counts.moved).toBeGreaterThan(counts.still);
});
test('each that isn’t ruled out has something against it or unknown', () => { expect(faults.against).toEqual([]); });
test('the first three of a kind decide most', () => {
  expect(faults.order).toEqual([]);
  expect(counts.ordered).toBeGreaterThan(entries / 10);
});
