import type { FigureRule } from '../../trade/record.ts';
import { inUnit, kindOfUnit, toSi, type Unit } from '../../units/quantity.ts';
import type { Refused, Written } from './dealers-figures.ts';
import type { RuleBookWords } from './words/en.ts';

/** A number whole, as it was written, with the marks of the language. */
const numberIn = (language: string) => new Intl.NumberFormat(language, { maximumSignificantDigits: 15 });
const percentIn = (language: string) => new Intl.NumberFormat(language, { style: 'percent', maximumSignificantDigits: 12 });

const withUnit = (shown: string, unit: string, words: RuleBookWords) => {
  const word = words.units[unit] ?? unit;
  return word === '' ? shown : `${shown}${word === '°' ? '' : '\u00a0'}${word}`;
};

/** @example showWritten({ value: 11.2, unit: 'lb/ft3' }, en) // '11.2 lb/ft³' */
export const showWritten = ({ value, unit }: Written, words: RuleBookWords) => withUnit(numberIn(words.language).format(value), unit, words);

/** A dealer's own value as he wrote it, and in the book's unit beside it where his is another. */
export function showDealers(written: Written, { unit }: FigureRule, words: RuleBookWords): string {
  const own = showWritten(written, words);
  const kind = kindOfUnit(unit);
  if (written.unit === unit || kind === undefined) return own;
  const value = inUnit(kind, toSi({ value: written.value, unit: written.unit as Unit }), unit as never);
  return `${own} (${showWritten({ value: Number(value.toPrecision(4)), unit }, words)})`;
}

/** A share also as percent, which people say. */
export const showPercent = ({ value, unit }: Written, words: RuleBookWords) =>
  unit === 'ratio' ? percentIn(words.language).format(value) : undefined;

/** The range within which a figure makes sense; none where there is no other value. */
export function showRange({ value, unit, valid: [least, most] }: FigureRule, words: RuleBookWords): string | undefined {
  if (least === value && most === value) return undefined;
  const number = numberIn(words.language);
  return withUnit(words.rangeOf(number.format(least), number.format(most)), unit, words);
}

export const showRefused = ({ value, unit = '', expected }: Refused, words: RuleBookWords) =>
  words.refused(showWritten({ value, unit }, words), expected);
