import { expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { notCarried } from '../../src/counter/opening/not-carried.ts';
import { opening as de } from '../../src/counter/opening/words/de.ts';
import { opening as en } from '../../src/counter/opening/words/en.ts';
import { opening as es } from '../../src/counter/opening/words/es.ts';
import { opening as fr } from '../../src/counter/opening/words/fr.ts';
import type { Field, Keys } from '../../src/handoff/fields.ts';
import { layouts } from '../../src/handoff/pack.ts';

const every = [en, de, es, fr];

/** The last keys of what a layout has a place for and never carries. */
function keptBackIn(keys: Keys): string[] {
  return Object.entries(keys).flatMap(([name, { field }]) => keptBackOf(name, field));
}
function keptBackOf(name: string, field: Field): string[] {
  if (field.is === 'kept-back') return [name];
  if (field.is === 'either') return field.of.flatMap((each) => keptBackOf(name, each));
  if (field.is === 'record' || field.is === 'records') return keptBackIn(field.keys).map((each) => (name === 'owned' ? name : each));
  return field.is === 'kinds' ? Object.values(field.of).flatMap(keptBackIn) : [];
}

test('all that the newest layout keeps back has a name in each language, and nothing else has', () => {
  const kept = [...new Set(keptBackIn(layouts.at(-1)!))].sort();
  expect(kept).toEqual(['delivery', 'material', 'owned', 'species', 'tradeIn']);
  for (const words of every) expect(Object.keys(words.kept).sort()).toEqual(kept);
});

const answers = (said: object) => ({ format: 'acre-to-axle/answers/1', ...said }) as AnswersDocument;

test.each([
  ['nothing where nothing was said', {}, []],
  ['a postcode where it was said how a machine gets there, but no way', { haul: { how: 'hire' } }, ['delivery']],
  ['none where the way came along', { haul: { how: 'hire', delivery: { value: 20, unit: 'mi' } } }, []],
  ['what is traded in, beside a budget', { budget: { firm: true } }, ['tradeIn']],
  ['names of implements', { owned: [{ kind: 'tiller' }] }, ['owned']],
  ['a material that isn’t of the list', { tasks: [{ task: 'move-loose', must: true }] }, ['material']],
  ['none where one of the list came along', { tasks: [{ task: 'move-loose', material: 'sand' }] }, []],
  ['none where the buyer wasn’t sure', { tasks: [{ task: 'move-loose' }], unsure: ['loose'] }, []],
  ['a wood, where no weight stands for it', { tasks: [{ task: 'handle-logs' }] }, ['species']],
  ['none where a weight does', { tasks: [{ task: 'handle-logs', weight: { value: 900, unit: 'lb' } }] }, []],
] as const)('asks for %s', (_what, said, wanted) => {
  expect(notCarried(answers(said))).toEqual(wanted);
});

test('every refusal says what happened, why and what to do, as every trouble of the camera does, with nothing left in another language', () => {
  const texts = every.map(({ refusals, camera }) => [
    ...Object.values(refusals).flatMap((say) => Object.values(say({ sign: 'U', group: 3 }) as object) as string[]),
    ...Object.values(camera.absent), ...Object.values(camera.trouble), ...Object.values(camera.seen),
  ]);
  expect(texts.map(({ length }) => length)).toEqual([30, 30, 30, 30]);
  for (const text of texts.flat()) expect(text).toMatch(/[.!]$/);
  for (const [index, text] of texts[0]!.entries()) expect(new Set(texts.map((each) => each[index])).size, text).toBe(4);
  for (const words of every) expect(words.refusals.sign({ sign: 'U', group: 3 }).why).toMatch(/U.*3/);
});
