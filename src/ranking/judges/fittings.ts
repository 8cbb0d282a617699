import type { Machine } from '../../catalogue/catalogue.ts';
import type { ComfortWish, DemandOf } from '../../needs/need.ts';
import type { Addition } from '../addition.ts';
import type { Build } from '../build.ts';
import { have, type World } from '../candidate.ts';
import { failed, met, unknown, worst, type Spec, type Verdict } from '../verdict.ts';
import type { Judge } from './judging.ts';

export const judgeCab: Judge<DemandOf<'cab'>> = (need, { cab, machine: { cabs } }) => {
  if (!cab) return cabs === undefined ? unknown('cabs') : failed();
  const { heat, airConditioning } = cab.part;
  if ((need.heat && !heat) || (need.airConditioning && !airConditioning)) return failed();
  return cab.have === 'unknown' ? unknown('cabs') : met();
};

export const judgeTransmission: Judge<DemandOf<'transmission'>> = (need, { machine: { transmissions }, unit }) => {
  if (unit?.transmission) return need.kinds.includes(unit.transmission) ? met() : failed();
  if (!transmissions) return unknown('transmissions');
  const offered = transmissions.filter(({ availability }) => availability !== 'none');
  const wanted = offered.filter(({ kind }) => need.kinds.includes(kind));
  if (wanted.length === 0) return failed();
  if (unit && wanted.length < offered.length) return unknown('units.transmission');
  return wanted.every(({ availability }) => availability === 'unknown') ? unknown('transmissions') : met();
};

const addition = (wish: ComfortWish, part: { price?: { value: number } | undefined; labourHours?: number | undefined }, need: string): Addition => ({
  what: 'feature', id: wish, for: [need],
  ...(part.price && { price: part.price.value }),
  ...(part.labourHours !== undefined && { labourHours: part.labourHours }),
});

const feature = (name: 'suspensionSeat' | 'tiltWheel' | 'cruise', wish: ComfortWish) => (build: Build, { asOfYear }: World, need: string): Verdict => {
  const part = build.machine[name];
  const state = have(build, name, part, asOfYear);
  if (state === 'unknown') return unknown(name);
  if (state === 'never') return failed();
  return state === 'has' || !part ? met() : met({ additions: [addition(wish, part, need)] });
};

const known = (value: Machine[keyof Machine] | string | undefined, spec: Spec, wanted: (value: string) => boolean) =>
  value === undefined ? unknown(spec) : wanted(String(value)) ? met() : failed();

/** How each wish that is a plain fitting is judged. */
const wishes: Record<Exclude<ComfortWish, 'cab' | 'drive'>, (build: Build, world: World, need: string) => Verdict> = {
  smoothSeat: feature('suspensionSeat', 'smoothSeat'),
  tiltWheel: feature('tiltWheel', 'tiltWheel'),
  cruise: feature('cruise', 'cruise'),
  loaderOff: ({ loader, machine }) =>
    loader ? known(loader.part.detaching, 'loaders.detaching', (way) => way === 'quick') : machine.loaders ? failed() : unknown('loaders'),
  levelLift: (build, { asOfYear }) => {
    const { loader } = build;
    if (!loader) return build.machine.loaders ? failed() : unknown('loaders');
    const state = have(build, 'selfLevelling', loader.part.selfLevelling && { availability: loader.part.selfLevelling }, asOfYear);
    return state === 'unknown' ? unknown('loaders.selfLevelling') : state === 'never' ? failed() : met();
  },
  mowerLiftAlone: ({ mower }) =>
    mower?.kind === 'belly' ? known(mower.deck.part.lift, 'decks.lift', (way) => way === 'independent') : failed(),
  exhaust: ({ machine }) => known(machine.exhaust, 'exhaust', (way) => way === 'none' || way === 'catalyst'),
};

export const judgeFitting: Judge<DemandOf<'fitting'>> = (need, build, world) =>
  need.wish === 'cab' || need.wish === 'drive' ? worst([]) : wishes[need.wish](build, world, need.id);
