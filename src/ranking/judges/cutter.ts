import type { DemandOf } from '../../needs/need.ts';
import { mowingHours } from '../../trade/formulas/mowing-hours.ts';
import { mowingRate } from '../../trade/formulas/mowing-rate.ts';
import type { Quantity } from '../../units/quantity.ts';
import { failed, met, moot, unknown } from '../verdict.ts';
import type { Judge } from './judging.ts';
import { judgeTool } from './tool.ts';

export const judgeCutter: Judge<DemandOf<'rotary-cutter'>> = (need, build, world) => {
  if (build.cutter) return judgeTool(build.cutter, build, world, `cut.power.${need.growth}`);
  const { rearPto } = build.machine;
  if (rearPto === undefined) return unknown('rearPto');
  const listed = [...world.implements, ...world.owned].some(({ kind }) => kind === 'rotary-cutter');
  return rearPto.speeds.length === 0 || listed ? failed() : unknown('implements.rotary-cutter');
};

/** Hours to cut the rough ground once, with the cutter chosen. Told, not weighed: nobody asked for a limit. */
export const judgeCutterHours: Judge<DemandOf<'rotary-cutter.hours'>> = ({ area }, { cutter }, { book }) => {
  if (!cutter) return moot();
  const { width } = cutter.implement;
  if (width === undefined) return unknown('implements.width');
  const rate = mowingRate({
    speed: book.value('cut.speed') as Quantity<'speed'>, width,
    overlap: book.value('mow.overlap'), efficiency: book.value('cut.efficiency'),
  });
  const hours = mowingHours(area, rate.result.value as Quantity<'areaRate'>, book.value('mow.labour'));
  return met({ has: hours.result.value, unit: 's', bound: 'at-most', workings: [rate, hours] });
};
