import type { TaskId } from '../answers/schema.ts';
import { factors } from '../units/quantity.ts';
import { showAmount, type Reader } from '../units/show.ts';
import { capital } from './capital.ts';
import type { Voice } from './say.ts';
import type { RelaxedEntry, Shortlist, WayOutEntry } from './schema.ts';
import type { BoundId } from './words/words.ts';

type Change = Shortlist['changes'][number];

/** A bound reads best to the inch, to ten pounds, to fifty of the dealer's currency, or to what is like them. */
const teeth: Readonly<Record<Reader['units'], Readonly<Record<string, number>>>> = {
  us: { m: factors.length.in, kg: 10 * factors.mass.lb, s: factors.time.h / 10, money: 50 },
  metric: { m: factors.length.cm, kg: 5 * factors.mass.kg, s: factors.time.h / 10, money: 50 },
};

/** A bound moved on to the next round figure, further from the buyer's own, so that what is told still holds. */
function rounded({ is, to, unit }: RelaxedEntry, { units }: Reader): number {
  const tooth = teeth[units][unit] ?? 1;
  // A figure that is round already stays as it is.
  const whole = Math.round(to / tooth);
  const on = Math.abs(to / tooth - whole) < 1e-6 ? whole : is === 'at-most' ? Math.ceil(to / tooth) : Math.floor(to / tooth);
  return on > 0 ? on * tooth : to;
}

function sayRelaxed(need: string, relaxed: RelaxedEntry, { words, reader }: Voice): string {
  const { from, unit } = relaxed;
  const to = rounded(relaxed, reader);
  return words.waysOut.relaxed[need as BoundId]({
    to: showAmount(to, unit, reader, from), from: showAmount(from, unit, reader, to), more: showAmount(Math.abs(to - from), unit, reader),
  });
}

function machinesIn({ stands, asks }: Pick<Change, 'stands' | 'asks'>, { words, nameOf }: Voice): string {
  return words.list([...stands.map((id) => nameOf(id)), ...asks.map((id) => `${nameOf(id)} (${words.result.unitVerdict.ask})`)]);
}

/** Changes worth telling: a need dropped is left out where moving its bound brings back as much. */
export const changesTold = ({ changes }: Shortlist): Change[] => changes.filter((change) => change.relaxed || !changes.some(
  ({ need, relaxed, stands, asks }) => relaxed && need === change.need && stands.length === change.stands.length && asks.length === change.asks.length,
));

/** What would change the answer, in words. */
export function sayChange(change: Change, voice: Voice): string {
  const { words, reader } = voice;
  const { need, task, relaxed, saves } = change;
  const machines = machinesIn(change, voice);
  const told = relaxed ? words.waysOut.withRelaxed(sayRelaxed(need!, relaxed, voice), machines)
    : task ? words.result.withoutTask(words.tasks[task], machines) : words.result.withoutNeed(words.needs[need!] ?? need!, machines);
  return saves === undefined ? told : `${told} ${words.waysOut.saves(showAmount(saves, 'money', reader))}`;
}

/** A way out in words, and what may be hired out for it. */
export function sayWay(way: WayOutEntry, shortlist: Shortlist, voice: Voice): { way: string; hire: string[] } {
  const { words, reader } = voice;
  const { waysOut } = words;
  const given = way.give.map(({ need, task, relaxed }) => {
    if (relaxed) return waysOut.give.relaxed(sayRelaxed(need!, relaxed, voice));
    return task ? waysOut.give.task(words.tasks[task]) : waysOut.give.need(words.needs[need!] ?? need!);
  });
  const price = way.price === undefined ? '' : showAmount(way.price, 'money', reader);
  const rare = (which: 'rare' | 'unsaid') => [...new Set(way.give.filter(({ hire }) => hire === which)
    .flatMap(({ need, task = shortlist.needs.find(({ id }) => id === need)?.task }): TaskId[] => (task ? [task] : [])))];
  return {
    way: capital(waysOut.way(words.list(given), machinesIn(way, voice), price), words.language),
    hire: (['rare', 'unsaid'] as const).flatMap((which) => rare(which).map((task) => waysOut.hire[which](words.tasks[task]))),
  };
}

/** Needs that nothing meets together, in words. */
export function sayConflict(set: readonly string[], { words }: Voice): string {
  const named = set.map((id) => words.needs[id] ?? id);
  return named.length === 1 ? words.waysOut.alone(named[0]!) : words.waysOut.together(words.list(named));
}
