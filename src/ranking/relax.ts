import { withAnswer } from '../answers/at.ts';
import type { Answers } from '../answers/answers.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { Catalogue, Machine } from '../catalogue/catalogue.ts';
import { needsOf } from '../needs/all.ts';
import type { Need } from '../needs/need.ts';
import type { FigureId } from '../trade/book.ts';
import { toMillionth } from '../units/compare.ts';
import { failsAlone } from './alone.ts';
import { candidatesOf } from './candidates.ts';
import type { World } from './candidate.ts';
import { askedOf } from './asked.ts';
import { evaluate, type Evaluation } from './evaluate.ts';
import { standings, standsAsWell } from './order.ts';
import { hangsOn } from './slots.ts';
import { isFailedGate } from './verdict.ts';

/** A bound the buyer gave: where it stands in his answers, and which way it gives. */
export interface Bound {
  need: string;
  /** Path of the answer. */
  at: string;
  is: 'at-least' | 'at-most';
  value: number;
  unit: 'm' | 'kg' | 's' | 'money';
}

/** A bound moved just as far as it takes. */
export interface Relaxed extends Bound {
  to: number;
}

const steps: Record<Bound['unit'], FigureId> = {
  m: 'relax.step.length', kg: 'relax.step.mass', s: 'relax.step.time', money: 'relax.step.money',
};

/** The buyer's own bound of a need, where it has one. Never that of a safety gate: it gives with its load or not at all. */
export function boundOf(need: Need): Bound | undefined {
  const bound = (at: string, is: Bound['is'], value: number | undefined, unit: Bound['unit']): Bound | undefined =>
    (value === undefined ? undefined : { need: need.id, at, is, value, unit });
  const ofTask = (name: string) => `tasks.${need.task}.${name}`;
  if (need.safety) return undefined;
  switch (need.capability) {
    case 'width':
    case 'height.stored':
    case 'length':
      return bound(need.from[0]!, 'at-most', need.atMost, 'm');
    case 'price':
    case 'instalment':
      return bound(`${need.id}.value`, 'at-most', need.atMost, 'money');
    case 'mower.hours':
      return bound(ofTask('hours'), 'at-most', need.atMost, 's');
    case 'loader.lift':
    case 'hitch.lift':
      return bound(ofTask('weight'), 'at-least', need.load, 'kg');
    case 'loader.height':
      return bound(ofTask('height'), 'at-least', need.atLeast, 'm');
    case 'backhoe':
      return bound(ofTask('depth'), 'at-least', need.atLeast, 'm');
    case 'implement':
      return bound(ofTask('diameter'), 'at-least', need.capacity, 'm');
    default:
      return undefined;
  }
}

/** The answers with a bound moved. */
export const withBound = (answers: Answers, { at }: Bound, to: number): Answers =>
  withAnswer(answers as unknown as AnswersDocument, at, to) as unknown as Answers;

/** The steps a bound is searched in, from the buyer's own, on round values. */
interface Ladder {
  count: number;
  at(rung: number): number;
  /** The first rung that reaches a figure. */
  reaching(figure: number): number;
}

function ladderOf({ is, value, unit }: Bound, { book }: World): Ladder {
  const step = book.value(steps[unit]);
  const most = book.value('relax.most');
  const start = is === 'at-most' ? Math.floor(value / step) : Math.ceil(value / step);
  const count = Math.floor(is === 'at-most' ? (value * most) / step - start : start - value / most / step);
  const sign = is === 'at-most' ? 1 : -1;
  return {
    count,
    at: (rung: number) => toMillionth((start + sign * rung) * step),
    reaching: (figure: number) => Math.ceil((sign * (figure - start * step)) / step),
  };
}

/** The first of some rungs that holds, of which the last is known to. What holds once holds from there on. */
function firstHolding(holds: (rung: number) => boolean, low: number, high: number): number {
  if (high - low <= 1) return high;
  const middle = Math.floor((low + high) / 2);
  return holds(middle) ? firstHolding(holds, low, middle) : firstHolding(holds, middle, high);
}

/** The same with a guess: a verdict tells what is wanted and is nearly always right, so that two trials settle it. */
function firstFrom(guess: number, holds: (rung: number) => boolean, count: number): number {
  // A figure right on a rung may come out a hair beyond it.
  const tried = [guess - 1, guess, guess + 1].filter((rung) => rung > 0 && rung < count);
  const first = tried.find(holds);
  const below = first ?? count;
  return firstHolding(holds, Math.max(0, ...tried.filter((rung) => rung < below)), below);
}

/** What a search goes by: who may be bought, and what is asked for at a bound. */
export interface Search {
  catalogue: Catalogue;
  answers: Answers;
  world: World;
  /** Which of the needs are asked for at all. */
  only?: (need: Need) => boolean;
}

const needsAt = ({ answers, world, only = () => true }: Search, bound: Bound, to: number) =>
  needsOf(withBound(answers, bound, to), world.book).filter(only);

/**
 * The least change of a bound by which one of some machines comes back: to stand if any can, else to be
 * asked about; and which of them may. Undefined where none does, however far the bound is moved within reason.
 */
export function relax(bound: Bound, machines: readonly Machine[], search: Search): { relaxed: Relaxed; machines: Machine[] } | undefined {
  const { world, catalogue } = search;
  const ladder = ladderOf(bound, world);
  const asked = new Map<number, Need[]>();
  const needsOn = (rung: number) => {
    const known = asked.get(rung) ?? needsAt(search, bound, ladder.at(rung));
    asked.set(rung, known);
    return known;
  };
  if (ladder.count < 1) return undefined;
  const far = needsOn(ladder.count);
  const judgedFar = machines.flatMap((machine) => candidatesOf(machine, catalogue))
    .map((candidate) => ({ candidate, found: evaluate(candidate, far, world) }));
  const wanted = standings.find((standing) => standing !== 'ruled-out' && judgedFar.some(({ found }) => found.standing === standing));
  if (!wanted) return undefined;
  const least = judgedFar.filter(({ found }) => standsAsWell(found.standing, wanted)).reduce((best, { candidate, found }) => {
    const holds = (rung: number) => standsAsWell(evaluate(candidate, needsOn(rung), world).standing, wanted);
    if (best < ladder.count && !holds(best - 1)) return best;
    const figure = found.judged.find(({ need }) => need.id === bound.need)?.verdict.has;
    return figure === undefined ? firstHolding(holds, 0, best) : firstFrom(ladder.reaching(figure), holds, best);
  }, ladder.count);
  const back = machines.filter((machine) => judgedFar.some(({ candidate, found }) => candidate.machine === machine && found.standing !== 'ruled-out'));
  return { relaxed: { ...bound, to: ladder.at(least) }, machines: back };
}

/** Whether a candidate could come back with other needs in place of some: every gate it fails hangs on them. */
export function mayComeBack({ build, judged }: Evaluation, changed: readonly Need[], needs: readonly Need[], world: World): boolean {
  const places = askedOf(needs, world).places.map(({ slot }) => slot);
  return judged.filter(isFailedGate).every(({ need }) => hangsOn(need, changed, places) && (changed.includes(need) || !failsAlone(build, need, world)));
}

/** The needs that are not the same once a bound is moved. */
export function changedBy(bound: Bound, needs: readonly Need[], search: Search): Need[] {
  const moved = new Set(needsAt(search, bound, bound.value * search.world.book.value('relax.most')).map((need) => JSON.stringify(need)));
  return needs.filter((need) => !moved.has(JSON.stringify(need)));
}
