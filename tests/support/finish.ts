import fc from 'fast-check';
import { answerAt } from '../../src/answers/at.ts';
import { answersOf } from '../../src/answers/answers.ts';
import { questionOf, type QuestionId } from '../../src/answers/questions.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { Catalogue } from '../../src/catalogue/catalogue.ts';
import { answered, type Values } from '../../src/guide/answered.ts';
import { pathOf, unansweredOf, type Visit } from '../../src/guide/next-question.ts';
import { notCleared } from '../../src/needs/all.ts';
import { rank, type Placed } from '../../src/ranking/rank.ts';
import { cautionsOf } from '../../src/reasons/cautions.ts';
import { packageEntry } from '../../src/reasons/package-entry.ts';
import { valueOf } from './value-of.ts';
import { withFinerPoints } from './with-finer-points.ts';

/** What one buyer would say to each question; undefined where he isn't sure. */
export type Mind = (id: QuestionId, answers: AnswersDocument) => Values | undefined;

const sample = <T>(arbitrary: fc.Arbitrary<T>, seed: number) => fc.sample(arbitrary, { seed, numRuns: 1 })[0]!;

/** Anything a box takes, its bounds as often as what lies between; the same for the same question. */
export const anything = (seed: number): Mind => (id, answers) => {
  const rank = [...id].reduce((sum, letter) => (sum * 31 + letter.codePointAt(0)!) | 0, seed);
  return rank % 5 === 0 ? undefined : Object.fromEntries(questionOf(id).fields.map((field, index) => {
    const value = fc.oneof(valueOf(field, answers), fc.constant(undefined), ...('from' in field ? [fc.constantFrom(field.from, field.to).map((bound) => ('boundUnit' in field ? { value: bound, unit: field.boundUnit } : field.control === 'money' ? { value: bound, currency: 'USD' } : bound))] : []));
    return [field.at, sample(value, rank + index)];
  }));
};

/** What a document says, and not sure of the rest. */
export const asIn = (document: AnswersDocument): Mind => {
  const said = withFinerPoints(document);
  return (id) => {
    const values = Object.fromEntries(questionOf(id).fields.map(({ at }) => [at, answerAt(said, at)]));
    return Object.values(values).every((value) => value === undefined) ? undefined : values;
  };
};

/** A visit finished: every question that may still be answered is, but those left out. */
export function finish(visit: Visit, mind: Mind, but: readonly QuestionId[] = []): Visit {
  const next = unansweredOf(visit).find((id) => !but.includes(id) && (id !== 'door' || visit.seen.includes('storage')));
  return next === undefined ? visit : finish(answered(visit, next, mind(next, visit.answers)), mind, but);
}

/** With a question put in afterwards, where it is asked of this buyer at all. */
export const withAnswerTo = (visit: Visit, id: QuestionId, values: Values | undefined) =>
  (pathOf(visit).includes(id) ? answered(visit, id, values) : visit);

const places = 7;

/** All that no skipped question may change. */
export function outcomeOf(catalogue: Catalogue, document: AnswersDocument) {
  const answers = answersOf(document);
  const { standing, toAsk, ruledOut, needs, world } = rank(catalogue, answers);
  const ids = (all: readonly Placed[]) => all.map(({ machine }) => machine.id).sort();
  const first = (all: readonly Placed[]) => all.slice(0, places)
    .map(({ machine, best }) => ({ machine: machine.id, unit: best.build.unit?.id, package: packageEntry(best, world) }));
  return {
    verdicts: { stands: ids(standing), asks: ids(toAsk), out: ids(ruledOut) },
    first: first(standing), toAsk: first(toAsk),
    cautions: cautionsOf(answers, needs, [], world.book),
    notCleared: notCleared(answers, world.book),
  };
}
