import { nearest } from '../documents/nearest.ts';
import { folded } from '../units/folded.ts';
import { unitNamed } from './cells/numbers.ts';
import type { SheetKind } from './finding.ts';
import { groups, headingOf, headingsOf, headingText, type Takes } from './headings/headings.ts';

/** A column that was matched to a heading, or might be. */
export interface ColumnMatch {
  /** From 1. */
  column: number;
  /** As the file has it. */
  heading: string;
  /** What it was taken for; undefined where nothing is near enough. */
  field: string | undefined;
  /** What its bare numbers are in, where the heading says so: a unit such as `lb`, a currency, `%`. */
  unit: string | undefined;
  /** `exact`: the documented heading; `same`: another way to write it; `near`: a guess to be confirmed; `none`. */
  sure: 'exact' | 'same' | 'near' | 'none';
  /** Fields whose headings are nearest, the nearest first, each with its documented heading. */
  nearest: readonly { field: string; heading: string }[];
}

/** Whether a heading is one that is documented, by whatever name; what is only near is the dealer's to confirm. */
export const isSure = ({ sure }: Pick<ColumnMatch, 'sure'>) => sure === 'exact' || sure === 'same';

/** What a column is taken for; undefined leaves it out. */
export interface ColumnTaken {
  field: string;
  /** What its bare numbers are in: a unit, a currency, `%`. */
  unit?: string;
}

/** One entry a column of the file, in its order. */
export type Mapping = readonly (ColumnTaken | undefined)[];

/** Letters and digits in small, without accents, single blanks between. */
export const plain = (heading: string) =>
  folded(heading).replace(/[^\p{L}\p{N}]+/gu, ' ').trim();

/** As {@link plain}, without what stands in brackets at its end: its unit. */
const withoutUnit = (heading: string) => plain(heading.replace(/[([][^[\]]*[)\]]\s*$/, ''));

const spellings = (sheet: SheetKind) => {
  const known = new Map<string, { field: string; sure: 'exact' | 'same' }>();
  for (const { field, heading, also = [] } of headingsOf(sheet)) {
    known.set(withoutUnit(heading), { field, sure: 'exact' });
    for (const other of also) if (!known.has(plain(other))) known.set(plain(other), { field, sure: 'same' });
  }
  return known;
};
const known = { machines: spellings('machines'), units: spellings('units') };

const words = [...Object.values(groups), 'tire', 'typical price'].map(plain);
const numbered = new RegExp(`^(${words.join('|')}) (\\d{1,2})(?= |$)`);
const mostOfAThing = 20;

/** A heading of several things with the number taken out of it: "loader 2 breakout". */
function unnumbered(heading: string): { heading: string; number: number | undefined } {
  const found = numbered.exec(heading);
  const number = Number(found?.[2] ?? 0);
  return found && number >= 1 && number <= mostOfAThing
    ? { heading: heading.replace(numbered, '$1'), number }
    : { heading, number: undefined };
}

/** A field with its number, where there may be several of its thing. */
const withNumber = (field: string, number: number | undefined) => (field.includes('[]') ? field.replace('[]', `[${number ?? 1}]`) : number === undefined ? field : undefined);

const unitOf = (heading: string, takes: Takes): string | undefined => {
  const said = /[([]([^[\]]*)[)\]]\s*$/.exec(heading)?.[1]?.trim();
  if (said === undefined) return undefined;
  if (takes.as === 'amount') return unitNamed(takes.of, said);
  if (takes.as === 'list') return unitOf(heading, takes.each);
  if (takes.as === 'money') return /^[a-z]{3}$/i.test(said) ? said.toUpperCase() : undefined;
  return takes.as === 'share' && said === '%' ? '%' : undefined;
};

const mostNear = 3;
/** Fields whose spellings are nearest, one after the other. */
function nearestFields(sheet: SheetKind, heading: string, number: number | undefined): { field: string; heading: string }[] {
  const left = new Set(known[sheet].keys());
  const found: { field: string; heading: string }[] = [];
  while (found.length < mostNear) {
    const word = nearest(heading, [...left]);
    if (word === undefined) return found;
    left.delete(word);
    const field = withNumber(known[sheet].get(word)!.field, number);
    if (field && !found.some((each) => each.field === field)) found.push({ field, heading: headingText(sheet, field) });
  }
  return found;
}

/** A heading longer than that is a sentence; measuring how far it is from each of ours would take its time. */
const longestHeading = 120;

/** A heading that is one of ours, in whatever spelling. */
function hitOf(sheet: SheetKind, heading: string): { field: string; sure: 'exact' | 'same' } | undefined {
  if (heading.length > longestHeading) return undefined;
  const { heading: bare, number } = unnumbered(withoutUnit(heading));
  const hit = known[sheet].get(bare) ?? known[sheet].get(unnumbered(plain(heading)).heading);
  const field = hit && withNumber(hit.field, number);
  return hit && field ? { field, sure: hit.sure } : undefined;
}

/** How many of some headings are ours: by that a file's separator is found. */
export const countKnown = (sheet: SheetKind, headings: readonly string[]) => headings.filter((heading) => hitOf(sheet, heading)).length;

/** What each column of a table is taken for, with how sure that is. */
export function matchColumns({ sheet, headings }: { sheet: SheetKind; headings: readonly string[] }): ColumnMatch[] {
  return headings.map((heading, index): ColumnMatch => {
    const hit = hitOf(sheet, heading);
    const field = hit?.field;
    const match = { column: index + 1, heading };
    if (hit && field) return { ...match, field, unit: unitOf(heading, headingOf(sheet, field)!.takes), sure: hit.sure, nearest: [{ field, heading: headingText(sheet, field) }] };
    const { heading: bare, number } = unnumbered(withoutUnit(heading.slice(0, longestHeading)));
    const near = bare === '' ? [] : nearestFields(sheet, bare, number);
    const [guess] = near;
    return { ...match, field: guess?.field, unit: guess && unitOf(heading, headingOf(sheet, guess.field)!.takes), sure: guess ? 'near' : 'none', nearest: near };
  });
}

/**
 * The matches as a mapping, for whoever has nothing to correct. A guess is left out, for a column taken for another is worse
 * than one that is missing: the reading names it with the nearest headings.
 */
export const mappingOf = (matches: readonly ColumnMatch[]): Mapping =>
  matches.map(({ field, unit, sure }) => (field === undefined || sure === 'near' ? undefined : { field, ...(unit && { unit }) }));
