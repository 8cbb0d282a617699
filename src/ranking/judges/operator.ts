import type { DemandOf } from '../../needs/need.ts';
import { failed, met, unknown } from '../verdict.ts';
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
