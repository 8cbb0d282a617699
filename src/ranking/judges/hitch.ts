import type { DemandOf } from '../../needs/need.ts';
import { frontAxleLoad } from '../../trade/formulas/axle-loads.ts';
import { hitchLiftAt } from '../../trade/formulas/hitch-lift-at.ts';
import { totalMass } from '../../trade/formulas/total-mass.ts';
import { atLeast, atMost } from '../../units/compare.ts';
import type { Quantity } from '../../units/quantity.ts';
import { absent, failed, met, unknown, wantsAtLeast } from '../verdict.ts';
import type { Judge } from './judging.ts';

type Length = Quantity<'length'>;
type Mass = Quantity<'mass'>;

export const judgeHitchLift: Judge<DemandOf<'hitch.lift'>> = ({ load, behind }, { machine }, { book }) => {
  const rated = machine.hitch?.lift610;
  if (rated === undefined) return unknown('hitch.lift610');
  const working = hitchLiftAt(rated, book.value('hitch.rated-behind') as Length, behind, book.value('hitch.link-length') as Length);
  return wantsAtLeast(working.result.value, load, { unit: 'kg', workings: [working] });
};

/** The front axle keeps enough load to steer; what is missing is front weights, to be asked for. */
export const judgeFrontAxle: Judge<DemandOf<'hitch.front-axle'>> = (need, build, { book }) => {
  const { machine, loader } = build;
  const { mass, frontAxleShare, wheelbase } = machine;
  if (mass === undefined || frontAxleShare === undefined || wheelbase === undefined) {
    return unknown(...absent({ mass, frontAxleShare, wheelbase }));
  }
  const frame = loader?.have === 'has' ? (loader.part.mass ?? 0) : 0;
  const working = frontAxleLoad(
    (mass * frontAxleShare) as Mass,
    { mass: frame as Mass, ahead: 0 as Length },
    { mass: need.load, behind: (book.value('hitch.ball-ends-behind-axle') + need.behind) as Length },
    wheelbase,
  );
  const wants = book.value('hitch.front-share') * mass;
  const has = working.result.value;
  const figures = { has, wants, unit: 'kg', bound: 'at-least', workings: [working] } as const;
  if (atLeast(has, wants)) return met(figures);
  const weights = (wants - has) as Mass;
  if (machine.grossMass === undefined) return unknown('grossMass');
  const total = totalMass({ machine: mass, loader: frame as Mass, load: need.load, ballast: weights }, 'mass.aboard');
  if (!atMost(total.result.value, machine.grossMass)) return failed({ ...figures, workings: [working, total] });
  return met({ ...figures, additions: [{ what: 'front-ballast', mass: weights, for: [need.id] }] });
};
