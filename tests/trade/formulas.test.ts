import fc from 'fast-check';
import { expect, test } from 'vitest';
import { frontAxleLoad, rearBallast } from '../../src/trade/formulas/axle-loads.ts';
import { baleSize } from '../../src/trade/formulas/bale-size.ts';
import { greatestLoad } from '../../src/trade/formulas/greatest-load.ts';
import { hitchLiftAt } from '../../src/trade/formulas/hitch-lift-at.ts';
import { armFromOneRating, armFromTwoRatings, liftAt, type LoaderArm } from '../../src/trade/formulas/loader-arm.ts';
import { mowingHours } from '../../src/trade/formulas/mowing-hours.ts';
import { mowingRate } from '../../src/trade/formulas/mowing-rate.ts';
import { powerAtAltitude } from '../../src/trade/formulas/pto-power.ts';
import { rankOrderCentroid } from '../../src/trade/formulas/rank-order-centroid.ts';
import { remainingValue } from '../../src/trade/formulas/remaining-value.ts';
import { slopeFromPercent } from '../../src/trade/formulas/slope-from-percent.ts';
import { tipAngle } from '../../src/trade/formulas/tip-angle.ts';
import { isRefusal, type Working } from '../../src/trade/working.ts';
import { asSi } from '../support/quantities.ts';

const from = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map(asSi);
const holds = <T>(arbitrary: fc.Arbitrary<T>, property: (value: T) => boolean) => fc.assert(fc.property(arbitrary, property), { numRuns: 300 });
const value = ({ result }: Working) => result.value;
const slack = 1 + 1e-9;
const isAbout = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1);

const ratings = fc.record({ atPins: from(200, 2000), share: from(0.3, 0.95) });
const levers = ratings.map(({ atPins, share }) => armFromTwoRatings({ load: atPins, ahead: asSi(0) }, { load: asSi(atPins * share), ahead: asSi(0.5) }) as LoaderArm);

test('a loader never lifts more further out', () => {
  holds(fc.record({ lever: levers, near: from(0, 3), further: from(0, 3) }), ({ lever, near, further }) =>
    value(liftAt(lever, asSi(near + further))) <= value(liftAt(lever, near)) * slack);
});

test('a loader gives back both of its ratings where they were measured', () => {
  holds(ratings, ({ atPins, share }) => {
    const lever = armFromTwoRatings({ load: atPins, ahead: asSi(0) }, { load: asSi(atPins * share), ahead: asSi(0.5) }) as LoaderArm;
    return isAbout(value(liftAt(lever, asSi(0))), atPins) && isAbout(value(liftAt(lever, asSi(0.5))), atPins * share);
  });
});

test('a single rating comes back where it was measured, and loses its share by the other distance', () => {
  holds(fc.record({ rating: from(200, 2000), ratedAt: from(0, 1), share: from(0.3, 0.95) }), ({ rating, ratedAt, share }) => {
    const lever = armFromOneRating({ load: rating, ahead: ratedAt }, share, asSi(0.5));
    return isAbout(value(liftAt(lever, ratedAt)), rating) && isAbout(value(liftAt(lever, asSi(0.5))), lever.atPins * share);
  });
});

test.each([[600, 600], [600, 700]])('ratings of %i kg at the pins and %i kg ahead are refused', (atPins, ahead) => {
  expect(isRefusal(armFromTwoRatings({ load: asSi(atPins), ahead: asSi(0) }, { load: asSi(ahead), ahead: asSi(0.5) }))).toBe(true);
});
test('control: ratings that fall are not refused', () => {
  expect(isRefusal(armFromTwoRatings({ load: asSi(600), ahead: asSi(0) }, { load: asSi(599), ahead: asSi(0.5) }))).toBe(false);
});

const carried = fc.record({ attachment: from(0, 200), attachmentAhead: from(0, 1), loadAhead: from(0.1, 2), margin: from(0, 1) });

test('the greatest load never exceeds the lift at its own arm, nor falls below nothing', () => {
  holds(fc.record({ lever: levers, carried }), ({ lever, carried: held }) => {
    const load = value(greatestLoad(lever, held));
    return load >= 0 && load <= value(liftAt(lever, held.loadAhead)) * slack;
  });
});

test('a heavier attachment leaves less to load', () => {
  holds(fc.record({ lever: levers, carried, more: from(1, 100) }), ({ lever, carried: held, more }) => {
    const light = value(greatestLoad(lever, held)), heavy = value(greatestLoad(lever, { ...held, attachment: asSi(held.attachment + more) }));
    return heavy < light || light === 0;
  });
});

test('load and attachment together use the moment but for the margin', () => {
  holds(fc.record({ lever: levers, carried }), ({ lever, carried: held }) => {
    const load = value(greatestLoad(lever, held));
    const moment = load * (lever.arm + held.loadAhead) + held.attachment * (lever.arm + held.attachmentAhead);
    return load === 0 || isAbout(moment * (1 + held.margin), lever.atPins * lever.arm);
  });
});

const hitches = fc.record({ rated: from(200, 3000), distance: from(0, 3), link: from(0.3, 1.2) });
const hitchLift = ({ rated, distance, link }: { rated: never; distance: never; link: never }) => value(hitchLiftAt(rated, asSi(0.61), distance, link));

test('a hitch never lifts more than its rating, and never more further out', () => {
  holds(fc.record({ hitch: hitches, further: from(0, 2) }), ({ hitch, further }) =>
    hitchLift(hitch as never) <= hitch.rated
      && hitchLift({ ...hitch, distance: asSi(hitch.distance + further) } as never) <= hitchLift(hitch as never));
});

test('lower links taken too short never promise more', () => {
  holds(fc.record({ hitch: hitches, longer: from(0, 1) }), ({ hitch, longer }) =>
    hitchLift(hitch as never) <= hitchLift({ ...hitch, link: asSi(hitch.link + longer) } as never) * slack);
});

const standings = fc.record({
  tractor: from(500, 3000), rearShare: from(0.4, 0.8), front: from(0, 1500), ahead: from(0.3, 2), wheelbase: from(1.2, 2.2),
}).map(({ rearShare, ...rest }) => ({ ...rest, rear: asSi(rest.tractor * rearShare) }));
const ballasted = fc.record({ standing: standings, behind: from(0.2, 1.5), share: from(0.1, 0.5) });

/** By moments about the front axle, reckoned here apart from the code: rear·b = TH·b − GV·a + GH·(b + behind). */
test('with the ballast asked for, the rear axle has its share, and no more is asked than that', () => {
  holds(ballasted, ({ standing, behind, share }) => {
    const { tractor, rear, front, ahead, wheelbase } = standing;
    const ballast = value(rearBallast(standing, behind, share));
    const onRear = (rear * wheelbase - front * ahead + ballast * (wheelbase + behind)) / wheelbase;
    const wanted = share * (tractor + front + ballast);
    return ballast > 0 ? Math.abs(onRear - wanted) <= 1e-6 : onRear >= wanted - 1e-6;
  });
});

test('what the two axles carry is what there is', () => {
  holds(ballasted, ({ standing, behind }) => {
    const { tractor, rear, front, ahead, wheelbase } = standing;
    const back = asSi(200);
    const onFront = value(frontAxleLoad(asSi(tractor - rear), { mass: front, ahead }, { mass: back, behind }, wheelbase));
    const onRear = (rear * wheelbase - front * ahead + back * (wheelbase + behind)) / wheelbase;
    return Math.abs(onFront + onRear - (tractor + front + back)) <= 1e-6;
  });
});

test('a far load behind lifts the front axle: the sum goes below zero and says so', () => {
  expect(value(frontAxleLoad(asSi(300), { mass: asSi(0), ahead: asSi(0) }, { mass: asSi(800), behind: asSi(1) }, asSi(1.6)))).toBe(-200);
});

const stances = fc.record({ rearTrack: from(0.8, 2), rearShare: from(0.4, 1), height: from(0.4, 1.2), pivotPart: from(0, 1) })
  .map(({ pivotPart, ...stance }) => ({ ...stance, pivot: asSi(stance.height * pivotPart) }));
const angle = (stance: Parameters<typeof tipAngle>[0]) => value(tipAngle(stance) as Working);
const rigidBox = ({ rearTrack, height }: { rearTrack: number; height: number }) => Math.atan(rearTrack / (2 * height));

/**
 * r / (h − p(1 − r)) ≤ 1 / h comes down to p(1 − r) ≤ h(1 − r), so it holds where the pivot lies no
 * higher than the centre of mass, and turns round where it lies higher.
 */
test('with the pivot no higher than the centre of mass, the rigid box is never stricter', () => {
  holds(stances, (stance) => angle(stance) <= rigidBox(stance) + 1e-11);
});

test('with the pivot higher than the centre of mass, the rigid box is the stricter one', () => {
  expect(angle({ rearTrack: asSi(1.2), rearShare: 0.6, height: asSi(0.5), pivot: asSi(0.7) })).toBeGreaterThan(rigidBox({ rearTrack: 1.2, height: 0.5 }));
});

test('a higher centre of mass tips sooner, a wider track later', () => {
  holds(fc.record({ stance: stances, more: from(0.001, 0.5) }), ({ stance, more }) =>
    angle({ ...stance, height: asSi(stance.height + more) }) < angle(stance)
      && angle({ ...stance, rearTrack: asSi(stance.rearTrack + more) }) > angle(stance));
});

test('a centre of mass below the line from tyre to pivot is refused', () => {
  expect(isRefusal(tipAngle({ rearTrack: asSi(1.2), rearShare: 0.4, height: asSi(0.3), pivot: asSi(0.6) }))).toBe(true);
});

test('a slope in percent is steeper the greater the percent, and never upright', () => {
  holds(fc.tuple(from(0, 500), from(0.1, 500)), ([percent, more]) =>
    slopeFromPercent(percent) < slopeFromPercent(percent + more) && slopeFromPercent(percent + more) < Math.PI / 2);
});

test('a bale of the size reckoned weighs what was said', () => {
  holds(fc.tuple(from(50, 1500), from(80, 300)), ([mass, density]) => {
    const size = value(baleSize(mass, density));
    return Math.abs((Math.PI / 4) * size * size * size * density - mass) <= 1e-9 * mass;
  });
});

const swaths = fc.record({ speed: from(0.3, 4), width: from(0.5, 4), overlap: from(0, 0.3), efficiency: from(0.4, 1) });
test('an area twice as large takes twice as long, a deck twice as wide half as long', () => {
  holds(fc.tuple(swaths, from(100, 100_000)), ([swath, area]) => {
    const hours = (width: number, acres: number) => value(mowingHours(asSi(acres), asSi(value(mowingRate({ ...swath, width: asSi(width) }))), 1.1));
    return isAbout(hours(swath.width, 2 * area), 2 * hours(swath.width, area)) && isAbout(2 * hours(2 * swath.width, area), hours(swath.width, area));
  });
});

test('power never rises with altitude, and never falls below nothing', () => {
  const loss = { perStep: 0.03, step: asSi(304.8), free: asSi(1500) };
  holds(fc.tuple(from(5000, 50_000), from(0, 20_000), from(0, 5000)), ([rated, altitude, more]) => {
    const here = value(powerAtAltitude(rated, altitude, loss)), higher = value(powerAtAltitude(rated, asSi(altitude + more), loss));
    return here <= rated && higher <= here && higher >= 0;
  });
});

test('a tractor never brings more with age or with hours, nor less than nothing', () => {
  const coefficients = [0.981, 0.093, 0.0058] as const;
  holds(fc.tuple(from(0, 200), from(0, 3000), from(0, 20)), ([age, hours, more]) => {
    const now = value(remainingValue(age, hours, coefficients));
    return now >= 0 && now <= 1 && value(remainingValue(age + more, hours, coefficients)) <= now && value(remainingValue(age, hours + more, coefficients)) <= now;
  });
});

test.each([1, 2, 3, 6])('the weights of %i ranks fall from rank to rank and add up to one', (ranks) => {
  const weights = rankOrderCentroid(ranks);
  expect(weights).toHaveLength(ranks);
  expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
  expect(weights.filter((weight, index) => index > 0 && weight >= weights[index - 1]!)).toEqual([]);
});
