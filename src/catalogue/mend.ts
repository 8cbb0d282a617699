import type { Fault } from '../documents/fault.ts';

/**
 * What of a unit may be unknown: without it the unit is asked about, or earns less, and never more. A fault in
 * anything else (its status, its belt, a recall) might hide what speaks against it.
 */
const mayBeUnknown: readonly string[] = [
  'serial', 'year', 'yearKind', 'hours', 'meterVerified', 'price', 'priceDate', 'listedOn', 'attachments', 'previousUse', 'serviceRecord', 'warranty',
  'notes', 'photo', 'location',
];

/** Ways to reach the dealer: without one there are the others. */
const wayToDealer = /^dealer\.(phone|email|address|url)$/;
const inUnit = /^units\[(\d+)\](?:\.(\w+))?/;

const without = (holder: unknown, keys: readonly unknown[]) => Object.fromEntries(Object.entries(holder as object).filter(([key]) => !keys.includes(key)));

/**
 * A catalogue without what is wrong in single units, or in how to reach the dealer: a figure becomes unknown, and
 * a unit that can't be judged without it is left out. What is wrong in the line-up itself can't be mended, for all
 * is measured by it.
 *
 * @returns undefined where a fault lies elsewhere
 */
export function mended(document: unknown, faults: readonly Fault[]): object | undefined {
  const { units, dealer } = (document ?? {}) as { units?: unknown; dealer?: unknown };
  const ways: string[] = [];
  const wrong = new Map<number, (string | undefined)[]>();
  for (const { place } of faults) {
    const way = wayToDealer.exec(place)?.[1];
    const [, unit, key] = inUnit.exec(place) ?? [];
    if (way) ways.push(way);
    else if (unit && Array.isArray(units)) wrong.set(Number(unit), [...(wrong.get(Number(unit)) ?? []), key]);
    else return undefined;
  }
  const kept = (units as unknown[] | undefined)?.flatMap((unit, index) => {
    const keys = wrong.get(index) ?? [];
    if (!keys.every((key) => key !== undefined && mayBeUnknown.includes(key))) return [];
    return [keys.length === 0 ? unit : without(unit, keys)];
  });
  return { ...(document as object), ...(ways.length > 0 && { dealer: without(dealer, ways) }), ...(kept && { units: kept }) };
}
