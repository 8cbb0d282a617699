import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { questionOf, questions, type Question, type QuestionId } from '../../src/answers/questions.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { flowed, type Block } from '../../src/counter/paper/flow.ts';
import { bringing, everyOption } from '../../src/counter/paper/form/conditions.ts';
import { canBeMust, canBeMustWhole, isSaidBySecondBoxes } from '../../src/counter/paper/form/musts.ts';
import { extents } from '../../src/counter/paper/sheet/extent.ts';
import { gathered, planOf, type Gathered } from '../../src/counter/paper/sheet/plan.ts';
import { insideOf, sheets, toPixels } from '../../src/counter/paper/sizes.ts';
import { checkIds } from '../../src/counter/paper/words/words.ts';
import { comfortWishes } from '../../src/answers/names.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { buyers } from '../handoff/buyers.ts';
import { runs } from '../support/arbitraries.ts';
import { paperLanguages, viewOf } from './paper-page.ts';

const catalogue = JSON.parse(readFileSync(new URL('../../demo/catalogue.json', import.meta.url), 'utf8')) as CatalogueDocument;
const asked = questions as readonly Question[];
const fields = asked.flatMap((each) => each.fields);

describe('what stands where on the pages', () => {
  const block = fc.record({ height: fc.integer({ min: 1, max: 60 }), floats: fc.option(fc.constant(true as const), { nil: undefined }) }) as fc.Arbitrary<Block>;
  const blocks = fc.array(block, { maxLength: 30 });
  const firstRoom = fc.integer({ min: 0, max: 100 });
  const room = 100;

  test('everything once; what doesn’t float in its order; no column fuller than it is, unless it says so', () => fc.assert(fc.property(blocks, firstRoom, (all, first) => {
    const roomIn = (column: number) => (column === 0 ? first : room);
    const { columns, holds, left } = flowed(all, roomIn);
    const placed = columns.flat();
    expect([...placed].sort((a, b) => a - b)).toEqual(all.map((_, index) => index));
    const kept = placed.filter((index) => !all[index]!.floats);
    expect(kept).toEqual([...kept].sort((a, b) => a - b));
    // All are lower than a whole column, so that each has a place.
    expect(holds).toBe(true);
    for (const [column, inIt] of columns.entries()) expect(left[column]).toBe(roomIn(column) - inIt.reduce((sum, index) => sum + all[index]!.height, 0));
    expect(left.filter((room) => room < 0)).toEqual([]);
  }), runs(300)));

  test('what floats fills what the next has no room in', () => {
    expect(flowed([{ height: 60 }, { height: 60 }, { height: 20, floats: true }, { height: 35, floats: true }], () => 100).columns).toEqual([[0, 3], [1, 2]]);
  });

  test('what is higher than any column is told of', () => {
    expect(flowed([{ height: 10 }, { height: 120 }, { height: 10 }], () => 100)).toEqual({ columns: [[0], [1], [2]], left: [90, -20, 90], holds: false });
  });

  // ISO 216: A4 is 210 × 297 mm. US Letter is 8.5 × 11 in. A CSS inch is 96 px (CSS Values and Units 4, 6.2).
  test('the sheets are those of the standards', () => {
    expect(sheets.a4).toMatchObject({ width: 210, height: 297 });
    expect(toPixels(sheets.letter.width)).toBeCloseTo(8.5 * 96, 9);
    expect(toPixels(sheets.letter.height)).toBeCloseTo(11 * 96, 9);
    for (const size of ['a4', 'letter'] as const) expect(insideOf(size).room).toBeGreaterThan(0.85 * sheets[size].height);
  });
});

describe('for whom a question is, on a form nobody has begun', () => {
  const options = (id: QuestionId) => bringing(questionOf(id)).map(({ field, option }) => `${field.at}=${option}`);

  test.each([
    ['lawn', ['tasks=mow-lawn']], ['trailer', ['haul.how=own-trailer']], ['cab', ['more=cab']], ['slope', []], ['budget', []],
  ] as const)('%s', (id, brings) => expect(options(id)).toEqual(brings));

  test('a door is asked for where there is one', () => expect(options('door').sort()).toEqual(['storage.kind=garage', 'storage.kind=shed']));

  test('each question is asked of someone: by an option, or always', () => {
    expect(asked.filter((question) => question.asked({ format: 'acre-to-axle/answers/1' }, (id) => id !== question.id) !== 'yes' && bringing(question).length === 0).map(({ id }) => id)).toEqual(['more']);
  });
});

describe('musts by a second box', () => {
  const field = (at: string) => fields.find((each) => each.at === at)!;

  test('each list of musts is said by the boxes of what it is about', () => {
    expect(fields.filter(isSaidBySecondBoxes).map(({ at }) => at)).toEqual(['tasks.must', 'comfort.must']);
    expect(everyOption(field('comfort.must') as never).sort()).toEqual([...comfortWishes].sort());
  });

  test('a job and a comfort can be a must; a finer point, a slope or a price can’t', () => {
    expect([canBeMust(field('tasks'), 'dig'), canBeMust(field('comfort.extras'), 'cruise'), canBeMustWhole(field('comfort.cab'))]).toEqual([true, true, true]);
    expect([canBeMust(field('more'), 'cab'), canBeMustWhole(field('land.slope')), canBeMustWhole(field('budget.limit'))]).toEqual([false, false, false]);
  });
});

describe('what a sheet tells of the machines of', () => {
  const told = buyers.map(({ name, answers }) => ({ name, answers, shortlist: shortlist(catalogue, answers) }));
  const gatheredOf = (each: (typeof told)[number]): Gathered => gathered(viewOf({ catalogue, ...each }, { language: 'en', units: 'us', size: 'letter' }));

  test.each(told)('$name: at every length a drawback of each, and what is left out counted', (each) => {
    const all = gatheredOf(each);
    const there = [...each.shortlist.shortlist, ...each.shortlist.askDealer];
    for (const extent of extents) {
      const { machines, named } = planOf(all, extent);
      expect([...machines.map(({ entry }) => entry), ...named]).toEqual(there);
      for (const [index, { reasons, drawbacks, sums, units, more }] of machines.entries()) {
        expect(drawbacks.length).toBeGreaterThan(0);
        const whole = all[index]!;
        expect([reasons, drawbacks, sums, units].map(({ length }) => length)).toEqual((['reasons', 'drawbacks', 'sums', 'units'] as const).map((list) => whole[list].length - more[list]));
      }
    }
  });

  test.each(told)('$name: no angle of tipping, and no part of a loan’s sums', (each) => {
    const forbidden = ['slope.tip-angle', 'loan.'];
    const sums = [...each.shortlist.shortlist, ...each.shortlist.askDealer].flatMap(({ reasons }) => reasons.flatMap(({ working = [] }) => working));
    const words = viewOf({ catalogue, ...each }, { language: 'en', units: 'us', size: 'letter' }).voice.words.formulas as Readonly<Record<string, string>>;
    const statements = sums.filter(({ formula }) => forbidden.some((each) => formula.startsWith(each))).map(({ formula }) => words[formula]);
    expect(gatheredOf(each).flatMap(({ sums: said }) => said.map(({ statement }) => statement)).filter((statement) => statements.includes(statement))).toEqual([]);
  });

  test('control: loans and angles are reckoned for some of them', () => {
    const formulas = told.flatMap(({ shortlist: { shortlist: entries } }) => entries.flatMap(({ reasons }) => reasons.flatMap(({ working = [] }) => working.map(({ formula }) => formula))));
    expect(formulas.some((formula) => formula.startsWith('loan.'))).toBe(true);
    expect(formulas).toContain('slope.tip-angle');
  });
});

// What to look at on a used tractor before it is bought: common practice, no source.
test('each language has the whole of what to look at', () => {
  expect(checkIds).toEqual(expect.arrayContaining(['hours', 'service-record', 'rops', 'seat-belt', 'hydraulics', 'loader-pins', 'clutch', 'pto', 'tyres', 'serial-plate', 'recalls', 'liens']));
  for (const language of paperLanguages) {
    const { own } = viewOf({ catalogue, answers: { format: 'acre-to-axle/answers/1' }, shortlist: {} as never }, { language, units: 'us', size: 'a4' });
    expect(own.language).toBe(language);
    expect(new Set(Object.values(own.checks)).size).toBe(checkIds.length);
  }
});
