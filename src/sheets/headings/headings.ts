import type { SheetKind } from '../finding.ts';
import type { Heading } from './heading.ts';
import { machineHeadings } from './machines.ts';
import { unitHeadings } from './units.ts';

export type { Heading, Takes } from './heading.ts';

const bySheet: Readonly<Record<SheetKind, readonly Heading[]>> = { machines: machineHeadings, units: unitHeadings };

/** The documented headings of a table, in the order to show them. */
export const headingsOf = (sheet: SheetKind): readonly Heading[] => bySheet[sheet];

const byField = {
  machines: new Map(machineHeadings.map((heading) => [heading.field, heading])),
  units: new Map(unitHeadings.map((heading) => [heading.field, heading])),
};

const numbered = /\[(\d+)\]/;

/** The heading that a field of an entry goes by, with its number where there may be several: `loaders[2].breakout`. */
export function headingOf(sheet: SheetKind, field: string): Heading | undefined {
  return byField[sheet].get(field.replace(numbered, '[]'));
}

/** The things there may be several of, by the key of their list, with their word in headings. */
export const groups: Readonly<Record<string, string>> = {
  tyres: 'tyre', loaders: 'loader', decks: 'deck', transmissions: 'transmission', cabs: 'cab', typicalPrices: 'used price',
};

/** The column of each whose cell may say `none`: that there is no such thing, which a blank doesn't. */
export const noneIn: Readonly<Record<string, string>> = {
  tyres: 'tyres[1].type', loaders: 'loaders[1].id', decks: 'decks[1].id', transmissions: 'transmissions[1].kind', cabs: 'cabs[1].id',
  typicalPrices: 'typicalPrices[1].price',
};

/** A field as the file's heading names it: the first of several without its number. */
export function headingText(sheet: SheetKind, field: string): string {
  const { heading = field } = headingOf(sheet, field) ?? {};
  const [key = ''] = field.split('[', 1);
  const number = Number(numbered.exec(field)?.[1] ?? 1);
  const word = groups[key];
  return number > 1 && word && heading.startsWith(word) ? `${word} ${number}${heading.slice(word.length)}` : heading;
}
