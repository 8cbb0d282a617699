import type { Need } from '../needs/need.ts';
import type { Candidate, World } from './candidate.ts';
import { evaluate } from './evaluate.ts';
import { isFailedGate } from './verdict.ts';

/**
 * Gates that something put on for another need may help: a cab lower than a roll bar, a loader that weighs the
 * front down, a part that nobody measured or weighed, with which it must be asked about.
 */
const helped: readonly Need['capability'][] = ['height.stored', 'height.working', 'length', 'slope.tip-angle', 'trailer.payload', 'trailer.tow-rating', 'trailer.tongue', 'gross-mass'];

export const mayBeHelped = ({ capability }: Need) =>
  helped.includes(capability) || capability.endsWith('-axle') || capability.endsWith('.axles');

/** Needs for which something is put on that may help another. */
export const helps = ({ capability }: Need) =>
  capability === 'cab' || capability === 'mower' || capability === 'backhoe' || capability === 'implement' || capability === 'rotary-cutter' || capability.startsWith('loader.');

const known = new WeakMap<World, WeakMap<Need, Map<string, boolean>>>();

function memoOf(need: Need, world: World): Map<string, boolean> {
  const byNeed = known.get(world) ?? new WeakMap<Need, Map<string, boolean>>();
  known.set(world, byNeed);
  const memo = byNeed.get(need) ?? new Map<string, boolean>();
  byNeed.set(need, memo);
  return memo;
}

/** Whether a candidate fails a gate though nothing else is asked: then it fails it whatever else is. Reckoned once. */
export function failsAlone({ machine, unit }: Candidate, need: Need, world: World): boolean {
  if (mayBeHelped(need)) return false;
  const memo = memoOf(need, world);
  const key = JSON.stringify([machine.id, unit?.id]);
  // A build is a candidate too: what is on it isn't asked for here.
  const fails = memo.get(key) ?? evaluate({ machine, ...(unit && { unit }) }, [need], world).judged.some(isFailedGate);
  memo.set(key, fails);
  return fails;
}
