import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { QuestionId } from '../../src/answers/questions.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { catalogueOf, type Catalogue } from '../../src/catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { answered, withSkips } from '../../src/guide/answered.ts';
import { noAnswers } from '../../src/answers/names.ts';
import { nextQuestion, progressOf, visitOf, type Visit } from '../../src/guide/next-question.ts';
import { provingSkips, rules, skips, type Rule } from '../../src/guide/skips.ts';
import { skipReasons, type SkipReason } from '../../src/reasons/skip-reason.ts';
import { aMinute, anyAnswers, anyCatalogue } from '../support/arbitraries.ts';
import { onTheEdge, twoGenerations } from '../support/two-generations.ts';
import { anything, asIn, finish, outcomeOf, withAnswerTo, type Mind } from '../support/finish.ts';

const demo = JSON.parse(readFileSync(new URL('../../demo/catalogue.json', import.meta.url), 'utf8')) as CatalogueDocument;
/** A lot with everything on it, and small ones on which little is left to decide. */
const lots: readonly Catalogue[] = [
  demo, { ...demo, machines: demo.machines.slice(4, 6) }, { ...demo, machines: demo.machines.slice(0, 1) }, { ...demo, units: [] },
  // Two generations of one line, and a unit on their edge.
  { ...demo, machines: demo.machines.filter(({ line }) => line === 'burdock'), units: demo.units!.filter(({ id }) => id === 'burdock-sold-2015') },
].map((document) => catalogueOf(document));

/** Those, and line-ups with gaps and other figures, all of them or two of their machines. */
const anyLot = fc.oneof(fc.constantFrom(...lots), fc.tuple(anyCatalogue, fc.nat(6), fc.boolean())
  .map(([document, from, few]) => catalogueOf(few ? { ...document, machines: document.machines.slice(from, from + 2) } : document)));

/** How many buyers walk: more where there is time for it. */
const buyers = Number(process.env.BUYERS ?? 100);

function all(work: ReturnType<typeof provingSkips>) {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}

/** Every visit of one buyer, from question to question, with what is proven on the way. */
function walk(mind: Mind, catalogue: Catalogue, by: readonly Rule[] = rules): Visit[] {
  const visits = [visitOf(noAnswers)];
  for (let at = nextQuestion(visits[0]!); at !== undefined; at = nextQuestion(visits.at(-1)!)) {
    const after = answered(visits.at(-1)!, at, mind(at, visits.at(-1)!.answers));
    visits.push(withSkips(after, all(provingSkips(after, catalogue, by))));
  }
  return visits;
}

/** What moves where a skipped question is asked all the same, at once or last, and answered in several ways. */
function moved(visit: Visit, id: QuestionId, catalogue: Catalogue, { other, seed }: { other: AnswersDocument; seed: number }): string[] {
  // Whoever says anything seldom leaves a machine standing; whoever is never sure leaves the most.
  const rests: readonly Mind[] = [anything(seed), asIn(other), () => undefined];
  return rests.flatMap((rest, way) => {
    const end = finish(visit, rest, [id]);
    const without = JSON.stringify(outcomeOf(catalogue, end.answers));
    return [0, 1, 2, 3].flatMap((answer) => {
      const said = anything(seed + 7 * answer + way)(id, end.answers);
      const ends = [withAnswerTo(end, id, said), finish(withAnswerTo(visit, id, said), rest, [id])];
      return ends.flatMap(({ answers }) => (JSON.stringify(outcomeOf(catalogue, answers)) === without ? [] : [JSON.stringify(answers)]));
    });
  });
}

function movedBy(runs: number, by: readonly Rule[]) {
  const skipped: Partial<Record<SkipReason, number>> = {};
  const moves = fc.sample(fc.record({ answers: anyAnswers, other: anyAnswers, lot: anyLot, seed: fc.nat(1_000_000) }), { seed: Number(process.env.SEED ?? 1), numRuns: runs })
    .flatMap(({ answers, other, lot, seed }) => {
      const visits = walk(asIn(answers), lot, by);
      return visits.flatMap((visit, index) => (visit.skipped ?? [])
        .filter(({ question }) => !(visits[index - 1]?.skipped ?? []).some((before) => before.question === question))
        .flatMap(({ question, because }) => {
          skipped[because] = (skipped[because] ?? 0) + 1;
          return moved(visit, question, lot, { other, seed }).slice(0, 1).map((way) => `${question}: ${way}`);
        }));
    });
  return { moves, skipped };
}

test('whatever is answered to a skipped question, nothing that is told first moves', () => {
  const { moves, skipped } = movedBy(buyers, rules);
  expect(moves).toEqual([]);
  // A rule by which nothing is skipped isn't tested.
  for (const each of skipReasons) expect(skipped[each], each).toBeGreaterThan(0);
}, 10 * aMinute);

test.each(['budget', 'cab', 'comfort-musts', 'use', 'priorities'] as const)('control: a rule that proves nothing and skips %s all the same would be noticed', (question) => {
  const unsound: Rule = { question, because: 'same-order', proof: function* proof() { yield; return []; } };
  expect(movedBy(60, [unsound]).moves).not.toEqual([]);
}, aMinute);

test('with questions skipped, the total still never rises going forward', () => {
  for (const [index, answers] of fc.sample(anyAnswers, { seed: 2, numRuns: 30 }).entries()) {
    const totals = walk(asIn(answers), lots[index % lots.length]!).flatMap((visit) => {
      const at = nextQuestion(visit);
      return at === undefined ? [] : [progressOf(visit, at).atMost ?? Infinity];
    });
    expect(totals).toEqual([...totals].sort((a, b) => b - a));
  }
}, aMinute);

test('one machine left with one unit: what matters most is not asked, and the reason names the machine', () => {
  const [catalogue] = [catalogueOf({ ...demo, machines: demo.machines.slice(0, 1), units: [] })];
  const visit = withSkips(visitOf(noAnswers), []);
  const after = answered(answered(visit, 'tasks', { tasks: ['clear-snow'] }), 'musts', { 'tasks.must': [] });
  expect(skips(after, catalogue)).toContainEqual({ question: 'priorities', because: 'one-left', machines: [demo.machines[0]!.id] });
});

test.each([['sale', false], ['serial', true]] as const)('a unit on an edge that its own row would rule out may be of the other, and counts as left: a year by %s', (yearKind, skipped) => {
  const document = twoGenerations({}, { units: [onTheEdge({ yearKind })] });
  const machines = document.machines.filter(({ line }) => line === 'mid').map((each) => (each.id === 'mid-deluxe' ? { ...each, backhoe: { availability: 'none' as const } } : each));
  const said: readonly (readonly [QuestionId, Record<string, unknown>])[] = [['tasks', { tasks: ['dig'] }], ['musts', { 'tasks.must': ['dig'] }], ['digging', { 'tasks.dig.depth': { value: 60, unit: 'in' } }]];
  const visit = said.reduce((sofar, [id, values]) => answered(sofar, id, values), visitOf(noAnswers));
  expect(skips(visit, catalogueOf({ ...document, machines })).some(({ question }) => question === 'priorities')).toBe(skipped);
});

test('before it is said what is to be done nothing is skipped', () => {
  expect(skips(visitOf(noAnswers), lots[2]!)).toEqual([]);
});
