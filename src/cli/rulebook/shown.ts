import type { Refusal } from '../../trade/book.ts';
import type { FigureRule } from '../../trade/record.ts';
import { formatNumber, pluralOf } from '../../units/formats.ts';
import { inUnit, kindOfUnit, toSi, type Unit } from '../../units/quantity.ts';
import type { UnitWords } from '../../units/show.ts';
import type { Refused, Written } from './dealers-figures.ts';
import type { Voice } from './voice.ts';

/** A number whole, as it was written, with the marks of the language; what is counted may be a year, which has none. */
const showNumber = (value: number, unit: string, { own: { locale } }: Voice) =>
  formatNumber(value, locale, { maximumSignificantDigits: 15, useGrouping: unit !== 'count' });

const raised: Readonly<Record<string, string>> = { 2: '²', 3: '³' };
const symbolOf = (unit: string) => unit.replaceAll(/(?<=\p{L})[23]/gu, (power) => raised[power]!);

function unitWord(unit: string, count: number, { words, own }: Voice): string {
  const known: UnitWords = { ...words.units, ...own.units };
  const word = Object.hasOwn(known, unit) ? known[unit]! : symbolOf(unit);
  return typeof word === 'string' ? word : word[pluralOf(count, own.locale) === 'one' ? 'one' : 'other'];
}

function withUnit(shown: string, count: number, unit: string, voice: Voice): string {
  const word = unitWord(unit, count, voice);
  return word === '' ? shown : `${shown}${word === '°' ? '' : '\u00a0'}${word}`;
}

/** @example showWritten({ value: 2800, unit: 'lb/yd3' }, german) // '2.800 lb/yd³' */
export const showWritten = ({ value, unit }: Written, voice: Voice) => withUnit(showNumber(value, unit, voice), value, unit, voice);

/** A dealer's own value as he wrote it, and in the book's unit beside it where his is another. */
export function showDealers(written: Written, { unit }: FigureRule, voice: Voice): string {
  const own = showWritten(written, voice);
  const kind = kindOfUnit(unit);
  if (written.unit === unit || kind === undefined) return own;
  const value = inUnit(kind, toSi({ value: written.value, unit: written.unit as Unit }), unit as never);
  return `${own} (${showWritten({ value: Number(value.toPrecision(4)), unit }, voice)})`;
}

/** A share also as percent, which people say. */
export const showPercent = ({ value, unit }: Written, { own: { locale } }: Voice) =>
  unit === 'ratio' ? formatNumber(value, locale, { style: 'percent', maximumSignificantDigits: 12 }) : undefined;

function showBounds(least: number, most: number, unit: string, voice: Voice): string {
  const [from, to] = [least, most].map((bound) => showNumber(bound, unit, voice)) as [string, string];
  return withUnit(voice.own.rangeOf(from, to), most, unit, voice);
}

/** The range within which a figure makes sense; none where there is no other value. */
export const showRange = ({ value, unit, valid: [least, most] }: FigureRule, voice: Voice): string | undefined =>
  (least === value && most === value ? undefined : showBounds(least, most, unit, voice));

/** What would have been taken in place of a value that is refused. */
function showRefusal(refusal: Refusal, voice: Voice): string {
  const { refusals, kinds } = voice.own;
  switch (refusal.why) {
    case 'no-figure': return refusals['no-figure'];
    case 'not-to-change': return refusals['not-to-change'](kinds[refusal.kind]);
    case 'other-unit': return refusals['other-unit'](unitWord(refusal.unit, Infinity, voice));
    case 'unsafe': return refusals.unsafe[refusal.safer](showWritten(refusal, voice));
    case 'out-of-range': return refusals['out-of-range'](showBounds(refusal.least, refusal.most, refusal.unit, voice));
  }
}

export const showRefused = ({ value, unit = '', refusal }: Refused, voice: Voice) =>
  voice.own.refused(showWritten({ value, unit }, voice), showRefusal(refusal, voice));
