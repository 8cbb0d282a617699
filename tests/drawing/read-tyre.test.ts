import { expect, test } from 'vitest';
import { readTyre } from '../../src/drawing/read-tyre.ts';
import { ruleBook } from '../../src/trade/book.ts';

const book = ruleBook();
const inches = (value: number) => value * 0.0254;

/** Diameter in inches and millimetres by what each designation means. */
test.each([
  // Section height over width, in percent, then the rim in inches: a tyre maker's page on markings.
  ['340/85 R 24', (24 * 25.4 + 2 * 0.85 * 340) / 1000, 0.34],
  ['15.0/55-17', inches(17 + 2 * 0.55 * 15), inches(15)],
  // Overall diameter by width by rim: the same page, and a seller's on lawn tyres.
  ['31x15.50-15', inches(31), inches(15.5)],
  ['24 x 12.00-12', inches(24), inches(12)],
  ['16x4', inches(16), inches(4)],
  // ETRTO databook, from memory: 849 mm.
  ['280/70R18', 0.8492, 0.28],
  // Measured by the dealer.
  ['rear 43 in tall, 14 in wide', inches(43), inches(14)],
  ['rear 1080 mm tall, 36 cm wide', 1.08, 0.36],
])('%s says how tall the tyre is', (size, diameter, width) => {
  const read = readTyre(size, 'rear', book);
  expect(read.diameter).toEqual({ value: expect.closeTo(diameter, 9), assumed: false });
  expect(read.width?.value).toBeCloseTo(width, 9);
});

/** Overall diameters of a published conversion table, in inches; makers may differ from it by 3 %. */
test.each([['9.5-24', 39.4], ['11.2-24', 42.9], ['11.2x24', 42.9], ['12.4-28', 48.4], ['13.6R28', 49.9], ['14.9-28', 51.8]])(
  '%s leaves the section’s height open: about %f in, and assumed',
  (size, published) => {
    const { diameter } = readTyre(size, 'rear', book);
    expect(diameter!.assumed).toBe(true);
    expect(Math.abs(diameter!.value / inches(published) - 1)).toBeLessThan(0.03);
  },
);

test('a reduced section is lower than a full one on the same rim', () => {
  const of = (size: string) => readTyre(size, 'rear', book).diameter!.value;
  expect(of('17.5L-24')).toBeLessThan(of('17.5-24'));
  // From memory: a 12-16.5 stands about 33 in tall.
  expect(of('12-16.5') / inches(33)).toBeCloseTo(1, 1);
});

test('front and rear are told apart where the size names them, and only the rear ones are meant where it doesn’t', () => {
  const both = 'front 18x8.50-10, rear 26x12.00-12';
  expect(readTyre(both, 'front', book).diameter?.value).toBeCloseTo(inches(18), 9);
  expect(readTyre(both, 'rear', book).diameter?.value).toBeCloseTo(inches(26), 9);
  expect(readTyre('26x12.00-12', 'front', book)).toEqual({});
  expect(readTyre('front 18x8.50-10', 'rear', book)).toEqual({});
});

test.each([undefined, '', 'turf', 'as delivered', 'second of four', 'R1 24'])('%s says nothing', (size) => {
  expect(readTyre(size, 'rear', book)).toEqual({});
});
