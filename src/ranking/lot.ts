import type { Catalogue, Machine, Unit } from '../catalogue/catalogue.ts';
import { byCodeUnit } from '../units/compare.ts';

/** Units of one machine that are alike in all that is judged but price, year and hours. */
export type Alike = readonly Unit[];

/** Whether anything hangs on a unit's year: a part that only some years have, or the generation it is of. */
const hangsOnYear = ({ line, midPto, backhoe, loaders = [], cabs = [], suspensionSeat, tiltWheel, cruise, thirdFunction }: Machine) =>
  line !== undefined || [midPto, backhoe, ...loaders, ...cabs, suspensionSeat, tiltWheel, cruise, thirdFunction].some((part) => part?.years !== undefined);

/** What of a unit is judged: two units of which this is the same meet and fail the same. */
function alikeness(unit: Unit, withYear: boolean): string {
  const { fitted = {}, loader, deck, cab, transmission, attachments, tyres, rops, seatBelt, exhaustIntact, recallOpen, year, yearKind } = unit;
  return JSON.stringify([
    Object.entries(fitted).sort(([a], [b]) => byCodeUnit(a, b)), loader, deck, cab, transmission, attachments, tyres?.type, tyres?.liquid,
    rops?.kind, rops?.certified, rops?.altered, seatBelt, exhaustIntact, recallOpen, ...(withYear ? [year, yearKind] : []),
  ]);
}

interface Lot {
  units: ReadonlyMap<string, readonly Unit[]>;
  alike: Map<Machine, readonly Alike[]>;
}

const lots = new WeakMap<readonly Unit[], Lot>();

function grouped<K>(units: readonly Unit[], by: (unit: Unit) => K): Map<K, Unit[]> {
  const groups = new Map<K, Unit[]>();
  for (const unit of units) {
    const key = by(unit);
    const group = groups.get(key);
    if (group) group.push(unit);
    else groups.set(key, [unit]);
  }
  return groups;
}

/** The units a buyer could still buy of a machine, those alike together. Sorted once a lot. */
export function unitsOf({ units }: Pick<Catalogue, 'units'>, machine: Machine): readonly Alike[] {
  if (!units) return [];
  const lot = lots.get(units) ?? { units: grouped(units.filter(({ status }) => status !== 'sold'), ({ machine: of }) => of), alike: new Map() };
  lots.set(units, lot);
  const withYear = hangsOnYear(machine);
  const alike = lot.alike.get(machine) ?? [...grouped(lot.units.get(machine.id) ?? [], (unit) => alikeness(unit, withYear)).values()];
  lot.alike.set(machine, alike);
  return alike;
}
