import { features } from '../catalogue/schema.ts';
import type { SheetKind } from './finding.ts';
import { groups, headingText, noneIn } from './headings/headings.ts';

/** What was read of one row: values by field, and the fields whose cells were faulty. */
export interface RowValues {
  values: ReadonlyMap<string, unknown>;
  bad: ReadonlySet<string>;
  /** Fields of a list whose first cell says that there is none. */
  none: ReadonlySet<string>;
}

/** A part that a row can't hold: its cells are left out, and the fault stands at the first of them. */
export interface Incomplete {
  field: string;
  /** Headings of the cells it would need; none where it is there and said not to be. */
  headings: readonly string[];
}

type Part = Record<string, unknown>;

/** What a part needs to be one, by its place in an entry. */
const needs: Readonly<Record<SheetKind, Readonly<Record<string, readonly string[]>>>> = {
  machines: {
    centreOfMassHeight: ['value', 'source'], rops: ['kind'], listPrice: ['price', 'year'], tyres: ['type', 'widthOverRear'], decks: ['width'],
    cabs: ['heat', 'airConditioning'], transmissions: ['kind'], typicalPrices: ['price', 'age', 'hours'],
  },
  units: {},
};
const fittings: readonly string[] = ['midPto', 'backhoe', ...features, 'loaders', 'decks', 'cabs', 'transmissions'];
const shortNames: Readonly<Record<string, string>> = { loaders: 'loader', decks: 'deck', cabs: 'cab' };

const put = (into: Part, [key = '', ...rest]: readonly string[], value: unknown) => {
  if (rest.length === 0) into[key] = value;
  else put((into[key] ??= {}) as Part, rest, value);
};

/** The cells of one part, as a tree: of several things each has its number. */
function treeOf(values: ReadonlyMap<string, unknown>) {
  const tree: Part = {};
  for (const [field, value] of values) put(tree, field.split(/[.[\]]+/), value);
  return tree;
}

const distances = { pins: { value: 0, unit: 'mm' }, ahead500: { value: 500, unit: 'mm' } } as const;

/** One or two ratings from the columns that hold them; a distance or a height alone is none. */
function ratingsOf(cells: Part): { ratings: Part[]; lacks?: readonly string[] } {
  const { height, bucketOn } = cells;
  const beside = { ...(height !== undefined && { height }), ...(bucketOn !== undefined && { bucketOn }) };
  const pairs = [[cells.pins, distances.pins], [cells.ahead500, distances.ahead500], [cells.other, cells.otherAhead], [cells.further, cells.furtherAhead]];
  const ratings = pairs.flatMap(([load, ahead]) => (load !== undefined && ahead !== undefined ? [{ ahead, ...beside, load }] : []));
  if (cells.other !== undefined && cells.otherAhead === undefined) return { ratings, lacks: ['otherAhead'] };
  if (cells.further !== undefined && cells.furtherAhead === undefined) return { ratings, lacks: ['furtherAhead'] };
  if (cells.otherAhead !== undefined && cells.other === undefined) return { ratings, lacks: ['other'] };
  if (cells.furtherAhead !== undefined && cells.further === undefined) return { ratings, lacks: ['further'] };
  return { ratings, ...(ratings.length === 0 && Object.keys(cells).length > 0 && { lacks: ['pins'] }) };
}

/** Makes entries of one table's rows. */
export function entryOf(sheet: SheetKind, { values, bad, none }: RowValues, ifPart: (field: string) => boolean): { entry: Part; incomplete: Incomplete[] } {
  const tree = treeOf(values);
  const incomplete: Incomplete[] = [];
  const lacking = (field: string, keys: readonly string[]) =>
    incomplete.push({ field: [...values.keys()].find((each) => each.startsWith(field)) ?? field, headings: keys.map((key) => headingText(sheet, `${field}.${key}`)) });
  const missing = (part: Part, key: string) => (needs[sheet][key] ?? []).filter((each) => part[each] === undefined);
  /** The cells a part can't do without, that were faulty and have been told. */
  const spoilt = (prefix: string) => [...bad].some((field) => field.startsWith(`${prefix}.`) && ifPart(field));

  const listOf = (key: string): Part[] | undefined => {
    const numbers = Object.keys((tree[key] ?? {}) as Part).map(Number).sort((a, b) => a - b);
    if (none.has(key)) {
      if (numbers.length > 0) incomplete.push({ field: noneIn[key]!, headings: [] });
      return numbers.length > 0 ? undefined : [];
    }
    const parts = numbers.flatMap((number) => {
      const part = (tree[key] as Part)[number] as Part;
      const prefix = `${key}[${number}]`;
      if (key === 'loaders') {
        const { ratings, lacks } = ratingsOf((part.ratings ?? {}) as Part);
        const wrong = spoilt(`${prefix}.ratings`);
        if (lacks && !wrong) lacking(`${prefix}.ratings`, lacks);
        part.ratings = wrong || lacks ? [] : ratings;
        if (bad.has(`${prefix}.id`)) return [];
        return [part];
      }
      const lacks = missing(part, key);
      if (!spoilt(prefix) && lacks.length === 0) return [part];
      if (lacks.length > 0 && !spoilt(prefix)) lacking(prefix, lacks);
      return [];
    });
    // Between the points that are left a price would be guessed from others than the dealer's.
    if (key === 'typicalPrices' && (parts.length < numbers.length || [...bad].some((field) => field.startsWith(`${key}[`)))) return undefined;
    return parts.length > 0 ? parts : undefined;
  };

  const entry: Part = {};
  for (const key of Object.keys(tree)) {
    if (sheet === 'machines' && key in groups) continue;
    const part = tree[key] as Part;
    const lacks = missing(part, key);
    if (lacks.length > 0) lacking(key, lacks);
    else entry[key] = part;
  }
  if (sheet === 'machines') {
    for (const key of Object.keys(groups)) {
      const list = listOf(key);
      if (list) entry[key] = list;
    }
    for (const key of fittings) {
      const parts = (Array.isArray(entry[key]) ? entry[key] : entry[key] === undefined ? [] : [entry[key]]) as Part[];
      parts.forEach((part, index) => {
        part.availability ??= 'unknown';
        const short = shortNames[key];
        if (short) part.id ??= `${String(entry.id)}-${short}${index > 0 ? `-${index + 1}` : ''}`;
        if (key === 'loaders') part.name ??= entry.name;
      });
    }
  } else if (entry.rops) {
    (entry.rops as Part).kind ??= 'unknown';
  }
  return { entry, incomplete };
}
