import { taskOf, type Answers } from '../answers/answers.ts';
import type { TaskId } from '../answers/schema.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Need } from '../needs/need.ts';
import { atMost, byCodeUnit } from '../units/compare.ts';
import { candidatesOf } from './candidates.ts';
import { choicesOf } from './choices.ts';
import { conflictsOf, type Conflicts } from './conflicts.ts';
import { evaluate, type Evaluation } from './evaluate.ts';
import { once } from './once.ts';
import { byPrice } from './order.ts';
import { rank, type Placed, type Ranking } from './rank.ts';
import { boundOf, changedBy, mayComeBack, relax, withBound, type Relaxed, type Search } from './relax.ts';

/** What comes back, and the least it costs; what stands is told before what must be asked about. */
export interface Back {
  stands: readonly string[];
  asks: readonly string[];
  /** Lowest price of a package that comes back. */
  low: number | undefined;
}

/** One thing to give up: a bound that gives, a need, or a whole task. */
export interface GivenUp {
  need?: string;
  task?: TaskId;
  relaxed?: Relaxed;
  /** The job is so rare that it may be hired out, or nobody said how rare it is. */
  hire?: 'rare' | 'unsaid';
}

export interface WayOut extends Back {
  give: readonly GivenUp[];
}

export function backOf({ standing, toAsk }: Ranking): Back {
  const ids = (places: readonly Placed[]) => places.map(({ machine }) => machine.id);
  const prices = (standing.length > 0 ? standing : toAsk).flatMap(({ best }) => best.price?.low ?? []);
  return { stands: ids(standing), asks: ids(toAsk), low: prices.length > 0 ? Math.min(...prices) : undefined };
}

/** Whether anything comes back. */
export const brings = ({ stands, asks }: Back) => stands.length + asks.length > 0;

/** All that a machine could be bought as today, judged once a ranking. */
const judgedOf = ({ machine }: Placed, ranking: Ranking): readonly Evaluation[] => once(ranking, machine, () =>
  candidatesOf(machine, ranking.catalogue).map((candidate) => evaluate(candidate, ranking.needs, ranking.world)));

/** Machines ruled out that may come back with other needs in place of some. */
export const mayReturn = (ranking: Ranking, changed: readonly Need[]) =>
  ranking.ruledOut.filter((placed) => judgedOf(placed, ranking).some((each) => mayComeBack(each, changed, ranking.needs, ranking.world)))
    .map(({ machine }) => machine);

/** For each bound that can be moved within reason so that a machine comes back, how far, and what does. */
export function relaxations(ranking: Ranking, catalogue: Catalogue, answers: Answers): (Back & { relaxed: Relaxed })[] {
  if (ranking.ruledOut.length === 0) return [];
  const search: Search = { catalogue, answers, world: ranking.world };
  return ranking.needs.flatMap((need) => {
    const bound = need.must ? boundOf(need) : undefined;
    if (!bound) return [];
    const machines = mayReturn(ranking, changedBy(bound, ranking.needs, search));
    const found = machines.length > 0 ? relax(bound, machines, search) : undefined;
    if (!found) return [];
    const { relaxed } = found;
    // Told is what a ranking of the relaxed answers brings back, and nothing else.
    const back = backOf(rank({ ...catalogue, machines: found.machines }, withBound(answers, relaxed, relaxed.to), undefined, ranking.world));
    return brings(back) ? [{ ...back, relaxed }] : [];
  });
}

/** Needs of no one task that change with the tasks there are: what a slope asks hangs on the loads carried there. */
export const hangsOnTasks = ({ capability }: Need) => capability.startsWith('slope.') || capability === 'tyres' || capability === 'ground-pressure';

interface Gone {
  needs: readonly Need[];
  tasks: readonly TaskId[];
}

/**
 * What giving up some needs comes down to: those that aren't safety, and the whole task of each that is.
 * Safety of no task can't be given up; but what a slope asks hangs on the tasks with a load, so those are tried.
 */
function gonesOf(ids: readonly string[], ranking: Ranking): Gone[] {
  const given = ranking.needs.filter(({ id }) => ids.includes(id));
  const forced = new Set(given.flatMap(({ safety, task }) => (safety && task ? [task] : [])));
  const ofNoTask = given.filter(({ safety, task }) => safety && !task);
  const gone = (tasks: ReadonlySet<TaskId>): Gone => ({
    tasks: [...tasks], needs: given.filter(({ safety, task }) => !safety && !(task && tasks.has(task))),
  });
  if (ofNoTask.length === 0) return [gone(forced)];
  if (!ofNoTask.every(hangsOnTasks)) return [];
  const loads = [...new Set(ranking.needs.flatMap(({ capability, task }) => (capability.startsWith('loader.') && task && !forced.has(task) ? [task] : [])))];
  // The smaller first.
  return choicesOf(loads).sort((a, b) => a.length - b.length).map((more) => gone(new Set([...forced, ...more])));
}

const goneIds = ({ needs, tasks }: Gone, all: readonly Need[]) =>
  new Set(all.filter((need) => needs.includes(need) || (need.task && tasks.includes(need.task))).map(({ id }) => id));

const withoutTasks = (answers: Answers, tasks: readonly TaskId[]): Answers =>
  ({ ...answers, tasks: (answers.tasks ?? []).filter(({ task }) => !tasks.includes(task)) });

/** How rare a job is, where that speaks for hiring it out; unsaid it is a question. */
function hireOf(task: TaskId | undefined, answers: Answers, { world: { book } }: Ranking): Pick<GivenUp, 'hire'> {
  if (!task) return {};
  const perYear = taskOf(answers, task)?.perYear;
  if (perYear === undefined) return { hire: 'unsaid' };
  return atMost(perYear, book.value('hire.rare-per-year')) ? { hire: 'rare' } : {};
}

/** A way out tried by a ranking without what it gives up, each bound then taken back as far as it can be. */
function tryWay({ needs, tasks }: Gone, ranking: Ranking, catalogue: Catalogue, answers: Answers): WayOut | undefined {
  const dropped = ranking.needs.filter((need) => needs.includes(need) || (need.task && tasks.includes(need.task)));
  const changed = [...dropped, ...(tasks.length > 0 ? ranking.needs.filter(hangsOnTasks) : [])];
  const some: Catalogue = { ...catalogue, machines: mayReturn(ranking, changed) };
  const left = withoutTasks(answers, tasks);
  let back = backOf(rank(some, left, ({ id }) => !needs.some((need) => need.id === id), ranking.world));
  if (!brings(back)) return undefined;
  let moved = left;
  let gone = needs.map(({ id }) => id);
  const give = needs.map((need): GivenUp => {
    const bound = boundOf(need);
    const machines = some.machines.filter(({ id }) => (back.stands.length > 0 ? back.stands : back.asks).includes(id));
    const rest = gone.filter((id) => id !== need.id);
    const only = ({ id }: Need) => !rest.includes(id);
    const { relaxed } = (bound && relax(bound, machines, { catalogue, answers: moved, world: ranking.world, only })) ?? {};
    if (!relaxed) return { need: need.id, ...hireOf(need.task, answers, ranking) };
    const answersMoved = withBound(moved, relaxed, relaxed.to);
    const found = backOf(rank({ ...catalogue, machines }, answersMoved, only, ranking.world));
    if (!brings(found)) return { need: need.id, ...hireOf(need.task, answers, ranking) };
    [back, moved, gone] = [found, answersMoved, rest];
    return { need: need.id, relaxed };
  });
  return { ...back, give: [...give, ...tasks.map((task) => ({ task, ...hireOf(task, answers, ranking) }))] };
}

const shareMoved = ({ relaxed }: GivenUp) => (relaxed ? Math.abs(relaxed.to - relaxed.value) / relaxed.value : 0);
const count = (give: readonly GivenUp[], of: (each: GivenUp) => boolean) => give.filter(of).length;

/** The cheapest first: fewest tasks given up, then fewest needs, then what is relaxed least, then the lowest price. */
const byCost = (a: WayOut, b: WayOut) =>
  count(a.give, ({ task }) => task !== undefined) - count(b.give, ({ task }) => task !== undefined)
  || count(a.give, ({ need, relaxed }) => need !== undefined && !relaxed) - count(b.give, ({ need, relaxed }) => need !== undefined && !relaxed)
  || a.give.reduce((sum, each) => sum + shareMoved(each), 0) - b.give.reduce((sum, each) => sum + shareMoved(each), 0)
  || byPrice(a.low ?? Infinity, b.low ?? Infinity)
  || byCodeUnit(JSON.stringify(a.give), JSON.stringify(b.give));

/** Which needs conflict where nothing stands and there is nothing to ask about, and every smallest way out. */
export function waysOutOf(ranking: Ranking, catalogue: Catalogue, answers: Answers): Conflicts & { ways: WayOut[] } {
  const { standing, toAsk, ruledOut, needs, world } = ranking;
  if (standing.length + toAsk.length > 0 || ruledOut.length === 0) return { sets: [], complete: true, corrections: [], ways: [] };
  const conflicts = conflictsOf(ruledOut.flatMap(({ machine }) => candidatesOf(machine, catalogue)), needs, world);
  const gones = conflicts.corrections.flatMap((ids) => gonesOf(ids, ranking)).map((gone) => ({ gone, ids: goneIds(gone, needs) }))
    .sort((a, b) => a.ids.size - b.ids.size);
  const tried: { ids: ReadonlySet<string>; way: WayOut }[] = [];
  for (const { gone, ids } of gones) {
    // Whoever gives up all that another way gives up, and more, gives up too much.
    if (tried.some((other) => [...other.ids].every((id) => ids.has(id)))) continue;
    const way = tryWay(gone, ranking, catalogue, answers);
    if (way) tried.push({ ids, way });
  }
  return { ...conflicts, ways: tried.map(({ way }) => way).sort(byCost) };
}
