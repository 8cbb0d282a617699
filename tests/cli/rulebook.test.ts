import { describe, expect, test } from 'vitest';
import { figureIds, ruleIds, rules, type RuleId } from '../../src/trade/book.ts';
import { changedCatalogue, faultForm, runWith } from './fake-io.ts';

/** What stands below each id, as one line. */
function recordsIn(out: readonly string[]) {
  const records = new Map<string, string>();
  let id = '';
  for (const line of out.slice(1)) {
    if (/^\S/.test(line)) id = line;
    else records.set(id, `${records.get(id) ?? ''} ${line.trim()}`.trim());
  }
  return records;
}

interface Printed {
  rules: { id: RuleId; dealers?: object }[];
  dealer?: string;
  refused?: { id: string }[];
}

const withRules = (own: object) => changedCatalogue((catalogue) => { catalogue.rules = own; });
const printed = async (own: object, format: string) => runWith({ 'lot.json': withRules(own) }, 'rulebook', '--format', format, '--catalogue', 'lot.json');

test('json holds every record whole', async () => {
  const { code, out } = await runWith({}, 'rulebook', '--format', 'json');
  expect(code).toBe(0);
  const book = JSON.parse(out.join('\n')) as Printed;
  expect(book.rules.map(({ id }) => id)).toEqual(ruleIds);
  for (const { id, ...rule } of book.rules) expect(rule).toEqual(rules[id]);
  expect(Object.keys(book)).toEqual(['version', 'rules']);
});

test('text holds every record with statement, value or formula, a source and where it is used', async () => {
  const { code, out } = await runWith({}, 'rulebook');
  expect(code).toBe(0);
  const records = recordsIn(out);
  expect([...records.keys()].filter((id) => id !== '')).toEqual(ruleIds);
  for (const id of ruleIds) {
    const rule = rules[id];
    expect(records.get(id)).toContain(rule.statement);
    expect(records.get(id)).toMatch(/Source: \S.* Used in: \S/);
    if (rule.kind === 'formula') for (const part of rule.formula.split('; ')) expect(records.get(id)).toContain(part);
    else expect(records.get(id)!.replaceAll(',', '')).toContain(`${rule.value}`);
  }
  expect(out.filter((line) => line.length > 80)).toEqual([]);
});

describe('with a catalogue', () => {
  const own = { 'mow.per-year': 31, 'overhead.clearance': { value: 0.45, unit: 'm' } };

  test('json gives the dealer’s figure beside the book’s own, and nowhere else', async () => {
    const { code, out } = await printed(own, 'json');
    expect(code).toBe(0);
    const book = JSON.parse(out.join('\n')) as Printed;
    expect(book.dealer).toBe('Hollowmere Valley Tractors');
    expect(book.refused).toEqual([]);
    expect(Object.fromEntries(book.rules.flatMap(({ id, dealers }) => (dealers ? [[id, dealers]] : [])))).toEqual({
      'mow.per-year': { value: 31, unit: 'count' }, 'overhead.clearance': { value: 0.45, unit: 'm' },
    });
    for (const { id, dealers: _, ...rule } of book.rules) expect(rule).toEqual(rules[id]);
  });

  test('text says both values at the rule, and nothing of a dealer at the others', async () => {
    const { code, out } = await printed(own, 'text');
    expect(code).toBe(0);
    const records = recordsIn(out);
    expect(records.get('mow.per-year')).toMatch(/^.* 25: .*This dealer’s figure: 31 Source/);
    expect(records.get('overhead.clearance')).toMatch(/12 in: .*This dealer’s figure: 0\.45 m \(17\.72 in\) Source/);
    expect([...records].filter(([, record]) => record.includes('This dealer’s figure')).map(([id]) => id)).toEqual(Object.keys(own));
  });

  test.each([
    ['a floor to the unsafe side', 'overhead.clearance', { value: 6, unit: 'in' }, /safe side/],
    ['a definition', 'slope.flat', 7, /no value of the dealer['’]s own/],
    ['a unit of another kind', 'haul.reserve', { value: 10, unit: 'gal' }, /a value in lb/],
    ['a value beyond its range', 'mow.per-year', 500, /from 1 to 80/],
    ['an id that isn’t in the book', 'mow.by-moonlight', 1, /the id of a figure/],
    ['a formula', 'mow.rate', 1, /the id of a figure/],
    ['an id every object knows', 'constructor', 1, /the id of a figure/],
  ])('%s is refused by name, with why, and the book is printed all the same', async (_what, id, value, why) => {
    const rule = { [id]: value, 'haul.deck-side': 3 };
    const json = await printed(rule, 'json');
    const book = JSON.parse(json.out.join('\n')) as Printed;
    expect(book.refused).toEqual([{ id, ...(typeof value === 'number' ? { value } : value), ...(figureIds.includes(id as never) && typeof value === 'number' ? { unit: expect.any(String) } : {}), expected: expect.stringMatching(why) }]);
    expect(book.rules.filter(({ dealers }) => dealers).map((each) => each.id)).toEqual(['haul.deck-side']);

    for (const format of ['text', 'html']) {
      const { code, out, err } = await printed(rule, format);
      expect(code).toBe(1);
      expect(err).toHaveLength(1);
      expect(err[0]).toMatch(faultForm);
      const text = out.join(' ').replaceAll(/\s+/g, ' ').replaceAll('&#39;', "'");
      expect(text).toContain(id);
      expect(text).toMatch(/refused: expected/);
      expect(text).toMatch(why);
    }
  });

  test('a dealer without figures of his own is no fault', async () => {
    const { code, out } = await runWith({ '-': changedCatalogue((catalogue) => { delete catalogue.rules; }) }, 'rulebook', '--catalogue', '-');
    expect(code).toBe(0);
    expect(out.join('\n')).not.toContain('This dealer’s figure');
  });

  test('where it is no catalogue, its faults are listed and nothing is printed', async () => {
    const files = { 'broken.json': '{', 'answers.json': '{"format":"acre-to-axle/answers/1"}', 'half.json': '{"format":"acre-to-axle/catalogue/1"}' };
    for (const file of [...Object.keys(files), 'missing.json']) {
      const { code, out, err } = await runWith(files, 'rulebook', '--catalogue', file);
      expect([file, code, out]).toEqual([file, 1, []]);
      expect(err.length).toBeGreaterThan(0);
    }
  });

  test('a fault elsewhere is told, and the figures are shown all the same', async () => {
    const lot = changedCatalogue((catalogue) => {
      catalogue.rules = own;
      catalogue.units[0].machine = 'nobody';
      catalogue.dealer.hobby = 'chess';
    });
    const { code, out, err } = await runWith({ 'lot.json': lot }, 'rulebook', '--catalogue', 'lot.json');
    expect(code).toBe(1);
    expect(out.join('\n')).toContain('This dealer’s figure: 31');
    expect(err).toHaveLength(2);
    expect(err[1]).toMatch(/hobby.*; went on without it$/);
  });
});
