import type { MachineDocument, UnitDocument } from '../catalogue/schema.ts';
import { atLeast, atMost } from '../units/compare.ts';
import { inSi, toSi, type Unit } from '../units/quantity.ts';
import type { SheetKind } from './finding.ts';
import { groups, headingsOf, headingText, noneIn, type Heading } from './headings/headings.ts';
import { mappingOf, matchColumns } from './match.ts';
import { readingRows } from './read-rows.ts';
import { allAtOnce } from './slices.ts';
import type { Table } from './table.ts';
import { canonicalJson } from './version.ts';

export interface TableOfRows {
  /** The headings first, then a row an entry; ready for `csvOf`. */
  rows: (string | number)[][];
  /** Ids of entries that a table can't hold as they are, such as a machine with three ratings of one loader. */
  notHeld: string[];
}

type Part = Record<string, unknown>;

const isAt = (ahead: { value: number; unit: string }, millimetres: number) => {
  const si = toSi(ahead as { value: number; unit: Unit }) as number;
  const wanted = toSi({ value: millimetres, unit: 'mm' }) as number;
  return atLeast(si, wanted) && atMost(si, wanted);
};

/** The ratings of a loader as the columns hold them. */
function ratingsInColumns(ratings: readonly Part[]): Part {
  const columns: Part = {};
  for (const { ahead, height, bucketOn, load } of ratings) {
    const distance = ahead as { value: number; unit: string };
    if (isAt(distance, 0) && columns.pins === undefined) columns.pins = load;
    else if (isAt(distance, 500) && columns.ahead500 === undefined) columns.ahead500 = load;
    else Object.assign(columns, columns.other === undefined ? { other: load, otherAhead: ahead } : { further: load, furtherAhead: ahead });
    Object.assign(columns, { ...(height !== undefined && { height }), ...(bucketOn !== undefined && { bucketOn }) });
  }
  return columns;
}

const inColumns = (entry: Part): Part => ({
  ...entry,
  ...(Array.isArray(entry.loaders) && { loaders: (entry.loaders as Part[]).map((loader) => ({ ...loader, ratings: ratingsInColumns(loader.ratings as Part[]) })) }),
});

const at = (entry: unknown, path: readonly string[]): unknown => path.reduce<unknown>((held, key) => (held as Part | undefined)?.[key], entry);

/** What stands at a field as headings number it: `loaders[2].breakout` is the second. */
const valueAt = (entry: Part, field: string) => at(entry, field.split(/[.[\]]+/).map((key) => (/^\d+$/.test(key) ? String(Number(key) - 1) : key)));

const isAmount = (value: unknown): value is { value: number; unit: string } => typeof value === 'object' && value !== null && 'unit' in value;
const isMoney = (value: unknown): value is { value: number; currency: string } => typeof value === 'object' && value !== null && 'currency' in value;
const unitOf = (value: unknown): string | undefined => (isAmount(value) ? value.unit : isMoney(value) ? value.currency : undefined);

/** Three decimals behind up to three digits could be thousands: a fourth decimal makes it one thing. */
const number = (value: number): string | number => (/^[1-9]\d{0,2}\.\d{3}$/.test(String(value)) ? `${value}0` : value);

function cell(value: unknown, columnUnit: string | undefined): string | number {
  if (value === undefined) return '';
  if (typeof value === 'number') return number(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.map((each) => (Array.isArray(each) ? each.join(' + ') : cell(each, columnUnit))).join('; ');
  const unit = unitOf(value);
  if (unit === undefined) return String(value);
  const figure = number((value as { value: number }).value);
  return unit === columnUnit ? figure : `${figure} ${unit}`;
}

/** Where nothing holds nothing: an empty object says as little as none. */
const pruned = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(pruned);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, held]) => [key, pruned(held)] as const);
  return Object.fromEntries(entries.filter(([, held]) => held !== undefined && !(typeof held === 'object' && held !== null && !Array.isArray(held) && Object.keys(held).length === 0)));
};

const inOrder = (entry: Part): Part => ({
  ...entry,
  ...(Array.isArray(entry.loaders) && {
    loaders: (entry.loaders as Part[]).map((loader) => ({
      ...loader, ratings: [...(loader.ratings as { ahead: { value: number; unit: Unit } }[])].sort((a, b) => toSi(a.ahead) - toSi(b.ahead)),
    })),
  }),
});

/** Whether two entries say the same, in whatever units and order. */
const says = (entry: object) => canonicalJson(inSi(pruned(inOrder(entry as Part))));

function fieldsOf(sheet: SheetKind, entries: readonly Part[]): string[] {
  const most = (key: string) => Math.max(0, ...entries.map((entry) => (Array.isArray(entry[key]) ? (entry[key] as unknown[]).length : 0)));
  return headingsOf(sheet).flatMap(({ field }) => {
    const [key = ''] = field.split('[', 1);
    if (!field.includes('[]')) return [field];
    const count = key in groups ? Math.max(1, most(key)) : 1;
    return Array.from({ length: count }, (_, index) => field.replace('[]', `[${index + 1}]`));
  });
}

/** All headings of one thing beside each other, the first of it before the second. */
const byThing = (fields: readonly string[]) => {
  const thing = (field: string) => /^\w+\[/.exec(field)?.[0] ?? field;
  const order = [...new Set(fields.map(thing))];
  const rank = (field: string) => order.indexOf(thing(field));
  const numberOf = (field: string) => Number(/\[(\d+)\]/.exec(field)?.[1] ?? 0);
  return [...fields].sort((a, b) => rank(a) - rank(b) || numberOf(a) - numberOf(b));
};

/**
 * Entries of a catalogue as a table that reads back as the same entries. A column in which all amounts are of one unit says
 * it in its heading, and its cells are numbers; columns that would be blank are left out, but for those a row needs.
 */
export function tableOf(sheet: SheetKind, entries: readonly (MachineDocument | UnitDocument)[]): TableOfRows {
  const plain = entries.map((entry) => inColumns(entry as unknown as Part));
  const known = new Map<string, Heading>(headingsOf(sheet).map((heading) => [heading.field, heading]));
  const columns = byThing(fieldsOf(sheet, plain)).flatMap((field) => {
    const [list = ''] = field.split('[', 1);
    const values = plain.map((entry) => {
      const held = at(entry, [list]);
      return noneIn[list] === field && Array.isArray(held) && held.length === 0 ? 'none' : valueAt(entry, field);
    });
    if (values.every((value) => value === undefined) && !known.get(field)?.needed) return [];
    const units = [...new Set(values.flat().map(unitOf).filter((unit) => unit !== undefined))];
    const unit = units.length === 1 ? units[0] : undefined;
    const heading = headingText(sheet, field);
    return [{ heading: unit ? `${heading} (${unit})` : heading, cells: values.map((value) => cell(value, unit)) }];
  });
  const headings = columns.map(({ heading }) => heading);
  const rows = plain.map((_, index) => columns.map(({ cells }) => cells[index]!));

  const table: Table & { sheet: SheetKind } = {
    sheet, headings, rows: rows.map((row) => row.map(String)), findings: [],
    dialect: { separator: ',', decimalMark: '.', decimalMarkFrom: 'assumed' },
  };
  const currency = entries.flatMap((entry) => /"currency":"([A-Z]{3})"/.exec(JSON.stringify(entry))?.[1] ?? [])[0] ?? 'USD';
  const read = allAtOnce(readingRows(table, mappingOf(matchColumns(table)), { currency, units: 'us', locale: 'en-US' }));
  const back = new Map(read.entries.map(({ entry }) => [entry.id, says(entry)]));
  return { rows: [headings, ...rows], notHeld: entries.filter((entry) => back.get(entry.id) !== says(entry)).map(({ id }) => id) };
}
