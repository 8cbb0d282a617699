import type { DemandOf } from '../../needs/need.ts';
import { greatestTowed, rearOverturnPull, towingPull } from '../../trade/formulas/towing.ts';
import { cite } from '../../trade/working.ts';
import type { Quantity } from '../../units/quantity.ts';
import { absent, failed, met, unknown, wantsAtLeast, wantsAtMost, worst } from '../verdict.ts';
import { pullOn } from './implement.ts';
import type { Judge } from './judging.ts';

/** Anything towed hangs from the drawbar: higher up it pulls the tractor over backwards. */
export const judgeDrawbar: Judge<DemandOf<'drawbar'>> = (_need, { machine: { drawbar } }) =>
  (drawbar === undefined ? unknown('drawbar') : drawbar ? met() : failed());

/** The tractor must hold and stop what it tows: its maker's limit, and a ratio of the masses. */
export const judgeTowMass: Judge<DemandOf<'tow.mass'>> = ({ towed, braked }, { machine: { mass, towedMass } }, { book }) => {
  if (mass === undefined) return unknown('mass');
  const ratio = braked ? 'tow.ratio.braked' : 'tow.ratio.unbraked';
  const most = cite(greatestTowed(mass, book.value(ratio)), { ratio });
  const byRatio = wantsAtLeast(most.result.value, towed, { unit: 'kg', workings: [most] });
  if (byRatio.outcome === 'failed') return byRatio;
  return towedMass === undefined ? unknown('towedMass') : worst([byRatio, wantsAtLeast(towedMass, towed, { unit: 'kg', workings: [] })]);
};

/** Up the steepest ground the wheels must grip, and the front axle must stay down with the pull at the drawbar. */
export const judgeTowPull: Judge<DemandOf<'tow.pull'>> = ({ towed, grade, ground }, build, world) => {
  const { book } = world;
  const { mass, frontAxleShare, wheelbase, drivenWheels } = build.machine;
  if (mass === undefined || frontAxleShare === undefined || wheelbase === undefined || drivenWheels === undefined) {
    return unknown(...absent({ mass, frontAxleShare, wheelbase, drivenWheels }));
  }
  const gravity = book.value('gravity.standard') as Quantity<'acceleration'>;
  const wanted = cite(
    towingPull({ towed, tractor: mass, rolling: book.value('tow.rolling'), grade, gravity }), { rolling: 'tow.rolling', gravity: 'gravity.standard' },
  );
  const grip = pullOn(ground, build, world)!;
  const lifts = cite(
    rearOverturnPull((mass * frontAxleShare) as Quantity<'mass'>, wheelbase, book.value('tow.drawbar-height') as Quantity<'length'>, gravity),
    { height: 'tow.drawbar-height', gravity: 'gravity.standard' },
  );
  const pull = wanted.result.value;
  return worst([
    wantsAtMost(pull, grip.result.value, { unit: 'N', workings: [wanted, grip] }),
    wantsAtMost(pull, lifts.result.value * book.value('tow.pull-margin'), { unit: 'N', workings: [wanted, lifts] }),
  ]);
};
