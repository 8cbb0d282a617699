import type { DemandOf } from '../../needs/need.ts';
import { noiseTime } from '../../trade/formulas/noise.ts';
import { dailyExposure, timeToExposure } from '../../trade/formulas/vibration.ts';
import { cite, isRefusal } from '../../trade/working.ts';
import type { Quantity } from '../../units/quantity.ts';
import { failed, met, unknown, wantsAtLeast, wantsAtMost } from '../verdict.ts';
import type { Judge } from './judging.ts';

/**
 * A ROPS that is missing, altered or uncertified rules out until it is mended. Of a unit its own is judged,
 * for what its machine was built with may be long gone: what nobody says of it is unknown.
 */
export const judgeRops: Judge<DemandOf<'rops'>> = (_need, { machine, unit }) => {
  const { kind, certified } = (unit ? unit.rops : machine.rops) ?? {};
  if (unit?.rops?.altered === true || kind === 'none' || certified === false) return failed();
  if (kind === undefined || kind === 'unknown') return unknown('rops.kind');
  return certified === undefined ? unknown('rops.certified') : met();
};

export const judgeSeatBelt: Judge<DemandOf<'seat-belt'>> = (_need, { unit }) => {
  if (!unit) return met();
  if (unit.seatBelt === undefined) return unknown('units.seatBelt');
  return unit.seatBelt ? met() : failed();
};

/** A recall that is open is done before anyone drives. */
export const judgeRecall: Judge<DemandOf<'recall'>> = (_need, { unit }) => (unit?.recallOpen === true ? failed() : met());

/** A unit whose exhaust equipment was defeated is refused. */
export const judgeExhaustIntact: Judge<DemandOf<'exhaust.intact'>> = (_need, { unit }) =>
  unit?.exhaustIntact === false ? failed() : met();

/** How long a day may be at the driver's ear before something is to be done, and how long the law of employers allows. */
export const judgeNoise: Judge<DemandOf<'noise'>> = ({ day }, { machine: { noiseAtEarDecibels: level } }, { book }) => {
  if (level === undefined) return unknown('noiseAtEarDecibels');
  const time = cite(noiseTime(level, book.value('noise.action'), book.value('noise.exchange')), { action: 'noise.action', exchange: 'noise.exchange' });
  const lawful = cite(noiseTime(level, book.value('noise.osha-limit'), book.value('noise.osha-exchange')), { action: 'noise.osha-limit', exchange: 'noise.osha-exchange' });
  return wantsAtLeast(time.result.value, day, { unit: 's', workings: [time, lawful] });
};

/** A day in the seat against the value from which something is to be done, and how long until that and the limit. */
export const judgeVibration: Judge<DemandOf<'vibration'>> = ({ day }, { machine: { seatVibration } }, { book }) => {
  if (seatVibration === undefined) return unknown('seatVibration');
  const exposure = dailyExposure(seatVibration, day);
  const until = (limit: 'vibration.action' | 'vibration.limit') => {
    const time = timeToExposure(seatVibration, book.value(limit) as Quantity<'acceleration'>);
    return isRefusal(time) ? [] : [cite(time, { limit })];
  };
  return wantsAtMost(exposure.result.value, book.value('vibration.action'), {
    unit: 'm/s2', workings: [exposure, ...until('vibration.action'), ...until('vibration.limit')],
  });
};

/** Whoever wants the dealer to look after it needs a make he looks after. */
export const judgeServiced: Judge<DemandOf<'serviced'>> = (_need, { machine: { make } }, { dealer: { makesServiced } }) =>
  (makesServiced === undefined ? unknown('dealer.makesServiced') : makesServiced.includes(make) ? met() : failed());
