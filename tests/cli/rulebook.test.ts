import { expect, test } from 'vitest';
import { ruleIds, rules, type RuleId } from '../../src/trade/book.ts';
import { runWith } from './fake-io.ts';

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

test('json holds every record whole', async () => {
  const { code, out } = await runWith({}, 'rulebook', '--format', 'json');
  expect(code).toBe(0);
  const book = JSON.parse(out.join('\n')) as { rules: ({ id: RuleId })[] };
  expect(book.rules.map(({ id }) => id)).toEqual(ruleIds);
  for (const { id, ...rule } of book.rules) expect(rule).toEqual(rules[id]);
});

test('text holds every record with statement, value or formula, and a source', async () => {
  const { code, out } = await runWith({}, 'rulebook');
  expect(code).toBe(0);
  const records = recordsIn(out);
  expect([...records.keys()].filter((id) => id !== '')).toEqual(ruleIds);
  for (const id of ruleIds) {
    const rule = rules[id];
    expect(records.get(id)).toContain(rule.statement);
    expect(records.get(id)).toMatch(/Source: \S/);
    if (rule.kind === 'formula') for (const part of rule.formula.split('; ')) expect(records.get(id)).toContain(part);
    else expect(records.get(id)).toContain(`${rule.value}`);
  }
  expect(out.filter((line) => line.length > 80)).toEqual([]);
});
