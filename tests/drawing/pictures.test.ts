import type { Element } from '@xmldom/xmldom';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { questions, type QuestionId } from '../../src/answers/questions.ts';
import { hasPicture, pictureOf } from '../../src/drawing/pictures/picture-of.ts';
import { roundLength } from '../../src/drawing/pictures/round-length.ts';
import { de } from '../../src/reasons/words/de.ts';
import { en } from '../../src/reasons/words/en.ts';
import { es } from '../../src/reasons/words/es.ts';
import { fr } from '../../src/reasons/words/fr.ts';
import type { Words } from '../../src/reasons/words/words.ts';
import { showAmount, type Reader } from '../../src/units/show.ts';
import { runs } from '../support/arbitraries.ts';
import { across, answersWith, book, elements, hasClass, parsed } from './drawn.ts';

const drawn: readonly QuestionId[] = ['slope', 'bales', 'deck', 'pallets'];
const languages: Record<string, Words> = { en, de, es, fr };

type Said = Omit<AnswersDocument, 'format'>;
interface Wish { words?: Words; units?: 'us' | 'metric'; width?: number; prefix?: string; direction?: 'ltr' | 'rtl' }

function picture(question: QuestionId, said: Said = {}, { words = en, units = 'us', prefix = 'p', ...more }: Wish = {}) {
  const reader: Reader = { units, locale: words.language, currency: 'USD', unitWords: words.units };
  return pictureOf(question, {
    answers: answersWith(said), book, units, words: words.pictures, prefix, ...more,
    length: (metres) => roundLength(metres, reader), mass: (kg) => showAmount(kg, 'kg', reader),
  })!;
}

const cellsOf = (svg: string) => elements(parsed(svg), (element) => hasClass(element, 'cell'));
const within = (cell: Element, ...classes: string[]) => [...cell.getElementsByTagName('*')].filter((each) => classes.every((name) => hasClass(each, name)));
const textsOf = (cell: Element, kind: string) => within(cell, kind).filter(({ tagName }) => tagName === 'text').map(({ textContent }) => textContent!.replaceAll('\u00a0', ' '));
const nameOf = (cell: Element) => textsOf(cell, 'name').join(' ');
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const radiusOf = (circle: Element) => Number(circle.getAttribute('r'));

/** The ground line of a slope: how far it goes up for each pixel it goes along. */
function proportion(cell: Element) {
  const [x1, y1, x2, y2] = within(cell, 'slope', 'heavy')[0]!.getAttribute('d')!.match(/-?[\d.]+/g)!.map(Number) as [number, number, number, number];
  return (y1 - y2) / (x2 - x1);
}
/** Decimals that a drawing of a hundred pixels, told to the hundredth of one, keeps. */
const asDrawn = 2;

describe('slopes', () => {
  test.each([['us', 280], ['us', 660], ['metric', 280], ['metric', 660]] as const)('flat and rolling are drawn at 5 and 10 degrees, steep steeper (%s, %d px)', (units, width) => {
    const [flat, rolling, steep, ...more] = cellsOf(picture('slope', {}, { units, width }).svg);
    // Tangents of 5 and 10 degrees, from a table.
    expect(proportion(flat!)).toBeCloseTo(0.0875, asDrawn);
    expect(proportion(rolling!)).toBeCloseTo(0.1763, asDrawn);
    expect(proportion(steep!)).toBeGreaterThan(0.2);
    expect([flat, rolling, steep].map((cell) => within(cell!, 'slope', 'heavy', 'assumed').length)).toEqual([0, 0, 1]);
    expect(more).toEqual([]);
  });

  test('each says how far it goes up on which run, as one measures it with a board and a level', () => {
    // 10 ft × tan 5° is 10.5 in, × tan 10° 21.2 in; 1 m × them 8.7 and 17.6 cm.
    const figures = (units: 'us' | 'metric') => cellsOf(picture('slope', {}, { units }).svg).map((cell) => textsOf(cell, 'figure'));
    expect(figures('us')).toEqual([['10 ft', '10 in'], ['10 ft', '21 in'], ['10 ft', '> 21 in']]);
    expect(figures('metric')).toEqual([['1 m', '9 cm'], ['1 m', '18 cm'], ['1 m', '> 18 cm']]);
    expect(plain(picture('slope').description)).toBe(
      'Flat: less than 10 in up in 10 ft, less than 5°. Rolling: 10 in to 21 in up in 10 ft, 5° to 10°. Steep: more than 21 in up in 10 ft, more than 10°.',
    );
  });

  test('what the buyer measured is drawn at its own angle, as degrees and as percent', () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 60, noNaN: true }), fc.constantFrom(280, 700), (degrees, width) => {
      const own = cellsOf(picture('slope', { land: { slope: { value: degrees, unit: 'deg' } } }, { width }).svg)[3]!;
      expect(nameOf(own)).toBe('Your slope');
      expect(proportion(own)).toBeCloseTo(Math.tan((degrees * Math.PI) / 180), asDrawn);
    }), runs(60));
    const [, , , own] = cellsOf(picture('slope', { land: { slope: { value: 20, unit: 'percent' } } }).svg);
    expect(proportion(own!)).toBeCloseTo(0.2, asDrawn);
    expect(textsOf(own!, 'figure')).toEqual(['10 ft', '2 ft']);
  });

  test('a kind that is chosen is marked in words, and no fourth is drawn', () => {
    const cells = cellsOf(picture('slope', { land: { slope: 'rolling' } }).svg);
    expect(cells.map(nameOf)).toEqual(['Flat', 'Rolling – your answer', 'Steep']);
    expect(cells.map((cell) => hasClass(cell, 'own'))).toEqual([false, true, false]);
  });

  test('what nobody drives up isn’t drawn', () => {
    for (const slope of [{ value: 2000, unit: 'percent' as const }, { value: 95, unit: 'deg' as const }]) expect(cellsOf(picture('slope', { land: { slope } }).svg)).toHaveLength(3);
  });

  test('no machine stands on a slope, and the angle from which nothing counts as cleared stands nowhere', () => {
    const { svg } = picture('slope', { land: { slope: { value: 12, unit: 'deg' } } });
    expect(elements(parsed(svg), (element) => ['tyre', 'wheel', 'body'].some((part) => hasClass(element, part)))).toEqual([]);
    expect(svg).not.toContain('15°');
    expect(svg).toContain('12°');
  });

  test('the kinds go by the names the question gives them', () => {
    for (const words of Object.values(languages)) {
      const { flat, rolling, steep } = words.pictures.slope.names;
      expect({ flat, rolling, steep }).toEqual(words.questions.slope.fields['land.slope']!.options);
    }
  });
});

describe('bales', () => {
  const bale = { task: 'lift-bales' as const };
  const ft = (value: number) => ({ value, unit: 'ft' as const });
  const face = (cell: Element) => within(cell, 'bale', 'heavy').findLast(({ tagName }) => tagName === 'circle')!;
  const pounds = (line: string) => line.match(/[\d,]+(?= lb)/g)!.map((figure) => Number(figure.replace(',', '')));

  test.each([280, 660])('stand to one scale beside a post of 6 ft, %d px wide', (width) => {
    const [post, ...bales] = cellsOf(picture('bales', {}, { width }).svg);
    const ys = within(post!, 'post')[0]!.getAttribute('d')!.match(/-?[\d.]+/g)!.map(Number).filter((_, place) => place % 2 === 1);
    const foot = (Math.max(...ys) - Math.min(...ys)) / 6;
    expect(bales.map((cell) => (2 * radiusOf(face(cell))) / foot).map((feet) => Math.round(feet * 100) / 100)).toEqual([4, 5, 5, 6]);
    expect(bales.map((cell) => textsOf(cell, 'figure'))).toEqual([['4 ft'], ['5 ft'], ['5 ft'], ['6 ft']]);
    // Of two equally high the wider reaches farther back.
    const deep = bales.map((cell) => Number(within(cell, 'bale', 'heavy')[0]!.getAttribute('cx')) - Number(face(cell).getAttribute('cx')));
    expect(deep[2]! / deep[1]!).toBeCloseTo(5 / 4, 1);
  });

  test('weigh what the extension service’s table says', () => {
    // Texas A&M AgriLife Extension E-319 (2012), table 1, read in an excerpt: 563 lb at 4 × 4 ft, 1,100 at 5 × 5, 1,584 at 5 × 6. A
    // 4 × 5 ft bale has 80 % of the volume of a 5 × 5 (Hay & Forage Grower, 2023, likewise).
    const table = [563, 880, 1100, 1584];
    // Density "often ranges from 9 to 12 lb" the cubic foot (same article): at 5 × 5 ft, 98.2 cu ft, 884 to 1,178 lb.
    const usual = [9, 12].map((density) => density / 11.21);
    const said = cellsOf(picture('bales').svg).slice(1).map((cell) => pounds(textsOf(cell, 'standing').join(' ')));
    for (const [at, [about, low, high]] of said.entries()) {
      expect(Math.abs(about! / table[at]! - 1)).toBeLessThan(0.02);
      expect(low!).toBeLessThan(table[at]! * usual[0]!);
      expect(high!).toBeGreaterThan(table[at]! * usual[1]!);
    }
    expect(said).toHaveLength(4);
  });

  test('the buyer’s own stands among them where its size is answered', () => {
    const own = (task: object) => cellsOf(picture('bales', { tasks: [{ ...bale, ...task }] }).svg).slice(5);
    expect(own({ weight: { value: 900, unit: 'lb' } })).toEqual([]);
    const [weighed] = own({ diameter: ft(5), width: ft(4), weight: { value: 905, unit: 'lb' } });
    expect([nameOf(weighed!), ...textsOf(weighed!, 'standing')]).toEqual(['Your bale', '4 ft × 5 ft', '905 lb']);
    // 50.3 cu ft of 11 lb dry hay each, and as it is wrapped 55 of 100 are water: 553 / 0.45 = 1,229 lb.
    const [wrapped] = own({ diameter: ft(4), width: ft(4), hay: 'wrapped' });
    expect(textsOf(wrapped!, 'standing')).toEqual(['4 ft × 4 ft', 'about 1,200 lb']);
    // Of one of which nobody said how wide it is only the round face is known.
    const [flat] = own({ diameter: ft(4.5) });
    expect(textsOf(flat!, 'standing')).toEqual(['54 in']);
    expect(within(flat!, 'bale', 'heavy')).toHaveLength(1);
  });
});

test('the mower hangs between the wheels, or runs behind them', () => {
  const [belly, rear] = cellsOf(picture('deck', { tasks: [{ task: 'mow-lawn', deck: 'rear' }] }, { width: 700 }).svg) as [Element, Element];
  const wheels = (cell: Element) => within(cell, 'tyre').map((tyre) => [Number(tyre.getAttribute('cx')), radiusOf(tyre)] as const).sort(([a], [b]) => a - b);
  const mower = (cell: Element) => across(within(cell, 'deck', 'heavy').find(({ tagName }) => tagName === 'path')!);
  const [[hind, hindRadius], [front, frontRadius]] = wheels(belly) as [readonly [number, number], readonly [number, number]];
  expect(mower(belly)[0]).toBeGreaterThan(hind + hindRadius);
  expect(mower(belly)[1]).toBeLessThan(front - frontRadius);
  const [[behind, radius]] = wheels(rear) as [readonly [number, number]];
  expect(mower(rear)[1]).toBeLessThan(behind - radius);
  expect([nameOf(belly), nameOf(rear)]).toEqual(['Under the belly', 'Behind the tractor – your answer']);
  // Nobody's tractor is drawn as if it were somebody's: no figure stands on it, nor is it made out to be a guess at one.
  expect([belly, rear].flatMap((cell) => [...within(cell, 'figure'), ...within(cell, 'assumed')])).toEqual([]);
});

test('the middle of a pallet’s load is half its 48 in ahead of the forks', () => {
  const [cell] = cellsOf(picture('pallets').svg) as [Element];
  const [left, right] = across(within(cell, 'pallet', 'heavy')[0]!);
  const middle = Number(within(cell, 'forks').find(({ tagName }) => tagName === 'circle')!.getAttribute('cx'));
  expect((middle - left) / (right - left)).toBeCloseTo(0.5, asDrawn);
  expect(textsOf(cell, 'figure')).toEqual(['2 ft', '4 ft']);
});

test('a question has a picture exactly where one is drawn', () => {
  expect(questions.map(({ id }) => id).filter(hasPicture).sort()).toEqual([...drawn].sort());
  for (const { id } of questions) expect(picture(id) !== undefined).toBe(hasPicture(id));
});

const full: Said = {
  land: { slope: { value: 14, unit: 'deg' } },
  tasks: [{ task: 'lift-bales', diameter: { value: 54, unit: 'in' }, width: { value: 51, unit: 'in' } }, { task: 'mow-lawn', deck: 'belly' }, { task: 'lift-pallets' }],
};

describe.each(Object.entries(languages))('in %s', (_, words) => {
  test.each(drawn)('%s says in words what it shows, within a phone’s width and a page’s', (question) => {
    for (const [width, units] of [[280, 'us'], [280, 'metric'], [700, 'us']] as const) {
      const { svg, title, description } = picture(question, full, { words, units, width });
      const document = parsed(svg);
      expect([document.getElementsByTagName('title')[0]!.textContent, document.getElementsByTagName('desc')[0]!.textContent]).toEqual([title, description]);
      for (const cell of cellsOf(svg)) {
        expect(nameOf(cell)).not.toBe('');
        expect(plain(description)).toContain(nameOf(cell));
        for (const line of textsOf(cell, 'standing')) expect(plain(description)).toContain(line);
      }
      const texts = elements(document, ({ tagName }) => tagName === 'text');
      const cut = texts.filter((text) => {
        const half = (text.textContent!.length * 12 * 0.6) / 2;
        const [x, beside] = [Number(text.getAttribute('x')), hasClass(text, 'beside')];
        return !text.hasAttribute('transform') && (text.textContent!.includes('…') || x + (beside ? 2 : 1) * half > width || (!beside && x - half < 0));
      });
      expect(cut.map(({ textContent }) => textContent)).toEqual([]);
      expect([document.documentElement!.getAttribute('width'), document.documentElement!.getAttribute('viewBox')!.split(' ')[2]]).toEqual([`${width}`, `${width}`]);
    }
  });
});

test.each(drawn)('%s is a picture with a name, takes its colours from the page, and meets no other', (question) => {
  const [one, two] = ['one', 'two'].map((prefix) => picture(question, full, { prefix }).svg) as [string, string];
  const root = parsed(one).documentElement!;
  expect(root.getAttribute('role')).toBe('img');
  const ids = (svg: string) => elements(parsed(svg), (element) => element.hasAttribute('id')).map((element) => element.getAttribute('id')!);
  expect(new Set([...ids(one), ...ids(two)]).size).toBe(4);
  expect(ids(one)).toEqual([root.getAttribute('aria-labelledby'), root.getAttribute('aria-describedby')]);
  expect(one).not.toMatch(/style|#[0-9a-f]{3}|rgb|fill=|stroke=/i);
  expect(one).not.toMatch(/NaN|Infinity|undefined/);
  expect(picture(question, full, { prefix: 'one' }).svg).toBe(one);
});

test('words and figures of any kind leave it well-formed', () => {
  const evil = '<b a="1">&amp;]]>\u0000';
  for (const question of drawn) {
    const { svg } = pictureOf(question, { answers: answersWith(full), book, units: 'us', words: en.pictures, prefix: evil, length: () => evil, mass: () => evil, angle: () => evil })!;
    expect(elements(parsed(svg), ({ tagName }) => !['svg', 'g', 'title', 'desc', 'path', 'circle', 'text'].includes(tagName))).toEqual([]);
  }
});

test('right-to-left words turn no drawing round', () => {
  const shapes = (direction: 'ltr' | 'rtl') => elements(parsed(picture('slope', full, { direction }).svg), ({ tagName }) => tagName === 'path').map((path) => path.getAttribute('d'));
  expect(shapes('rtl')).toEqual(shapes('ltr'));
  expect(parsed(picture('slope', {}, { direction: 'rtl' }).svg).documentElement!.getAttribute('direction')).toBe('rtl');
});

test.each([
  [1.2192, 'us', '4 ft'], [1.3716, 'us', '54 in'], [0.3048, 'us', '1 ft'], [0.254, 'us', '10 in'], [3.048, 'us', '10 ft'], [0, 'us', '0 in'],
  [1, 'metric', '1 m'], [0.18, 'metric', '18 cm'], [1.2192, 'metric', '122 cm'], [2, 'metric', '2 m'], [4.5, 'metric', '4.5 m'],
] as const)('a length of %d m (%s) is told as %s', (metres, units, said) => {
  expect(plain(roundLength(metres, { units, locale: 'en', currency: 'USD', unitWords: en.units }))).toBe(said);
});
