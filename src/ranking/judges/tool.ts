import type { Implement, Machine } from '../../catalogue/catalogue.ts';
import { ptoFromFlywheel } from '../../trade/formulas/drawbar-power.ts';
import { powerAtAltitude, ptoPowerForWidth } from '../../trade/formulas/pto-power.ts';
import type { FigureId } from '../../trade/book.ts';
import { cite, type Working } from '../../trade/working.ts';
import { atLeast } from '../../units/compare.ts';
import type { Quantity } from '../../units/quantity.ts';
import type { Growth } from '../../needs/need.ts';
import type { Build, Tool } from '../build.ts';
import { tyresOf, type Candidate, type World } from '../candidate.ts';
import { failed, met, unknown, wantsAtLeast, worst, type Spec, type Verdict } from '../verdict.ts';
import { hitchLift } from './hitch-lift.ts';
import { traitsOf } from './implement-kinds.ts';

interface PowerLeft {
  value: number;
  workings: Working[];
  estimated?: Spec[];
}

/**
 * PTO power a machine has left where the buyer works. Where only the engine's is known, a careful share of it. An engine of which nobody said how it breathes is
 * taken for one without a turbocharger, which loses more.
 */
export function powerLeft({ engine }: Machine, { book, altitude }: World): PowerLeft | undefined {
  if (engine?.power === undefined && engine?.ptoPower === undefined) return undefined;
  const guessed = engine.ptoPower === undefined
    ? cite(ptoFromFlywheel(engine.power!, book.value('pto.from-flywheel')), { share: 'pto.from-flywheel' }) : undefined;
  const rated = (engine.ptoPower ?? guessed!.result.value) as Quantity<'power'>;
  const said = guessed ? { workings: [guessed], estimated: ['engine.ptoPower' as const] } : { workings: [] };
  if (altitude === undefined) return { value: rated, ...said };
  const turbo = engine.aspiration === 'turbo';
  const loss = turbo ? 'pto.altitude.turbo' : 'pto.altitude.natural';
  const working = cite(powerAtAltitude(rated, altitude, {
    perStep: book.value(loss),
    step: book.value('pto.altitude.step') as Quantity<'length'>,
    free: (turbo ? book.value('pto.altitude.turbo-free') : 0) as Quantity<'length'>,
  }), { loss, step: 'pto.altitude.step', ...(turbo && { free: 'pto.altitude.turbo-free' }) });
  return { ...said, value: working.result.value, workings: [...said.workings, working] };
}

/** What an implement weighs at work: with its hopper full where it has one. */
export const massAtWork = ({ kind, mass, fullMass }: Partial<Implement>): Quantity<'mass'> | undefined =>
  (kind !== undefined && traitsOf[kind].hopper ? fullMass : mass);

/** It covers the tyre tracks, on the tyres a unit stands on or on some a machine can have. */
function judgeCover(width: number, candidate: Candidate): Verdict {
  const tracks = tyresOf(candidate).map(({ widthOverRear }) => widthOverRear);
  if (tracks.length === 0) return unknown('tyres');
  const covered = tracks.filter((track) => atLeast(width, track)).length;
  if (covered > 0 && covered < tracks.length && candidate.unit) return unknown('units.tyres.type');
  return wantsAtLeast(width, covered > 0 ? Math.min(...tracks) : Math.max(...tracks), { unit: 'm', workings: [] });
}

/**
 * Power at the PTO. What an implement's own maker asks counts; where nobody gave it, the rule of thumb. In
 * brush the greater of both, for a maker's least is for grass.
 */
function judgePower(implement: Partial<Implement>, machine: Machine, world: World, growth: Growth | undefined): Verdict[] {
  const { kind, width, capacity, ptoPower, ptoSpeed } = implement;
  const { power } = traitsOf[kind!];
  if (!power && ptoPower === undefined) return [];
  if (machine.rearPto === undefined) return [unknown('rearPto')];
  const { speeds } = machine.rearPto;
  if (speeds.length === 0 || (ptoSpeed !== undefined && !speeds.some((speed) => atLeast(speed, ptoSpeed) && atLeast(ptoSpeed, speed)))) return [failed()];
  const available = powerLeft(machine, world);
  if (available === undefined) return [unknown('engine.ptoPower')];
  const { book } = world;
  const rule: FigureId | undefined = power && (kind === 'rotary-cutter' && growth ? `cut.power.${growth}` : power.rule);
  const size = power?.by === 'capacity' ? capacity : width;
  const byRule = rule !== undefined && power?.by !== 'whole' && size !== undefined
    ? cite(ptoPowerForWidth(size, book.value(rule) as Quantity<'powerPerLength'>), { powerPerWidth: rule })
    : undefined;
  const thumb = byRule?.result.value ?? (rule !== undefined && power?.by === 'whole' ? book.value(rule) : undefined);
  const wanted = ptoPower === undefined ? thumb : growth === 'brush' ? Math.max(ptoPower, thumb ?? 0) : ptoPower;
  if (wanted === undefined) return [unknown(power?.by === 'capacity' ? 'implements.capacity' : 'implements.width')];
  const workings = [...available.workings, ...(byRule && wanted === thumb ? [byRule] : [])];
  return [{ ...wantsAtLeast(available.value, wanted, { unit: 'W', workings }), ...(available.estimated && { estimated: available.estimated }) }];
}

const categories = ['0', '1', '2', '3'] as const;

/** An implement's pins go into a hitch of its own category or, with bushings, of a larger one: never of a smaller. */
export function judgeCategory({ hitchCategory }: Partial<Implement>, { hitch }: Machine): Verdict {
  if (hitchCategory === undefined) return unknown('implements.hitchCategory');
  if (hitch?.category === undefined) return unknown('hitch.category');
  const own = hitch.category === '1-limited' ? '1' : hitch.category;
  return categories.indexOf(hitchCategory) <= categories.indexOf(own) ? met() : failed();
}

function judgeFlow({ hydraulicFlow }: Partial<Implement>, { hydraulics }: Machine): Verdict[] {
  if (hydraulicFlow === undefined) return [];
  return [hydraulics?.flow === undefined ? unknown('hydraulics.flow') : wantsAtLeast(hydraulics.flow, hydraulicFlow, { unit: 'm3/s', workings: [] })];
}

/**
 * An implement on hitch and rear PTO: it covers the tyre tracks where it works the ground, the PTO turns
 * it, the hitch takes and lifts it, the hydraulics feed it.
 */
export function judgeTool({ implement }: Tool, { machine, unit }: Build, world: World, growth?: Growth): Verdict {
  const { kind, width, centreDistance } = implement;
  const { covers } = traitsOf[kind!];
  const mass = massAtWork(implement);
  if (covers && width === undefined) return unknown('implements.width');
  if (mass === undefined) return unknown(traitsOf[kind!].hopper ? 'implements.fullMass' : 'implements.mass');
  const rated = machine.hitch?.lift610;
  const lift = rated === undefined ? undefined : hitchLift(rated, centreDistance, world);
  const verdicts = [
    ...(covers ? [judgeCover(width!, { machine, unit })] : []),
    ...judgePower(implement, machine, world, growth),
    lift ? wantsAtLeast(lift.result.value, mass, { unit: 'kg', workings: [lift] }) : unknown('hitch.lift610'),
    judgeCategory(implement, machine),
    ...judgeFlow(implement, machine),
  ];
  const verdict = { ...worst(verdicts), ...(centreDistance === undefined && { estimated: ['implements.centreDistance' as const] }) };
  // Where all is met, the power is what a buyer asks about.
  const power = verdict.outcome === 'met' ? verdicts.find(({ unit: of }) => of === 'W') : undefined;
  return power ? { ...power, ...(verdict.estimated && { estimated: [...verdict.estimated, ...(power.estimated ?? [])] }) } : verdict;
}
