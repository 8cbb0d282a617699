import { taskOf, type Answers } from '../answers/answers.ts';
import type { Catalogue, Loader, Machine, Unit } from '../catalogue/catalogue.ts';
import type { Standing as JudgedStanding } from '../ranking/order.ts';
import type { StandingEntry as Entry, StandingSoFar } from '../reasons/standing-so-far.ts';

export type Standing = JudgedStanding | 'not-judged';

/** A machine as it is drawn: which unit of it, how it stands, and what is on it. */
export interface Outfit {
  machine: Machine;
  standing: Standing;
  unit?: Unit;
  loader?: Loader;
  /** Width of the deck under the belly. */
  deck?: number;
  cab: boolean;
}

const reachable = ({ availability }: { availability: string }) => availability !== 'none' && availability !== 'unknown';

/** Of several one that is on the unit, else the first to be had. */
function chosen<T extends { id: string; availability: string }>(parts: readonly T[] | undefined, ids: readonly (string | undefined)[]) {
  return parts?.find(({ id }) => ids.includes(id)) ?? parts?.find(reachable);
}

const mows = (need: string) => need.startsWith('mow-lawn.');

/** For a buyer who mows under the belly: the deck that is bought or on the unit; where nothing is chosen yet, the narrowest. */
function deckWidth({ decks = [] }: Machine, unit: Unit | undefined, entry: Entry | undefined, answers: Answers) {
  const task = taskOf(answers, 'mow-lawn');
  const additions = entry?.package.additions ?? [];
  if (!task || task.deck === 'rear' || additions.some((one) => one.what === 'implement' && one.for.some(mows))) return undefined;
  const bought = additions.find(({ what }) => what === 'deck')?.id;
  const onUnit = unit?.fitted?.deck === true || (unit !== undefined && unit.fitted?.deck === undefined && unit.deck !== undefined);
  const named = decks.find(({ id }) => id === bought || (onUnit && id === unit?.deck));
  if (named) return named.width;
  const there = entry === undefined ? decks.filter(reachable) : decks.filter(({ availability }) => (unit ? onUnit : availability === 'fitted'));
  return there.length ? Math.min(...there.map(({ width }) => width)) : undefined;
}

function entryOf(shortlist: StandingSoFar | undefined, id: string): { standing: Standing; entry?: Entry } {
  const find = (entries: readonly Entry[] | undefined) => entries?.find(({ machine }) => machine === id);
  const [stands, ask] = [find(shortlist?.shortlist), find(shortlist?.askDealer)];
  if (stands) return { standing: 'stands', entry: stands };
  if (ask) return { standing: 'ask', entry: ask };
  return { standing: shortlist?.ruledOut.some(({ machine }) => machine === id) ? 'ruled-out' : 'not-judged' };
}

/** A machine with what the shortlist puts on it; one that doesn't stand as it would come. */
export function outfitOf(machine: Machine, { catalogue, answers, shortlist }: { catalogue: Catalogue; answers: Answers; shortlist?: StandingSoFar | undefined }): Outfit {
  const { standing, entry } = entryOf(shortlist, machine.id);
  const unit = entry?.unit === undefined ? undefined : catalogue.units?.find(({ id }) => id === entry.unit);
  const bought = (what: string) => entry?.package.additions.find((addition) => addition.what === what);
  const loader = unit?.fitted?.loader === false && !bought('loader') ? undefined : chosen(machine.loaders, [bought('loader')?.id, unit?.loader]);
  const deck = deckWidth(machine, unit, entry, answers);
  const { height, rops } = machine;
  return {
    machine, standing,
    ...(unit && { unit }), ...(loader && { loader }), ...(deck !== undefined && { deck }),
    cab: rops?.kind === 'cab' || unit?.rops?.kind === 'cab' || unit?.fitted?.cab === true || bought('cab') !== undefined
      || (height?.ropsUp === undefined && height?.cab !== undefined),
  };
}
