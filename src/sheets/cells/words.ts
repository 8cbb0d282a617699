import { nearest } from '../../documents/nearest.ts';
import { folded } from '../../units/folded.ts';
import { fault, kept, type CellContext, type CellReading } from './cell.ts';

/** In small letters, without accents, blanks and hyphens alike. */
const hyphened = (word: string) =>
  folded(word).replace(/[\s_-]+/g, '-');

const yes = ['yes', 'y', 'true', 'x', '1', 'ja', 'wahr', 'oui', 'vrai', 'si', 'verdadero'];
const no = ['no', 'n', 'false', '0', 'nein', 'falsch', 'non', 'faux', 'falso'];

export function readYesNo(cell: string): CellReading {
  const word = hyphened(cell);
  if (yes.includes(word)) return { value: true };
  return no.includes(word) ? { value: false } : fault('cell.yes-no', {});
}

export function readChoice(cell: string, words: readonly string[], numbers: boolean): CellReading {
  const word = words.find((each) => hyphened(each) === hyphened(cell));
  if (word === undefined) return fault('cell.word', { words, nearest: nearest(cell, words) });
  return { value: numbers ? Number(word) : word };
}

const idForm = /^[a-z0-9]+(-[a-z0-9]+)*$/;
export const isId = (cell: string) => idForm.test(cell);
const scientific = /^\d+([.,]\d+)?e[+-]?\d+$/i;
const month = '(jan|feb|mar|m[aä]r|apr|ma[iy]|jun|jul|aug|sep|o[ck]t|nov|de[cz])[a-zä]*\\.?';
/** What a spreadsheet makes of "3-12": it takes it for a day. */
const likeDay = new RegExp(`^(\\d{1,2}[-/. ]${month}([-/. ]\\d{2,4})?|${month}[-/. ]\\d{1,4}|\\d{1,4}[-/.]\\d{1,2}[-/.]\\d{1,4})$`, 'i');

/** The id that a stock number or a name is nearest to. */
export const idOf = (written: string): string => hyphened(written.trim()).replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '');

/**
 * An id: small letters, digits, single hyphens. Capitals, accents, blanks, points, strokes and underscores between them are
 * turned into that, with a notice; anything else is a fault.
 */
export function readId(cell: string): CellReading {
  if (scientific.test(cell)) return fault('cell.id-mangled', {});
  if (likeDay.test(cell)) return kept(idOf(cell), 'cell.id-date', { id: idOf(cell) }, 'query');
  if (idForm.test(cell)) return { value: cell };
  const id = idOf(cell);
  return /^[\p{L}\p{N}][\p{L}\p{M}\p{N}\s._/-]*$/u.test(cell) && idForm.test(id)
    ? kept(id, 'cell.id-changed', { id })
    : fault('cell.id', { nearest: id || undefined });
}

export function readLink(cell: string): CellReading {
  // No name or password before the host, which could pass for the host itself.
  return /^https:\/\/[^\s/?#\\@]+([/?#][^\s\\]*)?$/i.test(cell) ? { value: cell.replace(/^https/i, 'https') } : fault('cell.link', {});
}

const daysOfMonth = (year: number, month: number) =>
  (month === 2 ? (year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31);

function day(year: number, month: number, date: number): string | undefined {
  if (year < 1900 || year > 2200 || month < 1 || month > 12 || date < 1 || date > daysOfMonth(year, month)) return undefined;
  return `${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`;
}

/** A day: 2026-09-14 as documented, or as a spreadsheet turns it around: 14.09.2026, 9/14/2026. Where both orders give a day, by the dealer's region, with a notice. */
export function readDay(cell: string, { locale }: CellContext): CellReading {
  const iso = /^(\d{4})[-/](\d{1,2})[-/](\d{1,2})(?:[T ]00:00(?::00)?)?$/.exec(cell);
  const found = (value: string | undefined): CellReading => (value ? { value } : fault('cell.day', {}));
  if (iso) return found(day(Number(iso[1]), Number(iso[2]), Number(iso[3])));
  const other = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})$/.exec(cell);
  if (!other) return fault('cell.day', {});
  const [first, second, year] = [Number(other[1]), Number(other[3]), Number(other[4])];
  const dayFirst = day(year, second, first);
  const monthFirst = other[2] === '.' ? undefined : day(year, first, second);
  if (!dayFirst || !monthFirst || dayFirst === monthFirst) return found(dayFirst ?? monthFirst);
  const value = /-US$/i.test(locale) ? monthFirst : dayFirst;
  return kept(value, 'cell.day-assumed', { day: value });
}
