import { expect, test } from 'vitest';
import * as z from '../../src/zod.ts';
import { catalogue } from '../../src/catalogue/schema.ts';
import { headingsOf, headingText, mappingOf, matchColumns, type SheetKind } from '../../src/sheets/sheets.ts';
import { plain } from '../../src/sheets/match.ts';

const sheets = ['machines', 'units'] as const;
const match = (sheet: SheetKind, ...headings: string[]) => matchColumns({ sheet, headings });
const taken = (sheet: SheetKind, heading: string) => {
  const [found] = match(sheet, heading);
  return [found!.field, found!.unit, found!.sure];
};

test.each<[string, ...(string | undefined)[]]>([
  ['mass', 'mass', undefined, 'exact'],
  ['Mass (kg)', 'mass', 'kg', 'exact'],
  ['MASS [lbs]', 'mass', 'lb', 'exact'],
  ['Gewicht (kg)', 'mass', 'kg', 'same'],
  ['Operating weight', 'mass', undefined, 'same'],
  ['hitch lift 610 mm behind (lb)', 'hitch.lift610', 'lb', 'exact'],
  ['noise at the ear (dB(A))', 'noiseAtEarDecibels', undefined, 'exact'],
  ['noise at the ear', 'noiseAtEarDecibels', undefined, 'exact'],
  ['front axle share (%)', 'frontAxleShare', '%', 'exact'],
  ['list price (usd)', 'listPrice.price', 'USD', 'exact'],
  ['loader breakout', 'loaders[1].breakout', undefined, 'exact'],
  ['Loader 2 breakout (lbf)', 'loaders[2].breakout', 'lbf', 'exact'],
  ['loader 2: lift at pins', 'loaders[2].ratings.pins', undefined, 'exact'],
  ['used price 3', 'typicalPrices[3].price', undefined, 'exact'],
  ['tire 2 type', 'tyres[2].type', undefined, 'same'],
  ['wheelbse', 'wheelbase', undefined, 'near'],
  ['salesman of the month', undefined, undefined, 'none'],
  ['', undefined, undefined, 'none'],
])('of machines, "%s" is taken for %s in %s: %s', (heading, ...expected) => expect(taken('machines', heading)).toEqual(expected));

test('what is near comes with the nearest, and is not taken unasked', () => {
  const [slip] = match('machines', 'engin powr (hp)');
  expect(slip).toMatchObject({ sure: 'near', field: 'engine.power', unit: 'hp', nearest: [{ field: 'engine.power', heading: 'engine power' }] });
  expect(match('machines', 'front axle')[0]!.nearest.length).toBeGreaterThan(1);
  expect(mappingOf([slip!])).toEqual([undefined]);
});

interface Node {
  type?: string;
  properties?: Record<string, Node>;
  items?: Node;
}

/** Every leaf of a row in the published schema: amounts and money are leaves, lists of things have `[]`. */
function leavesOf({ properties, items, type }: Node, path = ''): string[] {
  if (type === 'array' && items?.properties && !items.properties.unit) return leavesOf(items, `${path}[]`);
  if (!properties || properties.unit || properties.currency) return [path];
  return Object.entries(properties).flatMap(([key, inner]) => leavesOf(inner, path === '' ? key : `${path}.${key}`));
}
const schema = z.toJSONSchema(catalogue, { target: 'draft-2020-12', io: 'input' }) as { properties: Record<SheetKind, { items: Node }> };

test.each(sheets)('every field of %s in the schema has its heading, and no heading goes nowhere', (sheet) => {
  const ratings = /^loaders\[\]\.ratings/;
  const leaves = leavesOf(schema.properties[sheet].items).filter((leaf) => !ratings.test(leaf)).map((leaf) => leaf.replace(/^fitted$/, 'fitted.loader'));
  const fields = headingsOf(sheet).map(({ field }) => field).filter((field) => !ratings.test(field));
  expect(leaves.length).toBeGreaterThan(30);
  expect(leaves.filter((leaf) => !fields.includes(leaf))).toEqual([]);
  expect(fields.filter((field) => !leaves.includes(field) && !field.startsWith('fitted.'))).toEqual([]);
});

test.each(sheets)('no two headings of %s can be taken for one another', (sheet) => {
  const written = headingsOf(sheet).flatMap(({ field, heading, also = [] }) => [heading, ...also].map((each) => [plain(each.replace(/\(dB\(A\)\)$/, '')), field] as const));
  const twice = written.filter(([word, field]) => written.some(([other, of]) => other === word && of !== field));
  expect(twice).toEqual([]);
});

test.each(sheets)('every heading of %s is matched as it is documented, its example is read', (sheet) => {
  for (const { field, heading } of headingsOf(sheet)) {
    const numbered = field.replace('[]', '[1]');
    expect(taken(sheet, heading).slice(0, 1), heading).toEqual([numbered]);
    if (field.includes('[]')) {
      const second = field.replace('[]', '[2]');
      expect(taken(sheet, headingText(sheet, second))[0]).toBe(second);
    }
  }
});
