import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answersOf } from '../../src/answers/answers.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import { answered } from '../../src/guide/answered.ts';
import { caseOf, type Case } from '../../src/guide/case.ts';
import { noAnswers } from '../../src/answers/names.ts';
import { lastingGates, leftIn } from '../../src/guide/left.ts';
import { nextQuestion, visitOf, type Visit } from '../../src/guide/next-question.ts';
import { needsOf } from '../../src/needs/all.ts';
import { demandOf } from '../../src/ranking/memories.ts';
import { rank } from '../../src/ranking/rank.ts';
import { aMinute, anyAnswers, anyCatalogue, runs } from '../support/arbitraries.ts';
import { anything, asIn, finish } from '../support/finish.ts';

/** A buyer who has come so far, and one way in which he may go on. */
const midway = fc.record({ said: anyAnswers, steps: fc.integer({ min: 2, max: 24 }), rest: fc.oneof(fc.nat(1_000_000).map(anything), anyAnswers.map(asIn)), catalogue: anyCatalogue })
  .map(({ said, steps, rest, catalogue }) => {
    let visit: Visit = visitOf(noAnswers);
    for (let step = 0, at = nextQuestion(visit); step < steps && at; step++, at = nextQuestion(visit)) visit = answered(visit, at, asIn(said)(at, visit.answers));
    return { of: caseOf(visit, catalogueOf(catalogue)), rest };
  });

type Midway = typeof midway extends fc.Arbitrary<infer T> ? T : never;
const endOf = ({ of, rest }: Midway) => finish(of.visit, rest).answers;
/** As if nothing were open any more: what a proof would take for granted that knew of no answer to come. */
const blind = (of: Case): Case => ({ ...of, open: [] });
/** As if every wish were a must. */
const strict = (of: Case): Case => ({ ...of, needs: of.needs.map((need) => ({ ...need, must: true })) });

const gatesGone = (at: Midway, of: Case) => {
  const asked = new Set(needsOf(answersOf(endOf(at)), of.world.book).map(demandOf));
  return lastingGates(of).filter((gate) => !asked.has(demandOf(gate))).map(({ id }) => id);
};

const backAgain = (at: Midway, of: Case) => {
  const lost = new Set([...leftIn(of)].flatMap((left, index) => (left ? [] : [of.catalogue.machines[index]!.id])));
  const { standing, toAsk } = rank(of.catalogue, answersOf(endOf(at)));
  return [...standing, ...toAsk].map(({ machine }) => machine.id).filter((id) => lost.has(id));
};

const samples = (numRuns: number) => fc.sample(midway, { seed: Number(process.env.SEED ?? 1), numRuns });

test('a gate that lasts is asked for, to the letter, however the visit is finished', () => {
  let lasting = 0;
  fc.assert(fc.property(midway, (at) => {
    lasting += lastingGates(at.of).filter(({ from }) => from.length > 0).length;
    expect(gatesGone(at, at.of)).toEqual([]);
  }), runs(300));
  expect(lasting).toBeGreaterThan(20);
}, aMinute);

test('a machine that is lost is ruled out, however the visit is finished, on any line-up', () => {
  let lost = 0;
  fc.assert(fc.property(midway, (at) => {
    lost += [...leftIn(at.of)].filter((left) => left === undefined).length;
    expect(backAgain(at, at.of)).toEqual([]);
  }), runs(120));
  expect(lost).toBeGreaterThan(10);
}, aMinute);

test('control: who knew of no answer to come would lose gates, and who took wishes for musts would see machines back', () => {
  const all = samples(60);
  expect(all.flatMap((at) => gatesGone(at, blind(at.of)))).not.toEqual([]);
  expect(all.flatMap((at) => backAgain(at, strict(at.of)))).not.toEqual([]);
}, aMinute);

test('going forward, the machines and units left only become fewer', () => {
  fc.assert(fc.property(anyAnswers, anyCatalogue, (said, document) => {
    const catalogue = catalogueOf(document);
    let visit: Visit = visitOf(noAnswers);
    let before = Infinity;
    for (let at = nextQuestion(visit); at; at = nextQuestion(visit)) {
      visit = answered(visit, at, asIn(said)(at, visit.answers));
      const left = [...leftIn(caseOf(visit, catalogue))].reduce((sum, each) => sum + (each ? 1 + each.free.length : 0), 0);
      expect(left).toBeLessThanOrEqual(before);
      before = left;
    }
  }), runs(12));
}, aMinute);

test('what a machine is used for and what matters most ask nothing of it: they only weigh', () => {
  fc.assert(fc.property(midway, ({ of, rest }) => {
    for (const id of ['use', 'priorities'] as const) {
      const { answers } = answered(of.visit, id, rest(id, of.visit.answers) ?? {});
      expect(needsOf(answersOf(answers), of.world.book).map(demandOf)).toEqual(of.needs.map(demandOf));
    }
  }), runs(100));
}, aMinute);
