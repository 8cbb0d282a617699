import type { DemandOf } from '../../needs/need.ts';
import { failed, moot, unknown } from '../verdict.ts';
import { hoursWith } from './implement.ts';
import type { Judge } from './judging.ts';
import { judgeTool } from './tool.ts';

export const judgeCutter: Judge<DemandOf<'rotary-cutter'>> = (need, build, world) => {
  const cutter = build.tools?.['cut-rough'];
  if (cutter) return judgeTool(cutter, build, world, need.growth);
  const { rearPto } = build.machine;
  if (rearPto === undefined) return unknown('rearPto');
  const listed = [...world.implements, ...world.owned].some(({ kind }) => kind === 'rotary-cutter' || kind === 'flail-mower');
  return rearPto.speeds.length === 0 || listed ? failed() : unknown('implements.rotary-cutter');
};

/** Hours to cut the rough ground once, with the cutter chosen. Told, not weighed: nobody asked for a limit. */
export const judgeCutterHours: Judge<DemandOf<'rotary-cutter.hours'>> = ({ area }, { tools }, world) => {
  const cutter = tools?.['cut-rough'];
  return cutter ? hoursWith(cutter, area, world) : moot();
};
