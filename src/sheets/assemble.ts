import { catalogue, catalogueFormat, type CatalogueDocument, type MachineDocument, type UnitDocument } from '../catalogue/schema.ts';
import { readCatalogue } from '../catalogue/read-catalogue.ts';
import type { Fault } from '../documents/fault.ts';
import { readDocument } from '../documents/read.ts';
import { crossFault } from './cross-faults.ts';
import type { Finding } from './finding.ts';
import type { RowsReading } from './read-rows.ts';
import type { Slices } from './slices.ts';
import { versionOf } from './version.ts';

/** The dealer's JSON: a catalogue that may lack machines, units and the day it is as of. */
export type Base = Omit<CatalogueDocument, 'machines' | 'asOf'> & Partial<Pick<CatalogueDocument, 'machines' | 'asOf'>>;

export interface Parts {
  base: Base;
  /** Day the ages count from, as 2026-04-30. The core has no clock: the caller gives it. */
  asOf: string;
  /** Stands for the machines of `base`, where given. */
  machines?: RowsReading<'machines'>;
  /** Stands for the units of `base`, where given. */
  units?: RowsReading<'units'>;
}

export interface Assembled {
  /** With its `version`; undefined where nothing is left that makes a catalogue. */
  catalogue: CatalogueDocument | undefined;
  findings: Finding[];
}

/** Stands in for what the dealer's JSON needn't have, so that one schema serves for it too. */
const anyMachine: MachineDocument = { id: 'any', name: 'any', make: 'any', frame: 'any', tier: 'standard', years: { from: 2000, meant: 'model' } };
const anyDay = '2000-01-01';

const dealerFault = ({ place, read, expected, nearest }: Fault): Finding =>
  ({ code: 'dealer.faulty', weight: 'fault', facts: { expected, nearest }, sheet: 'dealer', place, read });

/**
 * Reads the dealer's JSON, already parsed: `format`, `id`, `dealer`, `frames`, and `implements`, `rules`, `machines`, `units`
 * if there are any. A whole catalogue is one.
 */
export function readBase(document: unknown): { base: Base | undefined; findings: Finding[] } {
  const given = typeof document === 'object' && document !== null && !Array.isArray(document) ? document as Partial<CatalogueDocument> : undefined;
  const whole = given ? { format: catalogueFormat, asOf: anyDay, machines: [anyMachine], ...given } : document;
  const { value, faults, unknownKeys } = readDocument(catalogue, whole);
  const findings = [...faults, ...unknownKeys].map(dealerFault);
  if (!value || !given || findings.length > 0) return { base: undefined, findings };
  const { machines, asOf, version: _, ...rest } = value;
  return { base: { ...rest, ...(given.machines && { machines }), ...(given.asOf && { asOf }) }, findings };
}

interface Placed<E> {
  row: number | undefined;
  entry: E;
}
const unplaced = <E>(entries: readonly E[] = []): Placed<E>[] => entries.map((entry) => ({ row: undefined, entry }));
const entriesOf = <E>(all: readonly Placed<E>[]) => all.map(({ entry }) => entry);

const inRow = /^(machines|units)\[(\d+)\]\.?(.*)$/;

/** Puts the parts together and checks what stands between them; what a check refuses is left out and told by row and column. */
export function* assembling({ base, asOf, machines, units }: Parts): Slices<Assembled> {
  const findings: Finding[] = [];
  const rows: { machines: Placed<MachineDocument>[]; units: Placed<UnitDocument>[] } = {
    machines: machines ? [...machines.entries] : unplaced(base.machines),
    units: units ? [...units.entries] : unplaced(base.units),
  };
  const { units: _units, machines: _machines, ...rest } = base;
  const of = rows.machines.length + rows.units.length;
  for (;;) {
    yield { done: 0, of };
    if (rows.machines.length === 0) {
      findings.push({ code: 'catalogue.no-machines', weight: 'fault', facts: {}, sheet: 'machines' });
      return { catalogue: undefined, findings };
    }
    const document = {
      ...rest, asOf, machines: entriesOf(rows.machines), ...((units ?? base.units) && { units: entriesOf(rows.units) }),
    };
    const { value, faults, unknownKeys } = readCatalogue(document);
    const all = [...faults, ...unknownKeys];
    if (value && all.length === 0) return { catalogue: { ...value, version: versionOf(value) }, findings };

    const gone = { machines: new Set<number>(), units: new Set<number>() };
    let stuck = false;
    for (const each of all) {
      const [, sheet, index, field] = inRow.exec(each.place) as unknown as [string, 'machines' | 'units', string, string] | null ?? [];
      const source = sheet && (sheet === 'machines' ? machines : units);
      const placed = sheet && rows[sheet][Number(index)];
      if (!sheet || !source || !placed || field === undefined) {
        findings.push(dealerFault(each));
        stuck = true;
        continue;
      }
      if (gone[sheet].has(Number(index))) continue;
      const { finding, entry } = crossFault(each, field, placed.entry, source);
      findings.push({ ...finding, sheet, place: each.place, read: each.read, ...(placed.row !== undefined && { row: placed.row }) } as Finding);
      if (entry) (rows[sheet] as Placed<unknown>[])[Number(index)] = { ...placed, entry };
      else gone[sheet].add(Number(index));
    }
    if (stuck) return { catalogue: undefined, findings };
    rows.machines = rows.machines.filter((_, index) => !gone.machines.has(index));
    rows.units = rows.units.filter((_, index) => !gone.units.has(index));
  }
}
