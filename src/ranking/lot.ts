import type { Catalogue, Machine, Unit } from '../catalogue/catalogue.ts';
import { byCodeUnit } from '../units/compare.ts';

/** Units of one machine that are alike in all that is judged but price, year and hours. */
export type Alike = readonly Unit[];

const windowed = ({ midPto, backhoe, loaders = [], cabs = [], suspensionSeat, tiltWheel, cruise, thirdFunction }: Machine) =>
  [midPto, backhoe, ...loaders, ...cabs, suspensionSeat, tiltWheel, cruise, thirdFunction].some((part) => part?.years !== undefined);

/** What of a unit is judged: two units of which this is the same meet and fail the same. */
function alikeness(unit: Unit, machine: Machine): string {
  const { fitted = {}, loader, deck, cab, transmission, attachments, tyres, rops, seatBelt, exhaustIntact, recallOpen, year, yearKind } = unit;
  return JSON.stringify([
    Object.entries(fitted).sort(([a], [b]) => byCodeUnit(a, b)), loader, deck, cab, transmission, attachments, tyres?.type, tyres?.liquid,
    rops?.kind, rops?.certified, rops?.altered, seatBelt, exhaustIntact, recallOpen, ...(windowed(machine) ? [year, yearKind] : []),
  ]);
}

const lots = new WeakMap<Catalogue, ReadonlyMap<string, readonly Alike[]>>();

function sorted(catalogue: Catalogue): ReadonlyMap<string, readonly Alike[]> {
  const groups = new Map(catalogue.machines.map((machine) => [machine.id, { machine, alike: new Map<string, Unit[]>() }]));
  for (const unit of catalogue.units ?? []) {
    const of = groups.get(unit.machine);
    if (!of || unit.status === 'sold') continue;
    const key = alikeness(unit, of.machine);
    const group = of.alike.get(key);
    if (group) group.push(unit);
    else of.alike.set(key, [unit]);
  }
  return new Map([...groups].map(([id, { alike }]) => [id, [...alike.values()]]));
}

/** The units a buyer could still buy of a machine, those alike together. Sorted once a catalogue. */
export function unitsOf(catalogue: Catalogue, machine: Machine): readonly Alike[] {
  let lot = lots.get(catalogue);
  if (!lot) lots.set(catalogue, lot = sorted(catalogue));
  return lot.get(machine.id) ?? [];
}
