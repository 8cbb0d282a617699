import { headingOf, headingText, isSure, matchColumns, noneIn, readBase, tableOf, type Base, type Finding, type SheetKind, type Takes } from '../sheets/sheets.ts';

type Entry = Readonly<Record<string, unknown>>;
interface Cells {
  headings: readonly string[];
  rows: readonly (readonly string[])[];
}

/** What a JSON document comes to on the desk: a base, a table, or what keeps it from being either. */
export interface FromJson {
  base?: Base;
  tables: Partial<Record<SheetKind, Cells>>;
  findings: readonly Finding[];
}

const isEntry = (value: unknown): value is Entry => typeof value === 'object' && value !== null && !Array.isArray(value);
const isEntries = (value: unknown): value is Entry[] => Array.isArray(value) && value.length > 0 && value.every(isEntry);
const scalar = (value: unknown) => (value === true ? 'yes' : value === false ? 'no' : value === null || value === undefined ? '' : String(value));

/** Value and unit, or value and currency, as one writes them into a cell. */
const figure = ({ value, unit, currency, ...rest }: Entry): string | undefined =>
  (value !== undefined && (unit ?? currency) !== undefined && Object.keys(rest).length === 0 ? `${scalar(value)} ${scalar(unit ?? currency)}` : undefined);

const amountOr = (value: unknown) => (isEntry(value) ? (figure(value) ?? JSON.stringify(value)) : scalar(value));

/** A loader's ratings at the distances the headings know; what they can't hold stands under names of its own. */
function ratingCells(path: string, ratings: readonly Entry[]): [string, string][] {
  const others = ['other', 'further'];
  return ratings.flatMap(({ ahead, load, height, bucketOn }, index): [string, string][] => {
    const { value, unit } = isEntry(ahead) ? ahead : {};
    const fixed = value === 0 ? 'pins' : value === 500 && unit === 'mm' ? 'ahead500' : undefined;
    const key = fixed ?? others.shift() ?? String(index + 1);
    return [
      [`${path}.${key}`, amountOr(load)],
      ...(fixed ? [] : [[`${path}.${key}Ahead`, amountOr(ahead)] as [string, string]]),
      ...Object.entries({ height: amountOr(height), bucketOn: scalar(bucketOn) }).flatMap(([each, text]): [string, string][] => (text === '' ? [] : [[`${path}.${each}`, text]])),
    ];
  });
}

/** What stands in a list, as one writes it into a cell; undefined where it is a list of things with columns of their own. */
function listed(values: readonly unknown[]): string | undefined {
  const each = values.map((value) => (Array.isArray(value) ? value.map(scalar).join(' + ') : isEntry(value) ? figure(value) : scalar(value)));
  return each.includes(undefined) ? undefined : each.join('; ');
}

/** The cells of an entry by the path each stands at, as headings number it; whatever it holds, none of it is lost. */
function cellsOf(value: unknown, path = ''): [string, string][] {
  if (Array.isArray(value)) {
    if (value.length === 0) return [[noneIn[path] ?? path, 'none']];
    if (/^loaders\[\d+\]\.ratings$/.test(path) && value.every(isEntry)) return ratingCells(path, value);
    const whole = listed(value);
    return whole === undefined ? value.flatMap((each, index) => cellsOf(each, `${path}[${index + 1}]`)) : [[path, whole]];
  }
  if (!isEntry(value)) return [[path, scalar(value)]];
  const whole = figure(value);
  return whole === undefined ? Object.entries(value).flatMap(([key, each]) => cellsOf(each, path ? `${path}.${key}` : key)) : [[path, whole]];
}

/** The one unit of all figures of a column, which then goes into its heading: "0.6 m/s2" is no cell that a person would write. */
function unitIn(takes: Takes | undefined, cells: readonly string[]): string | undefined {
  if (takes?.as !== 'amount' && takes?.as !== 'money') return undefined;
  const units = new Set(cells.filter((cell) => cell !== '').map((cell) => /^[\d.]+ (\S+)$/.exec(cell)?.[1]));
  return units.size === 1 ? [...units][0] : undefined;
}

/** Entries of whatever shape as a table: a documented field under its heading, all else under its own name. */
function loose(sheet: SheetKind, entries: readonly Entry[]): Cells {
  const rows = entries.map((entry) => new Map(cellsOf(entry)));
  const columns = [...new Set(rows.flatMap((row) => [...row.keys()]))].map((path) => {
    const documented = headingOf(sheet, path);
    const cells = rows.map((row) => row.get(path) ?? '');
    const [heading, unit] = [documented ? headingText(sheet, path) : path, unitIn(documented?.takes, cells)];
    return unit === undefined ? { heading, cells } : { heading: `${heading} (${unit})`, cells: cells.map((cell) => cell.split(' ')[0]!) };
  });
  return { headings: columns.map(({ heading }) => heading), rows: entries.map((_, index) => columns.map(({ cells }) => cells[index]!)) };
}

/** Which table some headings are of: the one that knows more of them. */
export function kindOf(headings: readonly string[], otherwise: SheetKind = 'machines'): SheetKind {
  const known = (sheet: SheetKind) => matchColumns({ sheet, headings }).filter(isSure).length;
  const more = known('machines') - known('units');
  return more === 0 ? otherwise : more > 0 ? 'machines' : 'units';
}

const inTable = /^(machines|units)\[\d+\]/;

/** Sound entries by the columns of a catalogue; of those a catalogue wouldn't take, every row can still be mended. */
function tableFrom(sheet: SheetKind, entries: readonly Entry[], sound: boolean): Cells | undefined {
  if (!sound) return loose(sheet, entries);
  const { rows: [headings = [], ...rows], notHeld } = tableOf(sheet, entries as unknown as Parameters<typeof tableOf>[1]);
  return notHeld.length > 0 ? undefined : { headings: headings.map(String), rows: rows.map((row) => row.map(String)) };
}

/**
 * Takes a parsed document for a catalogue, for a dealer's file without machines, or for bare rows: `[{…}, …]`, or
 * `{machines: […], units: […]}` without a format. Faults inside machines and units are left to their table.
 */
export function fromJson(document: unknown): FromJson {
  if (isEntries(document)) {
    const sheet = kindOf(Object.keys(document[0]!));
    return { tables: { [sheet]: loose(sheet, document) }, findings: [] };
  }
  if (!isEntry(document)) return { tables: {}, findings: readBase(document).findings };
  const { machines, units, ...rest } = document;
  const lists = { machines, units };
  const sheets = (['machines', 'units'] as const).filter((sheet) => isEntries(lists[sheet]));
  const bare = rest.format === undefined && rest.dealer === undefined && sheets.length > 0;
  const whole = bare ? undefined : readBase(document);
  if (whole?.findings.some(({ place }) => !inTable.test(place ?? ''))) return { tables: {}, findings: whole.findings };
  const sound = (sheet: SheetKind) => whole !== undefined && !whole.findings.some(({ place }) => place?.startsWith(`${sheet}[`));
  const tables = Object.fromEntries(sheets.flatMap((sheet) => {
    const cells = tableFrom(sheet, lists[sheet] as Entry[], sound(sheet));
    return cells ? [[sheet, cells]] : [];
  })) as FromJson['tables'];
  if (bare) return { tables, findings: [] };
  // What no table can hold as it is stays as it is, and isn't to be mended here.
  const kept = Object.fromEntries(Object.entries(lists).filter(([sheet, list]) => list !== undefined && !(sheet in tables)));
  const { base, findings } = readBase({ ...rest, ...kept });
  return { ...(base && { base }), tables, findings };
}
