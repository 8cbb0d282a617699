import { criteria } from '../answers/schema.ts';
import type { Placed, Ranking } from '../ranking/rank.ts';
import { atLeast } from '../units/compare.ts';
import type { TradeOff } from './schema.ts';

/** Machines that are shown first, side by side. */
const compared = 3;

/**
 * What the first few give up for what: the criteria on which one beats and trails the first by a share of
 * the criterion's range, those that trade alike in one group. The first is told against the second. Where a
 * value isn't known nothing is said of it.
 */
export function tradeOffsOf({ standing, world }: Pick<Ranking, 'standing' | 'world'>): TradeOff[] {
  const share = world.book.value('trade-off.share');
  const [first, ...others] = standing.slice(0, compared);
  if (!first || others.length === 0) return [];
  const traded = (one: Placed, than: Placed): TradeOff => {
    const beats = (a: Placed, b: Placed) => criteria.filter((criterion) => {
      const [ours, theirs] = [a.best.values[criterion]?.value, b.best.values[criterion]?.value];
      return ours !== undefined && theirs !== undefined && atLeast(ours - theirs, share);
    });
    return { machines: [one.machine.id], than: than.machine.id, gains: beats(one, than), losses: beats(than, one) };
  };
  const alike = (a: TradeOff, b: TradeOff) => a.gains.join() === b.gains.join() && a.losses.join() === b.losses.join();
  const groups: TradeOff[] = [];
  for (const each of others.map((other) => traded(other, first))) {
    const group = groups.find((known) => alike(known, each));
    if (group) group.machines.push(...each.machines);
    else groups.push(each);
  }
  return [traded(first, others[0]!), ...groups];
}
