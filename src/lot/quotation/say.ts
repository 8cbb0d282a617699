import { sayAddition, type Voice } from '../../reasons/say.ts';
import type { Taxable } from '../../catalogue/schema.ts';
import type { AdditionEntry } from '../../reasons/schema.ts';
import { dayIn } from '../../units/day.ts';
import { formatNumber } from '../../units/formats.ts';
import { inUnit, type Quantity } from '../../units/quantity.ts';
import { showAmount, showTyped } from '../../units/show.ts';
import type { LotWords } from '../words/words.ts';
import { digitsOf } from './money.ts';
import type { Line, Quotation } from './quotation.ts';

/** A delivered price in words: lines as they stand under each other, what follows, and that it is no offer. */
export interface SaidQuotation {
  title: string;
  noOffer: string;
  asOf: string;
  lines: readonly { name: string; amount: string; notes: readonly string[] }[];
  total: { name: string; amount: string; notes: readonly string[] };
  loans?: { heading: string; says: readonly string[]; notes: readonly string[] };
}

/** A quotation in words; amounts to the coin, as they add up. */
export function sayQuotation({ machine, lines, total, without, loans, asOf, currency }: Quotation, { voice, lot: { quotation: words } }: { voice: Voice; lot: LotWords }): SaidQuotation {
  const { reader } = voice;
  const about: Voice = { ...voice, machine };
  const digits = digitsOf(currency);
  const money = (amount: number) => formatNumber(amount, reader.locale, { style: 'currency', currency, minimumFractionDigits: digits, maximumFractionDigits: digits });
  const span = ({ low, high }: { low: number; high: number }) => (low === high ? money(low) : words.range(money(low), money(high)));
  const listed = (all: readonly Taxable[]) => voice.words.list(all.map((each) => words.taxables[each]));
  const taxNotes = ({ parts, free, on }: NonNullable<Line['tax']>) => [
    ...(parts.length > 1 ? [words.taxedOn(voice.words.list(parts.map((part) => `${words.taxables[part.of]} ${span(part.on)}`)), span(on))] : []),
    ...(free.length > 0 ? [words.untaxed(listed(free))] : []),
  ];
  const name = ({ kind, addition, labour, distance, tax, tradeIn }: Line): string => {
    const what = addition ? sayAddition({ ...addition, for: [...addition.for] } as AdditionEntry, about) : '';
    if (kind === 'machine') return voice.nameOf(machine) || words.kinds.machine;
    if (kind === 'addition') return what;
    if (kind === 'fitting') return labour ? words.fitting(what, showAmount(labour.hours, 'hours', reader), money(labour.rate)) : words.fittingOf(what);
    if (kind === 'delivery' && distance !== undefined) return words.delivery(showDistance(distance, voice));
    if (kind === 'tax' && tax) return words.tax(formatNumber(tax.share, reader.locale, { style: 'percent', maximumFractionDigits: 3 }), listed(tax.parts.map(({ of }) => of)));
    if (kind === 'trade-in' && tradeIn) return words.tradeIn(tradeIn.kind);
    return words.kinds[kind];
  };
  return {
    title: words.title, noOffer: words.noOffer, asOf: words.asOf(dayIn(reader.locale, asOf)),
    lines: lines.map((line) => ({
      name: name(line), amount: line.amount ? (line.free ? words.free : span(line.amount)) : '',
      notes: [...(line.tax ? taxNotes(line.tax) : []), ...(line.unsaid ? [words.unsaid[line.unsaid]] : []), ...(line.tradeIn?.owed !== undefined ? [words.owed(money(line.tradeIn.owed))] : [])],
    })),
    total: {
      name: words.total, amount: total ? span(total) : '',
      notes: [...(total ? [] : [words.noTotal]), ...(total && without.length > 0 ? [words.without(voice.words.list(without.map((line) => (line.kind === 'trade-in' ? words.kinds['trade-in'] : name(line)))))] : [])],
    },
    ...(loans && loans.length > 0 && {
      loans: {
        heading: words.loansHeading,
        says: loans.map((loan) => words.loan(
          money(loan.deposit), showAmount(loan.months, 'months', reader), money(loan.instalment), showAmount(loan.rate, 'annual-rate', reader), money(loan.total))),
        notes: [...(without.some(({ kind }) => kind !== 'trade-in') ? [words.loansLeaveOut] : []), words.lender],
      },
    }),
  };
}

/** A way to drive, in whole miles or kilometres. */
function showDistance(distance: Quantity<'length'>, { reader }: Voice): string {
  const unit = reader.units === 'us' ? 'mi' : 'km';
  return showTyped({ value: Math.round(inUnit('length', distance, unit)), unit }, reader);
}
