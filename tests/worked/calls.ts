import type { FormulaId } from '../../src/trade/book.ts';
import { areaOfStrip } from '../../src/trade/formulas/area-of-strip.ts';
import { frontAxleLoad, rearBallast } from '../../src/trade/formulas/axle-loads.ts';
import { baleSize } from '../../src/trade/formulas/bale-size.ts';
import { headroom, parking, passage } from '../../src/trade/formulas/clearance.ts';
import { greatestLoad } from '../../src/trade/formulas/greatest-load.ts';
import { hitchLiftAt } from '../../src/trade/formulas/hitch-lift-at.ts';
import { armFromOneRating, armFromTwoRatings, liftAt, type LoaderArm } from '../../src/trade/formulas/loader-arm.ts';
import { mowingHours } from '../../src/trade/formulas/mowing-hours.ts';
import { mowingRate } from '../../src/trade/formulas/mowing-rate.ts';
import { powerAtAltitude, ptoPowerForWidth } from '../../src/trade/formulas/pto-power.ts';
import { rankOrderCentroid } from '../../src/trade/formulas/rank-order-centroid.ts';
import { remainingValue } from '../../src/trade/formulas/remaining-value.ts';
import { slopeFromPercent } from '../../src/trade/formulas/slope-from-percent.ts';
import { tipAngle } from '../../src/trade/formulas/tip-angle.ts';
import { totalMass } from '../../src/trade/formulas/total-mass.ts';
import type { Working } from '../../src/trade/working.ts';
import { asSi } from '../support/quantities.ts';
import { moneyAndOperator } from './calls/money-and-operator.ts';
import { workAndLoads } from './calls/work-and-loads.ts';
import { known, type Given } from './given.ts';

const lever = (g: Given): LoaderArm => known(armFromTwoRatings({ load: g.atPins, ahead: 0 as typeof g.by }, { load: g.ahead, ahead: g.by }));

/** How each formula of the rule book is called with the inputs of a worked example. */
export const calls: Record<FormulaId | 'units', (given: Given) => Working | number> = {
  ...workAndLoads,
  ...moneyAndOperator,
  'mow.rate': (g) => mowingRate({ ...g, overlap: g.overlap ?? 0 }),
  'mow.hours': (g) => mowingHours(g.area, g.rate, g.labour),
  'pto.power-for-width': (g) => ptoPowerForWidth(g.width, g.perWidth),
  'pto.at-altitude': (g) => powerAtAltitude(g.rated, g.altitude, g),
  'loader.two-ratings': (g) => lever(g).working,
  'loader.lift-at': (g) => liftAt(lever(g), g.distance),
  'loader.one-rating': (g) => liftAt(armFromOneRating({ load: g.rating, ahead: g.ratedAt }, g.share, g.by), g.distance),
  'loader.greatest-load': (g) => greatestLoad(lever(g), g),
  'ballast.rear': (g) => rearBallast(g, g.behind, g.share),
  'axle.front-load': (g) =>
    frontAxleLoad(g.bareFront, { mass: g.front, ahead: g.ahead }, { mass: g.back, behind: g.behind }, g.wheelbase),
  'hitch.lift-at': (g) => hitchLiftAt(g.rated, g.ratedAt, g.distance, g.link),
  'slope.tip-angle': (g) => known(tipAngle(g)),
  'slope.from-percent': (g) => slopeFromPercent(g.percent),
  'bale.size': (g) => baleSize(g.mass, g.density),
  'area.strip': (g) => areaOfStrip(g.length, g.width),
  'place.passage': (g) => passage(g.width, g.room),
  'place.headroom': (g) => headroom(g.height, g.room),
  'place.length': (g) => parking(g.length, g.room),
  'mass.aboard': (g) => totalMass({ ...g }, 'mass.aboard'),
  'haul.behind': (g) => totalMass({ ...g }, 'haul.behind'),
  'resale.remaining': (g) => remainingValue(g.age, g.hoursPerYear, [g.c1, g.c2, g.c3]),
  'weights.rank-order-centroid': (g) => asSi(rankOrderCentroid(g.ranks)[g.rank - 1]!),
  units: (g) => g.amount,
};
