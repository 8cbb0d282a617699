import fc from 'fast-check';
import { expect, test } from 'vitest';
import { figureIds, ruleIds } from '../../src/trade/book.ts';
import { armFromOneRating, armFromTwoRatings, liftAt, type LoaderArm } from '../../src/trade/formulas/loader-arm.ts';
import { tipAngle } from '../../src/trade/formulas/tip-angle.ts';
import { isRefusal } from '../../src/trade/working.ts';
import { byCodeUnit } from '../../src/units/compare.ts';
import { asSi } from '../support/quantities.ts';

const rating = (load: number, ahead: number) => ({ load: asSi(load), ahead: asSi(ahead) });

/** 600 kg at 0.3 m and 450 kg at 0.8 m: 600·(a + 0.3) = 450·(a + 0.8) gives a = 1.2 m, and 750 kg at the pins. */
test('two ratings that both lie ahead of the pins make one lever', () => {
  const lever = armFromTwoRatings(rating(600, 0.3), rating(450, 0.8)) as LoaderArm;
  expect([lever.arm, lever.atPins]).toEqual([expect.closeTo(1.2, 9), expect.closeTo(750, 9)]);
});

test('a lever of two ratings, wherever they were measured, gives back both', () => {
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(fc.property(between(200, 2000), between(0.3, 3), between(0, 1), between(0.1, 1), (atPins, arm, near, further) => {
    const lift = (ahead: number) => (atPins * arm) / (arm + ahead);
    const lever = armFromTwoRatings(rating(lift(near), near), rating(lift(near + further), near + further)) as LoaderArm;
    return [near, near + further].every((ahead) => Math.abs(liftAt(lever, asSi(ahead)).result.value / lift(ahead) - 1) < 1e-9);
  }));
});

test.each([[600, 0.5, 500, 0.6], [600, 0.5, 300, 0.6]])('ratings of %d kg at %d m and %d kg at %d m fall faster than those of any lever, and are refused', (load, ahead, far, further) => {
  expect(isRefusal(armFromTwoRatings(rating(load, ahead), rating(far, further)))).toBe(true);
});
test('control: a little slower, and they are a lever', () => {
  expect(isRefusal(armFromTwoRatings(rating(600, 0.5), rating(501, 0.6)))).toBe(false);
});

test('a lever of one rating says which rule its share is from, if it is from one', () => {
  const inputs = (rule?: 'loader.one-rating-share') => armFromOneRating(rating(600, 0), 0.75, asSi(0.5), rule).working.inputs;
  expect([inputs('loader.one-rating-share').share, inputs().share]).toEqual([{ value: 0.75, unit: 'ratio', rule: 'loader.one-rating-share' }, { value: 0.75, unit: 'ratio' }]);
  expect(inputs()).not.toHaveProperty('share.rule');
});

test('a centre of mass just on the line from tyre to pivot is refused: it is no right angle of safety', () => {
  const at = (height: number) => tipAngle({ rearTrack: asSi(1.2), rearShare: 0.5, height: asSi(height), pivot: asSi(1) });
  expect([isRefusal(at(0.5)), isRefusal(at(0.51))]).toEqual([true, false]);
});

test('the rule book lists its ids in one order, the same everywhere', () => {
  expect([ruleIds, figureIds]).toEqual([[...ruleIds].sort(byCodeUnit), [...figureIds].sort(byCodeUnit)]);
});
