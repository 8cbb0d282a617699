import type { DemandOf, Ground } from '../../needs/need.ts';
import { draftByArea, draftByWidth, draftOfTool } from '../../trade/formulas/draft.ts';
import { drawbarFromPto, drawbarPower, powerInHand } from '../../trade/formulas/drawbar-power.ts';
import { mowingHours } from '../../trade/formulas/mowing-hours.ts';
import { mowingRate } from '../../trade/formulas/mowing-rate.ts';
import { tractionPull } from '../../trade/formulas/traction.ts';
import { cite, isRefusal, type Working } from '../../trade/working.ts';
import { atLeast } from '../../units/compare.ts';
import type { Quantity } from '../../units/quantity.ts';
import { hungFor, type Build, type Tool } from '../build.ts';
import type { World } from '../candidate.ts';
import { absent, failed, met, moot, unknown, wantsAtLeast, worst, type Verdict } from '../verdict.ts';
import { traitsOf, type Pace } from './implement-kinds.ts';
import type { Judge } from './judging.ts';
import { judgeTool, powerLeft } from './tool.ts';

type Length = Quantity<'length'>;

export const judgeImplement: Judge<DemandOf<'implement'>> = (need, build, world) => {
  const tool = hungFor(need.task!, build);
  if (!tool) {
    const listed = [...world.implements, ...world.owned].some(({ kind }) => kind !== undefined && need.kinds.includes(kind));
    return listed ? failed() : unknown('implements.listed');
  }
  const { capacity } = tool.implement;
  if (need.capacity === undefined) return judgeTool(tool, build, world);
  return worst([
    judgeTool(tool, build, world),
    capacity === undefined ? unknown('implements.capacity') : wantsAtLeast(capacity, need.capacity, { unit: 'm', workings: [] }),
  ]);
};

/** Power at the PTO for something towed that isn't in the package. */
export const judgePtoPower: Judge<DemandOf<'pto.power'>> = ({ power }, { machine }, world) => {
  if (machine.rearPto === undefined) return unknown('rearPto');
  if (machine.rearPto.speeds.length === 0) return failed();
  const left = powerLeft(machine, world);
  return left ? { ...wantsAtLeast(left.value, world.book.value(power), { unit: 'W', workings: left.workings }), ...(left.estimated && { estimated: left.estimated }) } : unknown('engine.ptoPower');
};

/** Time for one pass over an area, or as many as the job takes, at the pace of the implement. */
export function hoursWith({ implement }: Tool, area: Quantity<'area'>, { book }: World, pace: Pace | undefined = traitsOf[implement.kind!].pace): Verdict {
  if (!pace) return moot();
  const width = implement.width ?? (pace.swath && (book.value(pace.swath) as Length));
  if (width === undefined) return unknown('implements.width');
  const rate = cite(mowingRate({
    speed: book.value(pace.speed) as Quantity<'speed'>, width, overlap: book.value('mow.overlap'), efficiency: book.value(pace.efficiency),
  }), { speed: pace.speed, overlap: 'mow.overlap', efficiency: pace.efficiency, ...(implement.width === undefined && pace.swath && { width: pace.swath }) });
  const over = (area * (pace.passes ? book.value(pace.passes) : 1)) as Quantity<'area'>;
  const hours = cite(mowingHours(over, rate.result.value as Quantity<'areaRate'>, book.value('mow.labour')), { labour: 'mow.labour' });
  return met({ has: hours.result.value, unit: 's', bound: 'at-most', workings: [rate, hours] });
}

/** Told, not weighed: nobody asked for a limit. */
export const judgeImplementHours: Judge<DemandOf<'implement.hours'>> = ({ task, area }, build, world) => {
  const tool = hungFor(task!, build);
  if (!tool) return moot();
  const { pace, snowPace } = traitsOf[tool.implement.kind!];
  return hoursWith(tool, area, world, task === 'clear-snow' ? (snowPace ?? pace) : pace);
};

/** What the driven wheels can pull on such ground: the whole machine's weight where all four drive. */
export function pullOn(ground: Ground, { machine: { mass, frontAxleShare, drivenWheels } }: Build, { book }: World): Working | undefined {
  if (mass === undefined || drivenWheels === undefined || (drivenWheels === 2 && frontAxleShare === undefined)) return undefined;
  const driven = (drivenWheels === 2 ? mass * (1 - frontAxleShare!) : mass) as Quantity<'mass'>;
  return cite(
    tractionPull(driven, book.value(`traction.${ground}`), book.value('gravity.standard') as Quantity<'acceleration'>),
    { coefficient: `traction.${ground}`, gravity: 'gravity.standard' },
  );
}

/** Draft of what is pulled through or over the ground: a disk by depth and soil, a plough by its section, others by width. */
function draftOf({ implement }: Tool, { soil }: DemandOf<'implement.pull'>, { book }: World): { draft: Working; speed: Quantity<'speed'> } | undefined {
  const { draft, pace } = traitsOf[implement.kind!];
  const { width } = implement;
  if (draft === undefined || width === undefined) return undefined;
  const speed = book.value(pace?.speed ?? 'field.speed') as Quantity<'speed'>;
  if (draft === 'plough') {
    const working = draftByArea(width, book.value('plough.depth') as Length, book.value('plough.unit-draft') as Quantity<'pressure'>);
    return { draft: cite(working, { depth: 'plough.depth', unitDraft: 'plough.unit-draft' }), speed };
  }
  if (draft !== 'disk') {
    return { draft: cite(draftByWidth(width, book.value(draft) as Quantity<'forcePerLength'>), { draftPerWidth: draft }), speed };
  }
  const tool = { a: book.value('disk.a'), b: book.value('disk.b'), c: book.value('disk.c') };
  const working = draftOfTool(tool, book.value(`soil.${soil}`), speed, width, book.value('field.depth') as Length);
  return isRefusal(working) ? undefined : {
    draft: cite(working, { a: 'disk.a', b: 'disk.b', c: 'disk.c', soil: `soil.${soil}`, speed: 'field.speed', depth: 'field.depth' }), speed,
  };
}

/** Grip first, then power: the wheels hold the draft, and the engine keeps the pace. */
export const judgePull: Judge<DemandOf<'implement.pull'>> = (need, build, world) => {
  const tool = hungFor(need.task!, build);
  if (!tool) return moot();
  const { book } = world;
  const wanted = draftOf(tool, need, world);
  if (!wanted) return unknown('implements.width');
  const pull = pullOn(need.ground, build, world);
  const { mass, frontAxleShare, drivenWheels } = build.machine;
  if (!pull) return unknown(...absent({ mass, drivenWheels, frontAxleShare }));
  const grip = wantsAtLeast(pull.result.value, wanted.draft.result.value, { unit: 'N', workings: [wanted.draft, pull] });
  const pto = powerLeft(build.machine, world);
  if (!pto) return grip.outcome === 'failed' ? grip : unknown('engine.ptoPower');
  const share = drivenWheels === 2 ? `drawbar.two-wheel.${need.ground}` as const : `drawbar.four-wheel.${need.ground}` as const;
  const left = cite(drawbarFromPto(pto.value as Quantity<'power'>, book.value(share)), { share });
  const used = drawbarPower(wanted.draft.result.value as Quantity<'force'>, wanted.speed);
  const asked = cite(powerInHand(used.result.value as Quantity<'power'>, book.value('power.in-hand')), { share: 'power.in-hand' });
  const power = wantsAtLeast(left.result.value, asked.result.value, { unit: 'W', workings: [...pto.workings, wanted.draft, used, asked, left] });
  return grip.outcome === 'failed' || atLeast(power.has! / power.wants!, grip.has! / grip.wants!) ? grip : power;
};
