import type { DemandOf } from '../../needs/need.ts';
import { groundPressure } from '../../trade/formulas/ground-pressure.ts';
import { cite } from '../../trade/working.ts';
import type { Quantity } from '../../units/quantity.ts';
import { tyresOf } from '../candidate.ts';
import { failed, met, unknown, wantsAtMost } from '../verdict.ts';
import type { Judge } from './judging.ts';

/** Lugs mark a lawn, and smooth turf tyres slip where it is wet. */
export const judgeTyres: Judge<DemandOf<'tyres'>> = ({ ground, lawn }, build) => {
  const wet = ground === 'soft' || ground === 'wet';
  const suits = (type: string) => !((wet && type === 'turf') || (lawn && type === 'agricultural'));
  const tyres = tyresOf(build);
  if (tyres.length === 0) return unknown(build.unit?.tyres?.type === undefined ? 'tyres' : 'units.tyres.type');
  const suiting = tyres.filter(({ type }) => suits(type)).length;
  if (suiting === 0) return failed();
  return build.unit && suiting < tyres.length ? unknown('units.tyres.type') : met();
};

/** The tyre that presses least of those it may stand on, against what such ground bears. */
export const judgeGroundPressure: Judge<DemandOf<'ground-pressure'>> = ({ bears }, build, { book }) => {
  const inflations = tyresOf(build).flatMap(({ inflation }) => inflation ?? []);
  if (inflations.length === 0) return unknown('tyres.inflation');
  const working = cite(
    groundPressure(Math.min(...inflations) as Quantity<'pressure'>, book.value('tyre.stiffness') as Quantity<'pressure'>), { stiffness: 'tyre.stiffness' },
  );
  return wantsAtMost(working.result.value, book.value(`ground.pressure.${bears}`), { unit: 'Pa', workings: [working] });
};
