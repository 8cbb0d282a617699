/** Facts about trims and generations; each is common practice, no source, with its control. */
import { expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { lb, lineUp, soundUnit, withLoader, withMachine } from '../support/catalogue-for-tests.ts';
import { because, mustDo, mustHave, out, standing, unitOf } from '../support/reckon.ts';

const all = lineUp().machines.map(({ id }) => id);
const deluxe = all.filter((id) => id.endsWith('deluxe'));
const pallet: AnswersDocument['tasks'] = [{ task: 'lift-pallets', weight: lb(100) }];

// Common practice, no source.
test('a factory cab with heat and air is for deluxe mid and deluxe large alone', () => {
  const cab = mustHave({ cab: 'heat-and-air' });
  expect(standing(lineUp(), cab)).toEqual(['mid-deluxe', 'large-deluxe']);
  expect(because(shortlist(lineUp(), cab), 'large-economy')).toEqual(['comfort.cab']);
  const given = withMachine(lineUp(), 'large-economy', () => ({ cabs: [{ id: 'a-cab', availability: 'option', heat: true, airConditioning: true }] }));
  expect(standing(given, cab), 'control: with a factory cab').toContain('large-economy');
  const heatOnly = withMachine(lineUp(), 'mid-deluxe', ({ cabs = [] }) => ({ cabs: cabs.map((each) => ({ ...each, airConditioning: false })) }));
  expect(standing(heatOnly, cab), 'control: without air').toEqual(['large-deluxe']);
});

test('with heat alone an aftermarket cab serves elsewhere, as an addition with its price', () => {
  const heat = mustHave({ cab: 'heat' });
  expect(standing(lineUp(), heat)).toEqual(all);
  const cabOf = (catalogue: ReturnType<typeof lineUp>) => shortlist(catalogue, heat).shortlist.find(({ machine }) => machine === 'small-standard')?.package.additions;
  expect(cabOf(lineUp())).toContainEqual(expect.objectContaining({ what: 'cab', id: 'small-standard-added-cab', price: 4200 }));
  expect(cabOf(withMachine(lineUp(), 'small-standard', () => ({ cabs: [] }))), 'control: without it').toBeUndefined();
});

test('a factory cab that a unit hasn’t got can’t be had later', () => {
  const cab = mustHave({ cab: 'heat-and-air' });
  const unit = (fitted: boolean) => unitOf(soundUnit('the-unit', 'mid-deluxe', { fitted: { loader: true, cab: fitted } }), cab).verdict;
  expect(unit(false)).toBe('ruled-out');
  expect(unit(true), 'control: a unit that has it').toBe('stands');
});

// Common practice, no source: two ranges up to the wide mid, three or a power reverser on deluxe mid and large.
test('a power reverser is for deluxe mid and large, a pedal for all', () => {
  const shuttle = mustHave({ drive: 'shuttle' });
  expect(standing(lineUp(), shuttle)).toEqual(['mid-deluxe', 'large-economy', 'large-deluxe']);
  expect(standing(lineUp(), mustHave({ drive: 'pedal' }))).toEqual(all);
  const given = withMachine(lineUp(), 'small-deluxe', () => ({ transmissions: [{ availability: 'fitted', kind: 'power-reverser' }] }));
  expect(standing(given, shuttle), 'control: with one').toContain('small-deluxe');
  expect(out(given, mustHave({ drive: 'pedal' })), 'control: then without a pedal').toEqual(['small-deluxe']);
});

test.each([['hydrostatic', 'ruled-out'], ['power-reverser', 'stands'], [undefined, 'ask']] as const)(
  'a unit of the deluxe mid with the drive %s: by a shuttle %s', (transmission, verdict) => {
    const unit = soundUnit('the-unit', 'mid-deluxe', { ...(transmission && { transmission }) });
    expect(unitOf(unit, mustHave({ drive: 'shuttle' })).verdict).toBe(verdict);
  },
);

// Common practice, no source: the economy loader must be unbolted and has no hydraulic couplers.
test('a loader that comes off without tools is not for the economy mid', () => {
  const often = mustHave({ loaderOff: 'often' }, { tasks: pallet });
  expect(out(lineUp(), often)).toEqual(['mid-economy']);
  const quick = withLoader(lineUp(), 'mid-economy', () => ({ detaching: 'quick' }));
  expect(standing(quick, often), 'control: where it comes off quickly').toEqual(all);
});

// Common practice, no source.
test.each(['smoothSeat', 'tiltWheel', 'cruise'] as const)('%s is not for the plain trims, economy and wide mid among them', (wish) => {
  const answers = mustHave({ [wish]: true });
  expect(standing(lineUp(), answers)).toEqual(deluxe);
  expect(out(lineUp(), answers)).toEqual(expect.arrayContaining(['mid-economy', 'wide-mid-standard']));
  const feature = wish === 'smoothSeat' ? 'suspensionSeat' : wish;
  const given = withMachine(lineUp(), 'wide-mid-standard', () => ({ [feature]: { availability: 'option' } }));
  expect(standing(given, answers), 'control: where it can be had').toContain('wide-mid-standard');
});

// Common practice, no source.
test('a loader that keeps its load level can be had on the large frame', () => {
  const level = mustHave({ levelLift: true }, { tasks: pallet });
  expect(standing(lineUp(), level)).toEqual(['large-economy', 'large-deluxe']);
  const without = withLoader(lineUp(), 'large-economy', () => ({ selfLevelling: 'none' }));
  expect(standing(without, level), 'control: where it can’t').toEqual(['large-deluxe']);
});

// Common practice, no source: in one line a backhoe goes on from the 2018 model on.
const digging = mustDo({ task: 'dig' });

test.each([
  ['of the 2017 model', 'ruled-out', { year: 2017, yearKind: 'model' }],
  ['of the 2018 model', 'stands', { year: 2018, yearKind: 'model' }],
  ['sold in 2018, without more', 'ask', { year: 2018, yearKind: 'sale' }],
  ['sold in 2017, without more', 'ask', { year: 2017, yearKind: 'sale' }],
  ['built in 2019, without more', 'ask', { year: 2019, yearKind: 'build' }],
  ['sold in 2015', 'ruled-out', { year: 2015, yearKind: 'sale' }],
  ['sold in 2021', 'stands', { year: 2021, yearKind: 'sale' }],
  ['whose year nobody said', 'ask', {}],
  ['of 2018, of which nobody said what year that is', 'ask', { year: 2018 }],
  ['of 2021, of which nobody said what year that is', 'stands', { year: 2021 }],
] as const)('an economy mid %s, for digging: %s', (_what, verdict, said) => {
  const { year: _year, yearKind: _kind, ...sound } = soundUnit('the-unit', 'mid-economy');
  expect(unitOf({ ...sound, ...said }, digging).verdict).toBe(verdict);
});

test('a backhoe somebody has put on a 2016 model is no proof that it belongs there', () => {
  const unit = (year: number) => unitOf(soundUnit('the-unit', 'mid-economy', { year, fitted: { loader: true, backhoe: true } }), digging).verdict;
  expect(unit(2016)).not.toBe('stands');
  expect(unit(2020), 'control: on one that takes it').toBe('stands');
});

test('control: were the break two years earlier, the 2017 model would take one', () => {
  const earlier = withMachine(lineUp(), 'mid-economy', ({ backhoe }) => ({ backhoe: { ...backhoe!, years: { from: 2016 } } }));
  expect(unitOf(soundUnit('the-unit', 'mid-economy', { year: 2017 }), digging, earlier).verdict).toBe('stands');
});

test('the machine stands for digging, since a unit young enough could be bought', () => {
  expect(standing(lineUp(), digging)).toContain('mid-economy');
  const ended = withMachine(lineUp(), 'mid-economy', ({ years }) => ({ years: { ...years, to: 2017 } }));
  expect(out(ended, digging), 'control: a line that ended before').toContain('mid-economy');
});
