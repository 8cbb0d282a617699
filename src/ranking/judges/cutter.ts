import type { DemandOf } from '../../needs/need.ts';
import { failed, unknown } from '../verdict.ts';
import type { Judge } from './judging.ts';
import { judgeTool } from './tool.ts';

export const judgeCutter: Judge<DemandOf<'rotary-cutter'>> = (need, build, world) => {
  if (build.cutter) return judgeTool(build.cutter, build, world, `cut.power.${need.growth}`);
  const { rearPto } = build.machine;
  if (rearPto === undefined) return unknown('rearPto');
  const listed = [...world.implements, ...world.owned].some(({ kind }) => kind === 'rotary-cutter');
  return rearPto.speeds.length === 0 || listed ? failed() : unknown('implements.rotary-cutter');
};
