import { questionOf, type QuestionId } from '../answers/questions.ts';
import type { Machine, Unit } from '../catalogue/catalogue.ts';
import type { Need } from '../needs/need.ts';
import { failsAlone, mayBeHelped } from '../ranking/alone.ts';
import type { Candidate } from '../ranking/candidate.ts';
import { unitsOf } from '../ranking/lot.ts';
import type { Case } from './case.ts';

/** Rooms of the answers that are read as a whole: whether a door counts hangs on where the machine is kept. */
const wholeRooms = ['storage', 'haul', 'budget', 'comfort', 'drivers'];

const roomOf = (path: string) => path.split('.')[0]!;

/**
 * Whether an answer to a question may still alter or drop a need. Sound, not sharp: whatever is asked of a task
 * may alter any need of it, and so on with the rooms that are read as a whole.
 */
function mayAlter(id: QuestionId, { from, task }: Need): boolean {
  // Which jobs there are, and which of them are musts, decides what is asked at all.
  if (id === 'tasks' || id === 'musts') return true;
  return questionOf(id).fields.some(({ at }) => from.includes(at)
    || (task !== undefined && at.startsWith(`tasks.${task}.`))
    || (wholeRooms.includes(roomOf(at)) && from.some((path) => roomOf(path) === roomOf(at))));
}

/**
 * The gates that stay as they are, however the visit is finished, and which nothing put on for another need may help:
 * what a slope or a gross mass asks hangs on loads still to be said.
 */
export const lastingGates = ({ needs, open }: Pick<Case, 'needs' | 'open'>) =>
  needs.filter((need) => need.must && !mayBeHelped(need) && !open.some((id) => mayAlter(id, need)));

/** A machine that may still stand, with those of its units that may and are free to buy. */
export interface Left {
  machine: Machine;
  free: readonly Unit[];
}

/**
 * The machines that may still stand or be asked about, however the visit is finished, one after the other. A
 * candidate is lost where it fails a lasting gate alone: nothing put on for another need helps, and an
 * altitude still to be said takes power and gives none. Answers to come can only make these fewer.
 */
export function* leftIn({ catalogue, world, needs, open }: Case): Generator<Left | undefined> {
  const gates = lastingGates({ needs, open });
  const isLeft = (candidate: Candidate) => !gates.some((need) => failsAlone(candidate, need, world));
  for (const machine of catalogue.machines) {
    const units = unitsOf(catalogue, machine).flat().filter((unit) => isLeft({ machine, unit }));
    yield units.length > 0 || isLeft({ machine }) ? { machine, free: units.filter(({ status }) => status !== 'held') } : undefined;
  }
}
