import { expect, test } from 'vitest';
import { placeOf, shown } from '../../src/documents/fault.ts';

test.each([
  [[], ''],
  [['machines', 3, 'tier'], 'machines[3].tier'],
  [['rules', 'mow.speed', 'unit'], 'rules.mow.speed.unit'],
  [[0, 'id'], '[0].id'],
  [['machines', 0, 'notTogether', 1, 0], 'machines[0].notTogether[1][0]'],
])('the path %j is called "%s"', (path, place) => expect(placeOf(path)).toBe(place));

test.each([
  [undefined, 'nothing'],
  [null, 'null'],
  ['a "word"', '"a \\"word\\""'],
  [{ value: 8, unit: 'lb' }, '{"value":8,"unit":"lb"}'],
  ['two\nlines', '"two\\nlines"'],
])('%j is shown on one line as %s', (value, text) => expect(shown(value)).toBe(text));

test('what is too long is cut, and says so', () => {
  const text = shown('long'.repeat(50));
  expect(text.length).toBeLessThan(70);
  expect(text.endsWith('…')).toBe(true);
});
