import type { Catalogue, Machine, Unit } from '../../catalogue/catalogue.ts';
import { ruleBook, type FigureId } from '../../trade/book.ts';
import { sequence } from '../../units/sequence.ts';
import { exponential, logarithm } from '../../units/transcendental.ts';
import { robustFit } from './robust-regression.ts';

/** How often the prices are drawn anew to see how far a trend may be trusted. */
const draws = 400;
const hoursOfSlope = 100;

/** Whose asking prices are looked at: of its machine, of machines of its frame, or of the whole line-up. */
export const pools = ['machine', 'frame', 'line-up'] as const;
export type Pool = (typeof pools)[number];

/** One asking price of the dealer's own, on the lot or sold. */
interface Asked {
  unit: Unit;
  age: number;
  hours: number;
  /** Natural logarithm of the price, or of its share of the new price. */
  response: number;
}

export interface AskingContext {
  unit: string;
  currency: string;
  pool: Pool;
  /** Units the trend was drawn from, and how many of them are sold. */
  count: number;
  sold: number;
  price: number;
  /** What such a unit would be asked for by the trend, and between what most would. */
  trend: number;
  low: number;
  high: number;
  /** Share of asking prices that the range is to hold [ratio]. */
  share: number;
  /** How the price lies to the range. */
  lies: 'below' | 'within' | 'above';
  /** What a year of age and a hundred hours go with: shares of the price, below 0 where it falls [ratio]. */
  byYear: number;
  byHundredHours: number;
  rules: readonly FigureId[];
}

/** Why nothing is said: of which unit something is missing, or of how many there would have to be prices. */
export type NoContext =
  | { why: 'unit'; missing: readonly ('price' | 'year' | 'hours')[] }
  | { why: 'too-few'; count: number; least: number }
  | { why: 'alike'; count: number };

const askedOf = (unit: Unit, machine: Machine | undefined, asOfYear: number, byList: boolean): Asked[] => {
  const { price, year, hours } = unit;
  const list = machine?.listPrice?.price.value;
  if (!price || price.value <= 0 || year === undefined || hours === undefined || (byList && !(list! > 0))) return [];
  return [{ unit, age: Math.max(0, asOfYear - year), hours, response: logarithm(byList ? price.value / list! : price.value) }];
};

const rowOf = ({ age, hours }: Pick<Asked, 'age' | 'hours'>) => [1, age, hours / hoursOfSlope];
const valueAt = (coefficients: readonly number[], row: readonly number[]) => row.reduce((sum, value, at) => sum + value * coefficients[at]!, 0);
const quantile = (sorted: readonly number[], share: number) => sorted[Math.min(sorted.length - 1, Math.max(0, Math.round(share * (sorted.length - 1))))]!;

/**
 * Where most asking prices of such a unit lie: each time as many are drawn anew from those there are, with a
 * fixed sequence, a trend is drawn from them, and one of their own deviations is laid on it.
 *
 * @see B. Efron and R. Tibshirani, An Introduction to the Bootstrap, 1993, chapter 9: resampling of cases
 */
function rangeOf(all: readonly Asked[], at: readonly number[], share: number): readonly [low: number, high: number] {
  const chance = sequence(all.length);
  const place = () => Math.floor(chance() * all.length);
  const drawn: number[] = [];
  for (let draw = 0; draw < draws; draw++) {
    const sample = all.map(() => all[place()]!);
    const deviation = place();
    const fit = robustFit(sample.map(rowOf), sample.map(({ response }) => response));
    if (fit) drawn.push(valueAt(fit.coefficients, at) + fit.residuals[deviation]!);
  }
  drawn.sort((a, b) => a - b);
  return [quantile(drawn, (1 - share) / 2), quantile(drawn, (1 + share) / 2)];
}

/** The narrowest pool in which there are enough asking prices, the unit's own left out. */
function pooled({ machines, units = [], asOf }: Catalogue, unit: Unit, machine: Machine, least: number): { pool: Pool; asked: Asked[] } {
  const year = Number(asOf.split('-')[0]);
  const others = units.filter(({ id }) => id !== unit.id);
  const machineOf = (each: Unit) => machines.find(({ id }) => id === each.machine);
  const of = (pool: Pool): Asked[] => others.flatMap((each) => {
    const its = machineOf(each);
    const same = pool === 'line-up' || (pool === 'frame' ? its?.frame === machine.frame : its?.id === machine.id);
    return same ? askedOf(each, its, year, pool !== 'machine') : [];
  });
  // By the share of the new price only where that of the unit's own machine is known.
  const possible = pools.filter((pool) => pool === 'machine' || (machine.listPrice?.price.value ?? 0) > 0);
  const found = possible.map((pool) => ({ pool, asked: of(pool) }));
  return found.find(({ asked }) => asked.length >= least) ?? found.at(-1)!;
}

/**
 * A unit's asking price beside what the dealer's own other asking prices, on the lot and sold, would make of its
 * age and hours. For the dealer alone unless he switches it on; never a valuation, for condition, attachments
 * and what was paid in the end are not in it.
 */
export function askingContext(catalogue: Catalogue, unit: Unit): AskingContext | NoContext {
  const book = ruleBook(catalogue.rules);
  const least = book.value('lot.asking.units-least');
  const share = book.value('lot.asking.share');
  const machine = catalogue.machines.find(({ id }) => id === unit.machine)!;
  const missing = (['price', 'year', 'hours'] as const).filter((field) => unit[field] === undefined || (field === 'price' && !(unit.price!.value > 0)));
  if (missing.length > 0) return { why: 'unit', missing };
  const { pool, asked } = pooled(catalogue, unit, machine, least);
  if (asked.length < least) return { why: 'too-few', count: asked.length, least };
  const fit = robustFit(asked.map(rowOf), asked.map(({ response }) => response));
  if (!fit) return { why: 'alike', count: asked.length };
  const scale = pool === 'machine' ? 1 : machine.listPrice!.price.value;
  const [own] = askedOf(unit, machine, Number(catalogue.asOf.split('-')[0]), pool !== 'machine');
  const at = rowOf(own!);
  const [low, high] = rangeOf(asked, at, share).map((each) => exponential(each) * scale) as [number, number];
  const trend = exponential(valueAt(fit.coefficients, at)) * scale;
  const price = unit.price!.value;
  // The middle of the draws is not the trend itself, which always belongs to its own range.
  const [from, to] = [Math.min(low, trend), Math.max(high, trend)];
  return {
    unit: unit.id, currency: catalogue.dealer.currency, pool, count: asked.length, sold: asked.filter(({ unit: { status } }) => status === 'sold').length,
    price, trend, low: from, high: to, share, lies: price < from ? 'below' : price > to ? 'above' : 'within',
    byYear: exponential(fit.coefficients[1]!) - 1, byHundredHours: exponential(fit.coefficients[2]!) - 1,
    rules: ['lot.asking.units-least', 'lot.asking.share'],
  };
}
