import type { DemandOf } from '../../needs/need.ts';
import { tipAngle } from '../../trade/formulas/tip-angle.ts';
import { isRefusal } from '../../trade/working.ts';
import type { Quantity } from '../../units/quantity.ts';
import { absent, failed, met, unknown, wantsAtLeast, worst } from '../verdict.ts';
import { behindAxle } from './hitch-lift.ts';
import type { Judge } from './judging.ts';
import { lifts, loaded } from './loader.ts';

interface Mass {
  mass: number;
  height: number;
  /** Ahead of the rear axle, as a share of the wheelbase. */
  ahead: number;
}

const moment = (masses: readonly Mass[], by: 'height' | 'ahead') => masses.reduce((sum, each) => sum + each.mass * each[by], 0);

/**
 * The comparison on a slope, in the worst loading of the buyer's tasks on the move: bare, and with each
 * load carried low and the ballast that it asks for. The lesser angle, less the margin, against
 * the steepest ground.
 */
export const judgeTipAngle: Judge<DemandOf<'slope.tip-angle'>> = (need, build, world) => {
  const { book } = world;
  const { mass, frontAxleShare, centreOfMassHeight, rearTrack, frontPivotHeight, wheelbase } = build.machine;
  if (mass === undefined || frontAxleShare === undefined || !centreOfMassHeight || rearTrack === undefined || frontPivotHeight === undefined) {
    return unknown(...absent({ mass, frontAxleShare, centreOfMassHeight, rearTrack, frontPivotHeight }));
  }
  const height = centreOfMassHeight.value;
  const bare: Mass[] = [{ mass, height, ahead: frontAxleShare }];
  const loadings = [bare];
  for (const lift of need.lifts.filter((each) => lifts(each, build))) {
    const state = loaded(lift, build, world);
    if (!('ballast' in state)) return unknown(...state);
    const behind = behindAxle(state.ballastBehind, world);
    loadings.push([
      ...bare,
      { mass: state.frame, height, ahead: 1 },
      { mass: state.front - state.frame, height: need.carried, ahead: 1 + (state.ahead * state.front) / (state.front - state.frame) / wheelbase! },
      { mass: state.ballast, height: need.carried, ahead: -behind / wheelbase! },
    ]);
  }
  return worst(loadings.map((masses) => {
    const total = masses.reduce((sum, each) => sum + each.mass, 0);
    const working = tipAngle({
      rearTrack,
      rearShare: 1 - moment(masses, 'ahead') / total,
      height: (moment(masses, 'height') / total) as Quantity<'length'>,
      pivot: frontPivotHeight,
    });
    if (isRefusal(working)) return unknown('centreOfMassHeight');
    return wantsAtLeast(working.result.value * book.value('slope.margin'), need.slope, { unit: 'rad', workings: [working] });
  }));
};

export const judgeDrivenWheels: Judge<DemandOf<'slope.driven-wheels'>> = (_need, { machine }) => {
  if (machine.drivenWheels === undefined) return unknown('drivenWheels');
  return machine.drivenWheels === 2 ? failed() : met();
};
