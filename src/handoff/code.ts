import { codeNumber } from './code-number.ts';
import type { Field, Keys } from './fields.ts';
import { even, type Coder, type Odds } from './numeral.ts';
import { isMetric, takes, type System } from './system.ts';

/**
 * A document through a coder, one description for both ways: while writing, `value` is what the field carries and
 * comes back as it is; while reading it is undefined and what was written comes back.
 */
type Tree = Readonly<Record<string, unknown>>;

/** How long lists are; the last stands for "and more". */
const lengthOdds: Odds = [6, 12, 14, 12, 8, 6, 4, 2];
/** Most lists name their words in the order of the questions. */
const orderOdds: Odds = [15, 1];
/** The unit most people type, the other system's, and any other. */
const unitOdds = { own: 24, other: 2, rare: 1 };
const currencyOdds = { first: 12, known: 2, other: 1 };
const sixteenths = 16;
const letters = 26;
const firstLetter = 65;

const placeIn = (words: readonly string[], word: unknown) => (word === undefined ? undefined : words.indexOf(word as string));

function codeLength(coder: Coder, length: number | undefined): number {
  const more = lengthOdds.length - 1;
  const here = coder.choose(lengthOdds, length === undefined ? undefined : Math.min(length, more));
  return here < more ? here : more + codeLength(coder, length === undefined ? undefined : length - more);
}

/** Words in the order of the layout: of those still to come, is this one among them? That costs as little as can be. */
function codeSubset(of: readonly string[], count: number, coder: Coder, chosen: readonly string[] | undefined): string[] {
  let wanted = count;
  return of.filter((word, index) => {
    const odds = [of.length - index - wanted, wanted];
    const isIn = coder.choose(odds, chosen && Number(chosen.includes(word))) === 1;
    if (isIn) wanted--;
    return isIn;
  });
}

function codeWords(of: readonly string[], isRanked: boolean, coder: Coder, chosen: readonly string[] | undefined): string[] {
  const count = codeLength(coder, chosen?.length);
  const inOrder = chosen?.every((word, index) => index === 0 || of.indexOf(word) > of.indexOf(chosen[index - 1]!));
  if (!isRanked && count <= of.length && coder.choose(orderOdds, inOrder === undefined ? undefined : Number(!inOrder)) === 0) return codeSubset(of, count, coder, chosen);
  return Array.from({ length: count }, (_, index) => of[coder.choose(even(of.length), placeIn(of, chosen?.[index]))]!);
}

function codeKeys(keys: Keys, coder: Coder, system: System, value: Tree | undefined): Tree {
  const said: Record<string, unknown> = {};
  for (const [name, key] of Object.entries(keys)) {
    if (key.field.is === 'kept-back') continue;
    const often = 'often' in key ? key.often : key.beside in said ? sixteenths - 1 : 1;
    const isSaid = value && Number(value[name] !== undefined);
    if (coder.choose([sixteenths - often, often], isSaid) === 1) said[name] = code(key.field, coder, system, value?.[name]);
  }
  return said;
}

function codeUnit({ units, us, metric }: Field & { is: 'amount' }, coder: Coder, system: System, unit: string | undefined): string {
  const own = system === 'us' ? us : metric;
  const odds = units.map((each) => (each === own ? unitOdds.own : each === us || each === metric ? unitOdds.other : unitOdds.rare));
  return units[coder.choose(odds, placeIn(units, unit))]!;
}

function codeCurrency(known: readonly string[], coder: Coder, currency: string | undefined): string {
  const odds = [...known.map((_, index) => (index === 0 ? currencyOdds.first : currencyOdds.known)), currencyOdds.other];
  const at = placeIn(known, currency);
  const index = coder.choose(odds, at === -1 ? known.length : at);
  const letter = (place: number) => {
    const code = currency?.codePointAt(place);
    return String.fromCodePoint(firstLetter + coder.choose(even(letters), code === undefined ? undefined : code - firstLetter));
  };
  return known[index] ?? [0, 1, 2].map(letter).join('');
}

function codeEither(fields: readonly Field[], coder: Coder, system: System, value: unknown): unknown {
  const open = fields.filter(({ is }) => is !== 'kept-back');
  const index = coder.choose(even(open.length), value === undefined ? undefined : open.findIndex((field) => takes(field, value)));
  return code(open[index]!, coder, system, value);
}

/** One field's value, written or read. */
export function code(field: Field, coder: Coder, system: System, value: unknown): unknown {
  switch (field.is) {
    case 'choice':
      return field.of[coder.choose(even(field.of.length), placeIn(field.of, value))]!;
    case 'yes-no':
      return coder.choose(even(2), value === undefined ? undefined : Number(value)) === 1;
    case 'number':
      return codeNumber(coder, value as number | undefined);
    case 'amount': {
      const amount = value as { value: number; unit: string } | undefined;
      const unit = codeUnit(field, coder, system, amount?.unit);
      return { value: codeNumber(coder, amount?.value), unit };
    }
    case 'money': {
      const money = value as { value: number; currency: string } | undefined;
      const currency = codeCurrency(field.currencies, coder, money?.currency);
      return { value: codeNumber(coder, money?.value), currency };
    }
    case 'several':
      return codeWords(field.of, field.order, coder, value as string[] | undefined);
    case 'record':
      return codeKeys(field.keys, coder, system, value as Tree | undefined);
    case 'records': {
      const all = value as Tree[] | undefined;
      return Array.from({ length: codeLength(coder, all?.length) }, (_, index) => codeKeys(field.keys, coder, system, all?.[index]));
    }
    case 'kinds': {
      const all = value as Tree[] | undefined;
      const kinds = codeWords(Object.keys(field.of), false, coder, all?.map((each) => each[field.key] as string));
      return kinds.map((kind, index) => ({ [field.key]: kind, ...codeKeys(field.of[kind]!, coder, system, all?.[index]) }));
    }
    case 'either':
      return codeEither(field.of, coder, system, value);
    default:
      throw new TypeError('what is kept back is never written');
  }
}

/** A whole document by its keys, and the system of units most of its amounts are in. */
export function codeDocument(keys: Keys, coder: Coder, value: Tree | undefined): Tree {
  const system = coder.choose(even(2), value && Number(isMetric(keys, value))) === 1 ? 'metric' : 'us';
  return codeKeys(keys, coder, system, value);
}
