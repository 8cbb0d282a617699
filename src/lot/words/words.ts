import type { Taxable } from '../../catalogue/schema.ts';
import type { Pool } from '../asking/context.ts';
import type { InspectionCaution } from '../inspection/inspection.ts';
import type { ItemId, ItemKind, WhyId } from '../inspection/items.ts';
import type { LackItem } from '../lacks.ts';
import type { Cause } from '../owning/side.ts';
import type { LineKind, Unsaid } from '../quotation/quotation.ts';

/** What hangs on the year a unit stands on the edge of. */
export type YearPart = 'generation' | 'midPto' | 'backhoe' | 'suspensionSeat' | 'tiltWheel' | 'cruise' | 'thirdFunction' | 'loaders' | 'cabs';

/** Figures of a reason, shown already; what it hasn't got is ''. */
export interface SaidWhy {
  hours: string;
  age: string;
  perYear: string;
  year: string;
  from: string;
  to: string;
  wear: string;
  mass: string;
  told: string;
  parts: string;
}

/** What a language says of owning, asking prices, a delivered price, what a unit lacks and an inspection. What is missing fails the type check. */
export interface LotWords {
  language: string;
  owning: {
    heading: string;
    /** Years and hours it was reckoned over. */
    assumptions(years: string, hours: string): string;
    financed: string;
    /** He borrows, and no terms may be told of. */
    askFinance: string;
    /** How many of the figures are the dealer's own. */
    dealersFigures(count: number): string;
    /** Said behind a loan: what of it is interest. */
    loanInterest(amount: string): string;
    /** A candidate by its machine, and by year and hours where it is a unit of which they are known; else ''. */
    named(machine: string, year: string, hours: string): string;
    side(name: string, year: string, hour: string): string;
    range(low: string, high: string): string;
    missing(name: string, missing: string): string;
    /** Which costs less a year, and by how much. */
    costsLess(less: string, more: string, apart: string): string;
    costTheSame: string;
    /** The ranges overlap. */
    open: string;
    crossing(hours: string, below: string, above: string): string;
    throughout(name: string, from: string, to: string): string;
    sameThroughout: string;
    /** A demand by its phrase, the bound at which one drops out, and how far the other goes. */
    dropsOut(name: string, need: string, at: string, other: string, otherAt: string, atLeast: boolean): string;
    dropsOutToday(name: string, need: string, at: string, wants: string): string;
    loan: string;
    unpriced(name: string, count: number): string;
    spreadsHeading: string;
    /** Why a cost may turn out otherwise, and between what the year then lies. */
    causes: Readonly<Record<Cause, (low: string, high: string) => string>>;
    noValuation: string;
    chart: { title: string; across: string; up: string; own(hours: string): string };
    table: Readonly<Record<'hours' | 'perYear' | 'perHour' | 'range', string>>;
  };
  asking: {
    heading: string;
    lies: Readonly<Record<'below' | 'within' | 'above', (price: string, low: string, high: string, share: string) => string>>;
    trend(trend: string): string;
    from: Readonly<Record<Pool, (count: number, sold: number) => string>>;
    slopes(byYear: string, byHundredHours: string): string;
    tooFew(count: number, least: number): string;
    alike(count: number): string;
    unit(missing: string): string;
    fields: Readonly<Record<'price' | 'year' | 'hours', string>>;
    noValuation: string;
  };
  quotation: {
    title: string;
    noOffer: string;
    asOf(day: string): string;
    kinds: Readonly<Record<LineKind, string>>;
    fitting(what: string, hours: string, rate: string): string;
    fittingOf(what: string): string;
    delivery(distance: string): string;
    free: string;
    /** A share of what is taxed, as a list of {@link taxables}. */
    tax(share: string, on: string): string;
    taxables: Readonly<Record<Taxable, string>>;
    /** What is taxed, each part with its amount, and their sum. */
    taxedOn(parts: string, sum: string): string;
    /** What the tax isn't on, as a list. */
    untaxed(what: string): string;
    tradeIn(kind: string): string;
    owed(amount: string): string;
    unsaid: Readonly<Record<Unsaid, string>>;
    total: string;
    /** Said of the total, by what it leaves out, as a list. */
    without(lines: string): string;
    noTotal: string;
    range(low: string, high: string): string;
    loansHeading: string;
    loan(deposit: string, months: string, instalment: string, rate: string, total: string): string;
    loansLeaveOut: string;
    lender: string;
  };
  lacks: {
    heading: string;
    items: Readonly<Record<LackItem, string>>;
    canAdd(what: string, price: string): string;
    ask(what: string): string;
    never(what: string): string;
    unknown(what: string): string;
  };
  inspection: {
    title: string;
    explained: string;
    kinds: Readonly<Record<ItemKind, string>>;
    items: Readonly<Record<ItemId, { name: string; how: string }>>;
    whys: Readonly<Record<WhyId, (said: SaidWhy) => string>>;
    parts: Readonly<Record<YearPart, string>>;
    ruledOut: string;
    forNeeds(needs: string): string;
    cautions: Readonly<Record<InspectionCaution, string>>;
    cautionsHeading: string;
  };
}
