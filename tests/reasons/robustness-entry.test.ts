import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Criterion } from '../../src/answers/schema.ts';
import { robustnessEntries } from '../../src/reasons/robustness-entry.ts';
import { sayRobustness, sayWeights } from '../../src/reasons/say-robustness.ts';
import { readerFor } from '../../src/reasons/asking-voice.ts';
import { namesIn } from '../../src/reasons/say.ts';
import type { Entry } from '../../src/reasons/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aMinute, anyAnswers, anyCatalogue, runs } from '../support/arbitraries.ts';
import { lineUp } from '../support/catalogue-for-tests.ts';
import { everyLanguage } from '../support/languages.ts';
import { saying } from '../support/reckon.ts';

const scoreWith = (weights: Partial<Record<Criterion, number>>, { contributions }: Entry) =>
  Object.entries(contributions).reduce((sum, [criterion, { value = 0 }]) => sum + weights[criterion as Criterion]! * value, 0);

test('of those that stand the shares add up, ties are mutual, and what puts the second first does', () => {
  let overtaken = 0;
  fc.assert(fc.property(anyCatalogue, anyAnswers, (catalogue, answers) => {
    const { shortlist: standing, askDealer } = shortlist(catalogue, answers);
    const sum = (of: 'firstShare' | 'topThreeShare') => standing.reduce((all, entry) => all + entry[of]!, 0);
    if (standing.length > 0) expect([sum('firstShare'), sum('topThreeShare')].map((each) => Math.round(each * 1e9) / 1e9)).toEqual([1, Math.min(3, standing.length)]);
    for (const entry of standing) {
      const same = standing.filter(({ machine, score }) => machine !== entry.machine && score === entry.score).map(({ machine }) => machine);
      expect(entry.tiedWith ?? []).toEqual(same);
      if (entry.rank !== 2) expect(entry.overtakes).toBeUndefined();
    }
    for (const { firstShare, topThreeShare, tiedWith, overtakes } of askDealer) expect([firstShare, topThreeShare, tiedWith, overtakes]).toEqual([undefined, undefined, undefined, undefined]);
    const second = standing[1];
    if (!second?.overtakes) return;
    overtaken += 1;
    const weights = second.overtakes;
    const worth = (entry: Entry) => Object.values(entry.contributions).map(({ value = 0 }) => value).join();
    for (const other of standing) if (worth(other) !== worth(second)) expect(scoreWith(weights, second)).toBeGreaterThan(scoreWith(weights, other));
    const ranked = (answers.priorities ?? []).filter((criterion) => criterion in weights).map((criterion) => weights[criterion]!);
    expect(ranked).toEqual([...ranked].sort((a, b) => b - a));
    const unranked = Object.entries(weights).filter(([criterion]) => !answers.priorities?.includes(criterion as Criterion)).map(([, weight]) => weight);
    for (const last of ranked.slice(-1)) expect(Math.max(0, ...unranked)).toBeLessThanOrEqual(last);
    expect(Math.round(Object.values(weights).reduce((all, weight) => all + weight, 0) * 1e6)).toBe(1e6);
  }), runs(60));
  expect(overtaken).toBeGreaterThan(10);
}, aMinute);

test('control: the buyer’s own weights don’t put the second first', () => {
  const [first, second] = shortlist(lineUp(), saying({ priorities: ['price'] })).shortlist;
  const own = Object.fromEntries(Object.entries(first!.contributions).map(([criterion, { weight }]) => [criterion, weight]));
  expect(scoreWith(own, second!)).toBeLessThan(scoreWith(own, first!));
});

test('where nothing stands there is nothing to say', () => expect(robustnessEntries({ standing: [], weights: {} }, {})).toEqual([]));

/** Entries as they would be, with only what the sentences are made from. */
function entry(more: Partial<Entry>): Entry {
  const [any] = shortlist(lineUp(), saying()).shortlist;
  return { ...any!, rank: 1, firstShare: 0.7, topThreeShare: 1, contributions: { price: { weight: 0.75, points: 0 }, comfort: { weight: 0.25, points: 0 } }, ...more };
}

test.each(everyLanguage)('each degree of firmness has a sentence of its own ($tag)', ({ words }) => {
  const catalogue = lineUp();
  const reader = readerFor(words, 'us', 'en-US', 'USD');
  const voice = { words, reader, nameOf: namesIn(catalogue, reader) };
  const said = (more: Partial<Entry>, standing = 4) => sayRobustness(entry(more), standing, voice);
  expect(new Set([0, 0.02, 0.3, 0.7, 0.98, 1].map((firstShare) => said({ firstShare })[0])).size).toBe(6);
  expect(said({}, 1), 'alone').toEqual([]);
  const [machine] = catalogue.machines;
  expect(said({ tiedWith: [machine!.id] })[0]).toContain(machine!.name);
  // Tied with the first, or put first by other weights, or by none: three things to say of the second.
  const second = (more: Partial<Entry>) => said({ rank: 2, firstShare: 0, ...more }).at(-1);
  const overtaking = second({ overtakes: { price: 0.6, comfort: 0.4 } })!;
  for (const figure of ['75', '60', '25', '40']) expect(overtaking).toContain(figure);
  const byAHair = second({ overtakes: { price: 0.7499, comfort: 0.2501 } })!;
  expect(new Set([overtaking, byAHair, second({}), second({ tiedWith: [machine!.id] })]).size).toBe(4);
  expect(sayWeights(entry({}), { priorities: ['comfort', 'time'] }, voice)).toContain(words.criteria.comfort);
  expect(sayWeights(entry({}), { priorities: ['comfort', 'time'] }, voice), 'what doesn’t apply has no weight').not.toContain(words.criteria.time);
  expect(sayWeights(entry({}), {}, voice)).not.toContain(words.criteria.price);
});
