import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { questions } from '../../src/answers/questions.ts';
import { answers, taskSchemas } from '../../src/answers/schema.ts';
import type { Schema } from '../../src/documents/shape.ts';
import { choice, often, usual, type Keys } from '../../src/handoff/fields.ts';
import { layout1 } from '../../src/handoff/layout-1.ts';
import { fragmentOf, readFragment } from '../../src/handoff/link.ts';
import { layouts, pack, unpack } from '../../src/handoff/pack.ts';
import * as z from '../../src/zod.ts';
import { answersWithEveryWord } from './any-carried.ts';
import { listed, lackingOf } from './schema-and-layout.ts';
import { everyWord, madeByLayout1 } from './links-of-layout-1.ts';

test('the newest layout carries, or keeps back, all that the answers may hold: every key, word, unit and question', () => {
  expect(lackingOf(layouts.at(-1)!)).toEqual([]);
});

describe('control: it is told what to add where the answers come to hold', () => {
  const grown = (more: Parameters<typeof z.extend>[1]) => z.extend(answers, more) as unknown as Schema;

  test.each([
    ['a key', () => lackingOf(layout1, listed, grown({ colour: z.optional(z.string()) })), ['colour: the answers have it and the newest layout doesn\'t: append it, or keep it back']],
    ['a word', () => lackingOf(layout1, listed, grown({ priorities: z.optional(z.array(z.enum(['price', 'looks']))) })), ['priorities: the newest layout has no word "looks": append it']],
    ['a unit', () => lackingOf(layout1, listed, grown({ storage: z.strictObject({ depth: z.strictObject({ value: z.number(), unit: z.enum(['m', 'rod']) }) }) })).filter((each) => each.includes('rod')),
      ['storage.depth: the newest layout has no unit "rod": append it']],
    ['a task', () => lackingOf(layout1, listed, grown({ tasks: z.array(z.discriminatedUnion('task', [taskSchemas.dig, z.strictObject({ task: z.literal('rake-leaves') })])) })),
      ['tasks: the newest layout has no kind "rake-leaves": append it']],
    ['a figure where there were words', () => lackingOf(layout1, listed, grown({ comfort: z.strictObject({ cab: z.number() }) })).filter((each) => each.includes('cab')),
      ['comfort.cab: the schema has a number there, the newest layout choice: lay it out anew']],
    ['a question', () => lackingOf(layout1, { ...listed, unsure: [...questions.map(({ id }) => id), 'looks'] }), ['unsure: the newest layout has no word "looks": append it']],
    ['a material', () => lackingOf(layout1, { ...listed, 'tasks.move-loose.material': ['gravel', 'salt'] }), ['tasks.move-loose.material: the newest layout has no word "salt": append it']],
  ])('%s', (_what, lacks, told) => expect(lacks()).toEqual(told));

  test('or no longer holds a key', () => {
    expect(lackingOf({ ...layout1, colour: usual(choice('red')) })).toEqual(['colour: the newest layout has it and the answers don\'t']);
  });
});

const changedOf = 'what layout 1 wrote would be read otherwise: where it was released, put it back and make a layout of the next number; where it never was, write these anew';

describe('links of layout 1 that are out there', () => {
  test.each(madeByLayout1)('$name: reads as ever', ({ fragment, answers: said }) => {
    expect(readFragment(fragment), changedOf).toEqual({ answers: said });
  });

  test('with every word, kind and unit there is, too', () => {
    const all = answersWithEveryWord(layout1).map((each) => fragmentOf(pack(each, [layout1])));
    expect(createHash('sha256').update(all.join(' ')).digest('hex'), changedOf).toBe(everyWord);
  });
});

const layout2: Keys = { ...layout1, colour: often(choice('red', 'blue')) };
const said = madeByLayout1[0]!.answers;

test('what an older layout wrote is read where there is a newer one', () => {
  expect(unpack(pack(said, [layout1]).bytes, [layout1, layout2])).toEqual({ answers: said });
});

test('what a newer layout wrote is refused by name where there is only the older one', () => {
  const newer = pack(said, [layout1, layout2]);
  expect(unpack(newer.bytes, [layout1, layout2])).toEqual({ answers: said });
  expect(unpack(newer.bytes, [layout1])).toEqual({ refused: { code: 'newer' } });
});
