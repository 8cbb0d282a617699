import type { Fault } from '../documents/fault.ts';

/**
 * What of a unit may be unknown: without it the unit is asked about, or earns less, and never more. A fault in
 * anything else (its status, its belt, a recall) might hide what speaks against it.
 */
const mayBeUnknown: readonly string[] = [
  'serial', 'year', 'yearKind', 'hours', 'meterVerified', 'price', 'priceDate', 'listedOn', 'attachments', 'previousUse', 'serviceRecord', 'warranty',
  'notes', 'photo', 'location',
];

const inUnit = /^units\[(\d+)\](?:\.(\w+))?/;

/**
 * A catalogue without what is wrong in single units: a figure becomes unknown, and a unit that can't be judged
 * without it is left out. What is wrong in the line-up itself can't be mended, for all is measured by it.
 *
 * @returns undefined where a fault lies outside of the units
 */
export function mended(document: unknown, faults: readonly Fault[]): object | undefined {
  const { units } = (document ?? {}) as { units?: unknown };
  if (!Array.isArray(units)) return undefined;
  const places = faults.map(({ place }) => inUnit.exec(place));
  if (places.some((place) => !place)) return undefined;
  const wrong = new Map<number, (string | undefined)[]>();
  for (const [, index, key] of places as RegExpExecArray[]) wrong.set(Number(index), [...(wrong.get(Number(index)) ?? []), key]);
  const kept = units.flatMap((unit: unknown, index) => {
    const keys = wrong.get(index) ?? [];
    if (!keys.every((key) => key !== undefined && mayBeUnknown.includes(key))) return [];
    return [keys.length === 0 ? unit : Object.fromEntries(Object.entries(unit as object).filter(([key]) => !keys.includes(key)))];
  });
  return { ...(document as object), units: kept };
}
