import { capital } from '../../reasons/capital.ts';
import type { Voice } from '../../reasons/say.ts';
import { saySpecs } from '../../reasons/say-specs.ts';
import type { Loan } from '../../ranking/price.ts';
import { formatNumber } from '../../units/formats.ts';
import { showAmount } from '../../units/show.ts';
import { digitsOf, toCoin } from '../quotation/money.ts';
import type { LotWords } from '../words/words.ts';
import { tableOf } from './chart.ts';
import type { ChartWords } from './chart-svg.ts';
import type { ComparedSide, OwningComparison, Pair } from './compare.ts';
import type { SidePart } from './side.ts';

/** A comparison in words: one text a paragraph, and a table as it is read. */
export interface SaidComparison {
  heading: string;
  assumptions: readonly string[];
  sides: readonly { name: string; says: readonly string[]; parts: readonly { name: string; amount: string }[]; causes: readonly string[] }[];
  pairs: readonly (readonly string[])[];
  spreadsHeading: string;
  table: { head: readonly string[]; rows: readonly (readonly string[])[] };
  noValuation: string;
}

interface Speaking {
  voice: Voice;
  lot: LotWords;
}

const names = ({ sides }: OwningComparison, { voice, lot }: Speaking) => sides.map(({ machine, year, hours }: ComparedSide) => lot.owning.named(
  voice.nameOf(machine), year === undefined ? '' : String(year), hours === undefined ? '' : showAmount(hours, 'hours', voice.reader)));

/** The same as short as tells them apart: by machine alone where each is another, then with the year. */
function shortNames(comparison: OwningComparison, speaking: Speaking): string[] {
  const { sides } = comparison;
  const { voice, lot } = speaking;
  const apart = (all: readonly string[]) => new Set(all).size === all.length;
  const machines = sides.map(({ machine }) => voice.nameOf(machine));
  const years = sides.map(({ year }, index) => lot.owning.named(machines[index]!, year === undefined ? '' : String(year), ''));
  return [machines, years].find(apart) ?? names(comparison, speaking);
}

function sayPair({ a, b, crossing, dropsOut, open }: Pair, comparison: OwningComparison, speaking: Speaking): string[] {
  const { lot: { owning }, voice: { reader, words } } = speaking;
  const [whole, all] = [names(comparison, speaking), shortNames(comparison, speaking)];
  const wholeName = (side: 'a' | 'b') => whole[side === 'a' ? a : b]!;
  const name = (side: 'a' | 'b') => all[side === 'a' ? a : b]!;
  const hours = (each: number) => showAmount(Math.round(each), 'per-year', reader);
  const costs = [a, b].map((index) => { const { cost } = comparison.sides[index]!; return 'parts' in cost ? cost.perYear : 0; });
  const apart = Math.abs(costs[0]! - costs[1]!);
  const [less, more] = costs[0]! <= costs[1]! ? ['a', 'b'] as const : ['b', 'a'] as const;
  const { throughout } = crossing;
  return [
    // Less than half a unit of money apart they are told the same.
    Math.round(apart) === 0 ? owning.costTheSame : owning.costsLess(wholeName(less), wholeName(more), showAmount(apart, 'money', reader)),
    ...(open && Math.round(apart) > 0 ? [owning.open] : []),
    ...crossing.crossings.map((each) => owning.crossing(hours(each.hoursPerYear), name(each.below), name(each.above))),
    ...(throughout === 'same' ? [owning.sameThroughout] : throughout ? [owning.throughout(name(throughout), hours(crossing.from), hours(crossing.to))] : []),
    ...dropsOut.map(({ need, side, at, otherAt, unit, wants, is, today }) => {
      const show = (value: number) => showAmount(value, unit, reader, Math.max(at, otherAt));
      const phrase = capital(words.needs[need] ?? need, words.language);
      return today ? owning.dropsOutToday(name(side), phrase, show(at), show(wants))
        : owning.dropsOut(name(side), phrase, show(at), name(side === 'a' ? 'b' : 'a'), show(otherAt), is === 'at-least');
    }),
  ];
}

/** A loan with all that is told of one, to the coin, and what of it is interest. */
export function sayLoan({ deposit, financed, months, instalment, rate }: Loan, { currency }: Pick<OwningComparison, 'currency'>, { voice: { reader }, lot: { owning, quotation } }: Speaking): string {
  const digits = digitsOf(currency);
  const coin = (amount: number) => toCoin(amount, digits);
  const show = (amount: number) => formatNumber(amount, reader.locale, { style: 'currency', currency, minimumFractionDigits: digits, maximumFractionDigits: digits });
  const [down, monthly] = [coin(deposit), coin(instalment)];
  const total = coin(down + monthly * months);
  return `${quotation.loan(show(down), showAmount(months, 'months', reader), show(monthly), showAmount(rate, 'annual-rate', reader), show(total))} ${owning.loanInterest(show(coin(total - down - financed)))}`;
}

/** A comparison of what machines cost to own, in words. */
export function sayComparison(comparison: OwningComparison, speaking: Speaking): SaidComparison {
  const { voice: { words, reader }, lot: { owning, quotation } } = speaking;
  const [all, short] = [names(comparison, speaking), shortNames(comparison, speaking)];
  const money = (amount: number) => showAmount(amount, 'money', reader);
  const partName = (part: SidePart) => (part === 'loan' ? owning.loan : words.result.owningParts[part]);
  const { chart, sides } = comparison;
  const known = sides.flatMap(({ cost }, index) => ('parts' in cost ? [index] : []));
  return {
    heading: owning.heading,
    assumptions: [
      owning.assumptions(showAmount(comparison.years, 'years', reader), showAmount(comparison.hoursPerYear, 'per-year', reader)),
      ...(comparison.finance === 'ask' ? [owning.askFinance] : comparison.finance ? [owning.financed, quotation.lender] : []),
      ...(comparison.dealers.length > 0 ? [owning.dealersFigures(comparison.dealers.length)] : []),
    ],
    sides: sides.map(({ cost, unpriced }, index) => {
      const name = all[index]!;
      if (!('parts' in cost)) return { name, says: [owning.missing(name, saySpecs(cost.missing, words))], parts: [], causes: [] };
      return {
        name,
        says: [
          owning.side(name, money(cost.perYear), showAmount(cost.perHour, 'dealer-currency', reader)),
          owning.range(money(cost.range.low), money(cost.range.high)),
          ...(cost.loan ? [sayLoan(cost.loan, comparison, speaking)] : []),
          ...(unpriced > 0 ? [owning.unpriced(name, unpriced)] : []),
        ],
        parts: (Object.entries(cost.parts) as [SidePart, number][]).map(([part, amount]) => ({ name: partName(part), amount: money(amount) })),
        causes: cost.spreads.map(({ cause, low, high }) => owning.causes[cause](money(low), money(high))),
      };
    }),
    pairs: comparison.pairs.map((pair) => sayPair(pair, comparison, speaking)),
    spreadsHeading: owning.spreadsHeading,
    table: {
      head: [owning.table.hours, ...known.flatMap((index) => [`${short[index]}: ${owning.table.perYear}`, owning.table.perHour, owning.table.range])],
      rows: (chart ? tableOf(chart) : []).map(({ hoursPerYear, costs }) => [
        formatNumber(Math.round(hoursPerYear), reader.locale),
        ...costs.flatMap(({ perYear, perHour, low, high }) => [money(perYear), showAmount(perHour, 'dealer-currency', reader), `${money(low)}–${money(high)}`]),
      ]),
    },
    noValuation: owning.noValuation,
  };
}

/** The words of the picture: what it shows is said in its description too. */
export function chartWordsOf(comparison: OwningComparison, speaking: Speaking): ChartWords {
  const { voice: { reader }, lot: { owning } } = speaking;
  const all = shortNames(comparison, speaking);
  return {
    title: owning.chart.title,
    description: [owning.chart.own(showAmount(comparison.hoursPerYear, 'per-year', reader)), ...comparison.pairs.flatMap((pair) => sayPair(pair, comparison, speaking))].join(' '),
    names: comparison.sides.flatMap(({ cost }, index) => ('parts' in cost ? [all[index]!] : [])),
    acrossLabel: owning.chart.across, upLabel: owning.chart.up,
    hours: (each) => formatNumber(Math.round(each), reader.locale),
    money: (amount) => showAmount(amount, 'money', reader),
  };
}
