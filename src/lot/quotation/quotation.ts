import { taxables, type Taxable } from '../../catalogue/schema.ts';
import type { Answers } from '../../answers/answers.ts';
import type { Addition } from '../../ranking/addition.ts';
import type { World } from '../../ranking/candidate.ts';
import type { Evaluation } from '../../ranking/evaluate.ts';
import { deliveryCost, isTaxed, loanOn, mayTellLoans, ownPrices, type LoanTerms } from '../../ranking/price.ts';
import { atMost } from '../../units/compare.ts';
import type { Quantity } from '../../units/quantity.ts';
import type { Working } from '../../trade/working.ts';
import { digitsOf, sumOf, toCoin } from './money.ts';

export const lineKinds = ['machine', 'addition', 'fitting', 'delivery', 'fees', 'tax', 'trade-in'] as const;
export type LineKind = (typeof lineKinds)[number];

/** Why a line has no amount: it must be asked for, and why; or there is never one. */
export type Unsaid = 'no-price' | 'no-hours' | 'no-rate' | 'no-distance' | 'too-far' | 'no-tax' | 'seen-first';

/** A line of what a package costs delivered, in the dealer's currency, to the coin. */
export interface Line {
  kind: LineKind;
  /** Lowest and highest: one figure for a unit, a range for a machine by its typical prices. */
  amount?: { low: number; high: number };
  /** Why it has no amount: the dealer is to be asked. */
  unsaid?: Unsaid;
  /** What is added, or fitted. */
  addition?: Addition;
  /** Hours of fitting, and what an hour costs. */
  labour?: { hours: number; rate: number };
  /** How far it is delivered [m]; `free` where the dealer charges nothing for that. */
  distance?: Quantity<'length'>;
  free?: boolean;
  /** Share that the tax is [ratio], what it is reckoned on, part by part, and what of the price it isn't on. */
  tax?: { share: number; on: { low: number; high: number }; parts: readonly { of: Taxable; on: { low: number; high: number } }[]; free: readonly Taxable[] };
  /** What the buyer would give in exchange, in his own words, and what he still owes on it. Never valued. */
  tradeIn?: { kind: string; owed?: number };
}

/** Instalments with all that is told of them, or none of it (12 CFR 1026.24(d)). In the dealer's currency, to the coin. */
export interface QuotedLoan {
  deposit: number;
  financed: number;
  /** How many payments, of how much each, and what all of them and the deposit come to. */
  months: number;
  instalment: number;
  total: number;
  /** Annual percentage rate [ratio]. */
  rate: number;
  workings: readonly Working[];
}

export interface Quotation {
  machine: string;
  unit?: string;
  currency: string;
  /** Day the lot is of. */
  asOf: string;
  lines: readonly Line[];
  /** Sum of the lines that have an amount; absent where the machine itself has none. */
  total?: { low: number; high: number };
  /** Lines the total leaves out. */
  without: readonly Line[];
  /** By each of the dealer's terms; for a machine, at its lowest price. Absent where he may not tell of any. */
  loans?: readonly QuotedLoan[];
}

export interface Quoted {
  evaluation: Evaluation;
  world: World;
  asOf: string;
  /** How far it is to be delivered; absent where he fetches it or didn't say. */
  distance?: Quantity<'length'>;
  /** Whether he wants it delivered at all. */
  delivered?: boolean;
  tradeIn?: NonNullable<Answers['budget']>['tradeIn'];
  /** Terms to reckon instalments by: the dealer's own unless others are named. */
  finance?: readonly LoanTerms[];
}

const same = (amount: number) => ({ low: amount, high: amount });

function linesOfAddition(addition: Addition, { dealer }: World, coin: (amount: number) => number): Line[] {
  const { price, labourHours, labourAsked } = addition;
  const part: Line = { kind: 'addition', addition, ...(price === undefined ? { unsaid: 'no-price' } : { amount: same(coin(price)) }) };
  if (!labourAsked && !labourHours) return [part];
  const fitting: Line = labourAsked ? { kind: 'fitting', addition, unsaid: 'no-hours' }
    : !dealer.labourRate ? { kind: 'fitting', addition, unsaid: 'no-rate' }
      : { kind: 'fitting', addition, labour: { hours: labourHours!, rate: dealer.labourRate.value }, amount: same(coin(labourHours! * dealer.labourRate.value)) };
  return [part, fitting];
}

function lineOfDelivery({ distance, world: { dealer } }: Quoted, coin: (amount: number) => number): Line {
  if (distance === undefined) return { kind: 'delivery', unsaid: 'no-distance' };
  const radius = dealer.delivery?.radius;
  if (radius !== undefined && !atMost(distance, radius)) return { kind: 'delivery', distance, unsaid: 'too-far' };
  const cost = deliveryCost(distance, dealer);
  return cost === undefined ? { kind: 'delivery', distance, unsaid: 'no-rate' } : { kind: 'delivery', distance, amount: same(coin(cost)), ...(cost === 0 && { free: true }) };
}

/** What a line is to the tax; undefined for what no tax is ever on. */
function taxableOf({ kind, addition }: Line): Taxable | undefined {
  if (kind === 'addition') return addition?.what === 'implement' ? 'implements' : 'machine';
  return kind === 'machine' || kind === 'fitting' || kind === 'delivery' || kind === 'fees' ? kind : undefined;
}

/** The tax on what the dealer says is taxed; each part apart, the share taken of their sum. */
function lineOfTax(lines: readonly Line[], { world: { dealer } }: Quoted, digits: number): Line {
  const { taxShare: share } = dealer;
  if (share === undefined) return { kind: 'tax', unsaid: 'no-tax' };
  const all = taxables.flatMap((of) => {
    const own = lines.filter((line) => line.amount && taxableOf(line) === of);
    const on = (end: 'low' | 'high') => sumOf(own.map(({ amount }) => amount![end]), digits);
    return own.length > 0 ? [{ of, on: { low: on('low'), high: on('high') } }] : [];
  });
  const parts = all.filter(({ of }) => isTaxed(dealer, of));
  const on = (end: 'low' | 'high') => sumOf(parts.map((part) => part.on[end]), digits);
  const [low, high] = [on('low'), on('high')];
  return {
    kind: 'tax', amount: { low: toCoin(low * share, digits), high: toCoin(high * share, digits) },
    tax: { share, on: { low, high }, parts, free: all.flatMap(({ of }) => (isTaxed(dealer, of) ? [] : [of])) },
  };
}

function loansOn(price: number, { world: { dealer }, finance = dealer.finance ?? [] }: Quoted, digits: number): QuotedLoan[] {
  const coin = (amount: number) => toCoin(amount, digits);
  return finance.flatMap((terms) => {
    const loan = loanOn(price, terms);
    if (!loan) return [];
    const [instalment, deposit] = [coin(loan.instalment), coin(loan.deposit)];
    return [{
      deposit, financed: sumOf([price, -deposit], digits), months: loan.months, instalment, rate: loan.rate, workings: loan.workings,
      total: coin(deposit + instalment * loan.months),
    }];
  });
}

/**
 * What a package costs delivered, line by line, each to the coin, so that the lines add up to the total. What
 * nobody gave a figure for stays a line to ask the dealer about. It is no offer; a trade-in is only a wish.
 */
export function quotation(quoted: Quoted): Quotation {
  const { evaluation: { build, additions }, world: { dealer }, asOf, delivered, tradeIn } = quoted;
  const digits = digitsOf(dealer.currency);
  const coin = (amount: number) => toCoin(amount, digits);
  const own = ownPrices(build);
  const goods: Line[] = [
    { kind: 'machine', ...(own ? { amount: { low: coin(own[0]), high: coin(own[1]) } } : { unsaid: 'no-price' }) },
    ...additions.flatMap((addition) => linesOfAddition(addition, quoted.world, coin)),
  ];
  const sum = (lines: readonly Line[], end: 'low' | 'high') => sumOf(lines.flatMap(({ amount }) => (amount ? [amount[end]] : [])), digits);
  const { fees } = dealer;
  const untaxed: Line[] = [
    ...goods,
    ...(delivered ? [lineOfDelivery(quoted, coin)] : []),
    ...(fees ? [{ kind: 'fees', amount: same(coin(fees.value)) } as const] : []),
  ];
  const lines: Line[] = [
    ...untaxed, lineOfTax(untaxed, quoted, digits),
    ...(tradeIn ? [{ kind: 'trade-in', unsaid: 'seen-first', tradeIn: { kind: tradeIn.kind, ...(tradeIn.owed && { owed: tradeIn.owed.value }) } } as const] : []),
  ];
  const total = own && { low: sum(lines, 'low'), high: sum(lines, 'high') };
  return {
    machine: build.machine.id, ...(build.unit && { unit: build.unit.id }), currency: dealer.currency, asOf, lines,
    ...(total && { total }),
    without: lines.filter(({ amount }) => amount === undefined),
    ...(total && mayTellLoans(dealer) && { loans: loansOn(total.low, quoted, digits) }),
  };
}
