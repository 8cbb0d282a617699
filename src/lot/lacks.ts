import { features } from '../catalogue/schema.ts';
import type { Addition } from '../ranking/addition.ts';
import { bought } from '../ranking/additions.ts';
import { have, type Candidate, type Have, type World } from '../ranking/candidate.ts';
import { billOf } from '../ranking/price.ts';
import type { Voice } from '../reasons/say.ts';
import { showAmount } from '../units/show.ts';
import type { LotWords } from './words/words.ts';

export const lackItems = ['loader', 'midPto', 'backhoe', 'cab', ...features] as const;
export type LackItem = (typeof lackItems)[number];

/** Something a unit hasn't got, or nobody knows whether it has, and what having it would cost. */
export interface Lack {
  item: LackItem;
  /** Of a loader or cab, which of those its machine takes. */
  id?: string;
  state: Exclude<Have, 'has'>;
  /** With fitting at the dealer's rate, in his currency; absent where any of it must be asked, or it can't be added. */
  cost?: number;
}

type Part = NonNullable<Parameters<typeof have>[2]> & { id?: string };

const whats: Partial<Record<LackItem, Addition['what']>> = { loader: 'loader', midPto: 'mid-pto', backhoe: 'backhoe', cab: 'cab' };

/** The parts a machine may carry of each item; one its catalogue says nothing of is asked about once. */
const partsOf = ({ machine }: Candidate, item: LackItem): readonly (Part | undefined)[] => {
  if (item === 'loader') return machine.loaders ?? [undefined];
  if (item === 'cab') return machine.cabs ?? [undefined];
  return [machine[item]];
};

function lackOf(candidate: Candidate, item: LackItem, part: Part | undefined, world: World): Lack[] {
  const state = have(candidate, item, part, world.asOfYear);
  if (state === 'has') return [];
  const named = { item, ...(part?.id !== undefined && { id: part.id }), state };
  if (state !== 'can-add' || !part) return [named];
  const { extra, unpriced } = billOf([bought(whats[item] ?? 'feature', part, [])], undefined, world);
  return [{ ...named, ...(unpriced.length === 0 && { cost: extra }) }];
}

/**
 * What one unit hasn't got, by its own year and what is fitted to it, whatever the buyer asks for: whether it can
 * be added and for how much.
 */
export const lacksOf = (candidate: Candidate, world: World): Lack[] =>
  lackItems.flatMap((item) => partsOf(candidate, item).flatMap((part) => lackOf(candidate, item, part, world)));

/** A thing a unit lacks, in words. */
export function sayLack({ item, state, cost }: Lack, { reader }: Voice, { lacks }: LotWords): string {
  const what = lacks.items[item];
  if (state === 'can-add') return cost === undefined ? lacks.ask(what) : lacks.canAdd(what, showAmount(cost, 'money', reader));
  return lacks[state](what);
}
