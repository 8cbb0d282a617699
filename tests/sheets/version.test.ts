import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { canonicalJson, versionOf } from '../../src/sheets/sheets.ts';
import { demo } from './reading.ts';

/** RFC 8785, section 3.2.3: the example of sorting by UTF-16 code units, with its values in the order it prints. */
test('keys are in the order of RFC 8785, 3.2.3', () => {
  const example = {
    '\u20ac': 'Euro Sign', '\r': 'Carriage Return', '\ufb33': 'Hebrew Letter Dalet With Dagesh', '1': 'One',
    '\u{1f600}': 'Emoji: Grinning Face', '\u0080': 'Control', '\u00f6': 'Latin Small Letter O With Diaeresis',
  };
  expect(Object.values(JSON.parse(`{"a":[${canonicalJson(example).slice(1, -1).split('",').map((each) => each.replace(/^.*?":/, '')).join('",')}]}`) as { a: string[] }).flat()).toEqual([
    'Carriage Return', 'One', 'Control', 'Latin Small Letter O With Diaeresis', 'Euro Sign', 'Emoji: Grinning Face', 'Hebrew Letter Dalet With Dagesh',
  ]);
});

/** RFC 8785, section 3.2.2 and its result in 3.2.3. */
test('numbers, texts and literals are those of RFC 8785, 3.2.2', () => {
  const example = '{"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001], "string": "\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/", "literals": [null, true, false]}';
  expect(canonicalJson(JSON.parse(example))).toBe(
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
  );
});

test('the version is SHA-256 over that, as another implementation has it, and says nothing of itself', () => {
  const { version: _, ...bare } = demo;
  const wanted = `sha256-${createHash('sha256').update(canonicalJson(bare)).digest('hex')}`;
  expect(versionOf(bare)).toBe(wanted);
  expect(versionOf({ ...bare, version: 'anything' })).toBe(wanted);
  const turned = Object.fromEntries(Object.entries(bare).reverse());
  expect(versionOf(turned)).toBe(wanted);
  expect(versionOf({ ...bare, asOf: '2026-11-21' })).not.toBe(wanted);
});
