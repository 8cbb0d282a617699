/** Facts about used prices; each is common practice, no source, with its control. */
import { expect, test } from 'vitest';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { catalogueForTests, usd, withUnits } from '../support/catalogue-for-tests.ts';
import { saying, unitsIn } from '../support/reckon.ts';

const about21000 = (firm: boolean) => saying({ budget: { limit: usd(21_000), firm } });
const unitVerdicts = (catalogue = catalogueForTests(), firm = true) =>
  Object.fromEntries(unitsIn(shortlist(catalogue, about21000(firm))).map(({ unit, verdict }) => [unit, verdict]));

// Common practice, no source: used prices overlap across frame classes.
test('about 21,000 buys a well-equipped subcompact, a small frame or a nearly new economy mid', () => {
  expect(unitVerdicts()).toMatchObject({ 'blue-barn': 'stands', 'back-row': 'stands', 'by-the-gate': 'stands' });
});

test('a much older deluxe mid costs as much or a little more', () => {
  expect(unitVerdicts()['old-faithful']).toBe('ruled-out');
  expect(unitVerdicts(catalogueForTests(), false)['old-faithful'], 'where the limit isn’t firm it stands').toBe('stands');
});

test('control: the asking price decides', () => {
  const dealt = catalogueForTests();
  const price = (id: string, value: number) => dealt.units!.map((unit) => (unit.id === id ? { ...unit, price: usd(value) } : unit));
  expect(unitVerdicts(withUnits(dealt, ...price('old-faithful', 21_000)))['old-faithful']).toBe('stands');
  expect(unitVerdicts(withUnits(dealt, ...price('by-the-gate', 21_001)))['by-the-gate']).toBe('ruled-out');
});
