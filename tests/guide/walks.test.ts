import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createActor } from 'xstate';
import { offeredTasks, questionOf, questions, type QuestionId } from '../../src/answers/questions.ts';
import { readAnswers } from '../../src/answers/read-answers.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { guide } from '../../src/guide/guide.ts';
import { nextQuestion, progressOf, skippedOf, visitOf } from '../../src/guide/next-question.ts';
import type { Skip } from '../../src/guide/skip.ts';
import { valueOf } from '../support/value-of.ts';

const sample = <T>(arbitrary: fc.Arbitrary<T>, seed: number) => fc.sample(arbitrary, { seed, numRuns: 1 })[0]!;

type Move = { kind: 'answer' | 'unsure' | 'back' | 'see-and-resume'; seed: number };
const moves = fc.array(fc.record({
  kind: fc.constantFrom<Move['kind']>('answer', 'answer', 'answer', 'unsure', 'back', 'see-and-resume'), seed: fc.integer(),
}), { maxLength: 60 });

function begin(answers?: AnswersDocument) {
  const actor = createActor(guide, { input: { answers } }).start();
  return {
    actor,
    get context() { return actor.getSnapshot().context; },
    get place() { return actor.getSnapshot().value; },
    get asks() { return actor.getSnapshot().matches('asking') ? actor.getSnapshot().context.at : undefined; },
    answer(seed: number) {
      const at = this.asks!;
      const values = Object.fromEntries(questionOf(at).fields.map((field) => [field.at, sample(valueOf(field, this.context.answers), seed)]));
      actor.send({ type: 'answer.given', values });
    },
  };
}

test('going forward, the total appears once the tasks are known and never rises', () => {
  fc.assert(fc.property(fc.array(fc.record({ unsure: fc.boolean(), seed: fc.integer() }), { minLength: 40, maxLength: 40 }), (steps) => {
    const visit = begin();
    let least = Infinity;
    for (const { unsure, seed } of steps) {
      const at = visit.asks;
      if (!at) break;
      const { now, atMost } = progressOf(visit.context, at);
      expect(atMost === undefined).toBe(at === 'tasks');
      expect(now).toBeLessThanOrEqual(atMost ?? Infinity);
      expect(atMost ?? 0).toBeLessThanOrEqual(least);
      least = atMost ?? least;
      if (unsure) visit.actor.send({ type: 'answer.unsure' });
      else visit.answer(seed);
    }
    expect(visit.place).toBe('checking');
  }), { numRuns: 200 });
});

test('whatever way is taken, the answers are a document without faults, and Back or the result changes none', () => {
  fc.assert(fc.property(moves, (way) => {
    const visit = begin();
    for (const { kind, seed } of way) {
      const before = JSON.stringify(visit.context.answers);
      const at = visit.asks;
      if (kind === 'back') visit.actor.send({ type: 'step.back' });
      if (kind === 'see-and-resume') {
        visit.actor.send({ type: 'result.asked' });
        visit.actor.send({ type: 'questions.resumed' });
      }
      if (at && kind === 'answer') visit.answer(seed);
      if (at && kind === 'unsure') visit.actor.send({ type: 'answer.unsure' });
      if (kind === 'back' || kind === 'see-and-resume') expect(JSON.stringify(visit.context.answers)).toBe(before);
      const { faults, unknownKeys } = readAnswers(visit.context.answers);
      expect([...faults, ...unknownKeys]).toEqual([]);
    }
  }), { numRuns: 300 });
});

test('a visit rebuilt from its answers alone asks the same question next', () => {
  fc.assert(fc.property(moves, (way) => {
    const visit = begin();
    for (const { kind, seed } of way) {
      if (!visit.asks) break;
      if (kind === 'unsure') visit.actor.send({ type: 'answer.unsure' });
      else visit.answer(seed);
    }
    const { answers, seen } = visit.context;
    // "Continue" with no box ticked says something everywhere but where there was nothing to tick.
    const silent = (id: QuestionId) => questionOf(id).fields.every(({ control }) => control === 'several');
    const rebuilt = visitOf(answers);
    const lost = seen.filter((id) => !rebuilt.seen.includes(id) && !silent(id));
    expect(lost).toEqual([]);
    if (seen.every((id) => rebuilt.seen.includes(id))) expect(nextQuestion(rebuilt)).toBe(nextQuestion(visit.context));
  }), { numRuns: 200 });
});

test('every question is reached by some buyer', () => {
  const reached = new Set<string>();
  for (let seed = 1; seed <= 60; seed++) {
    const visit = begin();
    for (let step = 0; visit.asks && step < 50; step++) {
      reached.add(visit.asks);
      visit.answer(seed * 100 + step);
    }
  }
  expect(questions.map(({ id }) => id).filter((id) => !reached.has(id))).toEqual([]);
});

test('a buyer who is never sure comes to the result, with nothing said but that', () => {
  const visit = begin();
  while (visit.asks) visit.actor.send({ type: 'answer.unsure' });
  const { answers } = visit.context;
  expect(Object.keys(answers).sort()).toEqual(['format', 'unsure']);
});

/** A visit of one job with all else left unsure, at the page where the answers are checked. */
function toCheck(task = 'mow-lawn') {
  const visit = begin();
  visit.actor.send({ type: 'answer.given', values: { tasks: [task] } });
  while (visit.asks) visit.actor.send({ type: 'answer.unsure' });
  return visit;
}

test('after the last question all answers are checked, then the result is shown', () => {
  const visit = toCheck();
  expect(visit.place).toBe('checking');
  visit.actor.send({ type: 'answers.checked' });
  expect(visit.place).toBe('result');
});

test('whoever comes with all answers given comes to the result', () => {
  const { answers } = toCheck().context;
  expect(begin(answers).place).toBe('result');
});

test.each([['check', 'checking'], ['result', 'result']] as const)('changing one answer from the %s asks only what the change makes necessary, then shows it again', (_, place) => {
  const visit = toCheck();
  if (place === 'result') visit.actor.send({ type: 'answers.checked' });
  visit.actor.send({ type: 'step.chosen', question: 'slope' });
  visit.actor.send({ type: 'answer.given', values: { 'land.slope': 'rolling' } });
  expect(visit.place).toBe(place);

  visit.actor.send({ type: 'step.chosen', question: 'tasks' });
  visit.actor.send({ type: 'answer.given', values: { tasks: ['mow-lawn', 'lift-bales'] } });
  expect(visit.asks).toBe('bales');
  visit.actor.send({ type: 'answer.unsure' });
  expect(visit.place).toBe(place);
  expect(visit.context.answers.land?.slope).toBe('rolling');
});

test('a steer changes one answer and shows the result at once; undone, all is as it was', () => {
  const visit = toCheck();
  visit.actor.send({ type: 'answers.checked' });
  const { answers, seen } = visit.context;
  visit.actor.send({ type: 'result.steered', question: 'priorities', values: { priorities: ['price'] } });
  expect(visit.place).toBe('result');
  expect(visit.context.answers.priorities).toEqual(['price']);
  expect(visit.context.answers.unsure).not.toContain('priorities');
  visit.actor.send({ type: 'steer.undone' });
  expect([visit.place, visit.context.answers, visit.context.seen]).toEqual(['result', answers, seen]);
});

test('what "start again" put away can still be brought back after a steer, and a steer puts nothing away', () => {
  const visit = toCheck();
  const { answers } = visit.context;
  visit.actor.send({ type: 'visit.cleared' });
  visit.actor.send({ type: 'result.asked' });
  visit.actor.send({ type: 'result.steered', question: 'priorities', values: { priorities: ['price'] } });
  visit.actor.send({ type: 'visit.restored' });
  expect(visit.context.answers).toEqual(answers);
  expect(visit.context.before).toBeUndefined();
});

test('places revisited, in any order, are shown and change no answer; a question no longer on the way is not', () => {
  const visit = toCheck();
  const { answers } = visit.context;
  for (const place of ['slope', 'result', 'tasks', 'check', 'lawn'] as const) {
    visit.actor.send({ type: 'place.revisited', place });
    expect(visit.asks ?? visit.place).toBe({ check: 'checking', result: 'result' }[place as string] ?? place);
  }
  visit.actor.send({ type: 'place.revisited', place: 'bales' });
  expect(visit.asks).toBe('lawn');
  expect(visit.context.answers).toEqual(answers);
  // From a question gone back to, an answer leads on to what is open, here to the check again.
  visit.actor.send({ type: 'answer.unsure' });
  expect(visit.place).toBe('checking');
});

test('Back from the check leads to the last question', () => {
  const visit = toCheck();
  visit.actor.send({ type: 'step.back' });
  expect(visit.asks).toBe('priorities');
});

test('starting again puts the answers away, and they can be brought back', () => {
  const visit = begin();
  visit.actor.send({ type: 'answer.given', values: { tasks: [offeredTasks[0]] } });
  const before = visit.context.answers;
  visit.actor.send({ type: 'visit.cleared' });
  expect(visit.context.answers).not.toEqual(before);
  expect(visit.asks).toBe('tasks');
  visit.actor.send({ type: 'visit.restored' });
  expect(visit.context.answers).toEqual(before);
});

test('each question names files that read its answers, and those files do', async () => {
  const { readFileSync } = await import('node:fs');
  for (const { id, fields, readBy } of questions) {
    const text = readBy.map((file) => readFileSync(new URL(`../../src/${file}.ts`, import.meta.url), 'utf8')).join('\n');
    for (const { at } of fields) {
      const leaf = at.split('.').at(-1)!;
      const words = leaf === 'extras' ? ['smoothSeat', 'tiltWheel', 'loaderOff'] : [leaf];
      expect(words.filter((word) => !text.includes(word)), `${id}: ${at}`).toEqual([]);
    }
  }
});

const nothingToOrder: Skip = { question: 'priorities', because: 'one-left', machines: [] };

/** A visit of which it was proven, before the tasks were answered, that the last question needs no asking. */
function withLastSkipped() {
  const visit = begin();
  visit.actor.send({ type: 'answer.given', values: { tasks: ['dig'] }, skips: [nothingToOrder] });
  while (visit.asks) visit.actor.send({ type: 'answer.unsure' });
  return visit;
}

test('a question proven to need no asking is not asked, and is one less in the total', () => {
  const [visit, other] = [begin(), begin()];
  visit.actor.send({ type: 'answer.given', values: { tasks: ['dig'] }, skips: [nothingToOrder] });
  other.actor.send({ type: 'answer.given', values: { tasks: ['dig'] } });
  expect(progressOf(visit.context, visit.asks!).atMost).toBe(progressOf(other.context, other.asks!).atMost! - 1);
  expect(withLastSkipped().context.seen).not.toContain('priorities');
});

test('a skipped question can be asked all the same, and counts then as asked', () => {
  const visit = withLastSkipped();
  visit.actor.send({ type: 'step.chosen', question: 'priorities' });
  expect(visit.asks).toBe('priorities');
  // On show it has its place in the count, proven or not.
  expect(progressOf(visit.context, 'priorities').now).toBe(progressOf(visit.context, 'priorities').atMost);
  visit.actor.send({ type: 'answer.given', values: { priorities: ['price'] } });
  expect(visit.asks).toBe(undefined);
  expect(skippedOf(visit.context)).toEqual([]);
});

test('Back and Continue with the same answer keep what was proven; another answer takes it back, and the question is asked', () => {
  const visit = begin();
  visit.actor.send({ type: 'answer.given', values: { tasks: ['dig'] }, skips: [nothingToOrder] });
  visit.actor.send({ type: 'step.back' });
  visit.actor.send({ type: 'answer.given', values: { tasks: ['dig'] } });
  expect(skippedOf(visit.context)).toEqual([nothingToOrder]);

  const changed = withLastSkipped();
  changed.actor.send({ type: 'step.chosen', question: 'tasks' });
  changed.actor.send({ type: 'answer.given', values: { tasks: ['dig', 'bore-holes'] } });
  expect(changed.asks).toBe('holes');
  changed.actor.send({ type: 'answer.unsure' });
  expect(changed.asks).toBe('priorities');
});
