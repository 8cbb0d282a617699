/** What one unit lacks, whether it can be added and for how much; by its own year and what is fitted to it. */
import { expect, test } from 'vitest';
import type { UnitDocument } from '../../src/catalogue/schema.ts';
import { lacksOf, sayLack } from '../../src/lot/lacks.ts';
import { en } from '../../src/lot/words/en.ts';
import { lineUp, soundUnit, withMachine, withUnits } from '../support/catalogue-for-tests.ts';
import { before, candidateIn } from './buyers.ts';
import { voiceOf } from './voice.ts';

const lacks = (unit: Partial<UnitDocument>, machine = 'mid-deluxe', lot = lineUp()) => {
  const { catalogue, world } = before(withUnits(lot, soundUnit('u', machine, unit)));
  return lacksOf(candidateIn(catalogue, 'u'), world);
};
const of = (item: string, ...args: Parameters<typeof lacks>) => lacks(...args).filter((each) => each.item === item);

test('what can be fitted later costs its part and its hours', () => {
  // 1,250 and 4 hours at 100
  expect(of('midPto', { fitted: { midPto: false } })).toEqual([{ item: 'midPto', state: 'can-add', cost: 1650 }]);
  expect(of('backhoe', { fitted: {} })).toEqual([{ item: 'backhoe', state: 'can-add', cost: 7900 }]);
});

test('what is on it isn’t lacking', () => {
  expect(of('midPto', { fitted: { midPto: true } })).toEqual([]);
  expect(of('loader', { fitted: { loader: true } })).toEqual([]);
});

test('a factory cab that isn’t on it can’t be had; whether it is on it may be unknown', () => {
  expect(of('cab', { fitted: { cab: false } })).toMatchObject([{ state: 'never' }]);
  expect(of('cab', { fitted: {} })).toMatchObject([{ state: 'unknown' }]);
});

test('its own year decides: too early, on the edge, settled by its serial number, late enough', () => {
  const backhoe = (year: number, yearKind: UnitDocument['yearKind']) => of('backhoe', { year, ...(yearKind && { yearKind }), fitted: {} }, 'mid-economy')[0]!.state;
  expect([backhoe(2016, 'sale'), backhoe(2017, 'sale'), backhoe(2017, 'serial'), backhoe(2018, 'serial'), backhoe(2021, 'sale')]).toEqual(['never', 'unknown', 'never', 'can-add', 'can-add']);
});

test('a price or hours nobody gave must be asked for, and are never taken for nothing', () => {
  const unpriced = withMachine(lineUp(), 'mid-deluxe', () => ({ midPto: { availability: 'field-kit' } }));
  const [lack] = of('midPto', { fitted: { midPto: false } }, 'mid-deluxe', unpriced);
  expect(lack).toEqual({ item: 'midPto', state: 'can-add' });
  expect(sayLack(lack!, voiceOf(lineUp()), en)).toMatch(/Ask the dealer what it costs/);
  expect(sayLack(of('midPto', { fitted: { midPto: false } })[0]!, voiceOf(lineUp()), en)).toBe('Mid-PTO: can be added for about $1,650, fitted.');
});
