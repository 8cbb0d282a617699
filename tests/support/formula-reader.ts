import { rules } from '../../src/trade/book.ts';
import type { FormulaRule } from '../../src/trade/record.ts';
import type { WorkingEntry } from '../../src/reasons/schema.ts';

/** What a text calls an input by other words than those of its name. */
const called: Record<string, Readonly<Record<string, string>>> = {
  'pto.power-for-width': { powerPerWidth: 'power by width' },
  'loader.lift-at': { liftAtPins: 'lift at the pins' },
  'loader.greatest-load': { liftAtPins: 'lift at the pins' },
  'hitch.lift-at': { behindBallEnds: 'behind the ball ends' },
  'place.passage': { room: 'room on each side' },
  'place.headroom': { room: 'room above' },
  'place.length': { room: 'room to walk' },
  'haul.behind': { trailer: 'empty trailer' },
  'resale.remaining': { hoursPerYear: 'hours a year', c1: 'C1', c2: 'C2', c3: 'C3' },
};

/** Results that a text bounds in words: never below nothing, never above what is rated. */
const neverBelowZero = ['ballast.rear', 'ballast.front', 'loader.greatest-load'];

const words = (name: string) => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** The right side of a formula's text as a sum of numbers, each name replaced by the input it names. */
export function sumOfText(formula: string, inputs: Readonly<Record<string, { value: number }>>, otherNames: Readonly<Record<string, string>> = {}): string {
  const text = formula.replace(/^[^=]+= /, '').split('; ')[0]!.replace(', never above rated', '');
  const values = Object.values(inputs).map(({ value }) => `(${value})`);
  const names = new Map(Object.entries(inputs).map(([name, { value }]) => [otherNames[name] ?? words(name), `(${value})`]));
  const longestFirst = [...names.keys()].sort((a, b) => b.length - a.length);
  const all = new RegExp(`(?<![\\w.])(?:${longestFirst.join('|')})(?!\\w)`, 'g');
  return text.replace('sum of the parts', values.join(' + ')).replace('min of the limits', `Math.min(${values.join(', ')})`)
    .replace(all, (name) => names.get(name)!)
    .replaceAll('∛', 'Math.cbrt').replaceAll('√', 'Math.sqrt').replaceAll('atan', 'Math.atan')
    .replace('⌈', 'Math.ceil(').replace('⌉', ')').replaceAll('×', '*').replaceAll('−', '-').replaceAll('π', 'Math.PI').replaceAll('²', '**2').replaceAll('^', '**');
}

/** The same for a working, by the text of its formula. */
export const sumOf = ({ formula, inputs }: WorkingEntry) =>
  sumOfText((rules[formula as keyof typeof rules] as FormulaRule).formula, inputs, called[formula]);

/** Only what a person could reckon: numbers, brackets, the four operations, powers and roots. */
export const isSum = (text: string) => /^[-+*/(),.\d\se]+$/.test(text.replaceAll(/Math\.(?:PI|ceil|min|sqrt|cbrt|atan)/g, '1'));

export const reckon = (text: string): number => new Function(`return ${text}`)() as number;

/** The result of a working, reckoned again from the text of its formula; undefined where the text is no sum. */
export function reckonedAgain(working: WorkingEntry): number | undefined {
  const { formula, inputs, result } = working;
  const of = (name: string) => inputs[name]!.value;
  // At no interest a loan is repaid in equal parts, and at an annual percentage rate the instalments are worth what was financed.
  if (formula === 'loan.instalment' && of('annualRate') === 0) return of('principal') / of('months');
  if (formula === 'loan.principal' && of('annualRate') === 0) return of('instalment') * of('months');
  const sum = sumOf(working);
  if (!isSum(sum)) return undefined;
  const again = reckon(sum);
  if (neverBelowZero.includes(formula)) return Math.max(0, again);
  if (formula === 'hitch.lift-at') return Math.min(of('rated'), again);
  if (formula === 'slope.tip-angle') return Math.atan(again);
  if (formula === 'pto.at-altitude') return of('altitude') <= of('free') ? of('rated') : Math.max(0, again);
  // Of a root of less than nothing nothing is left, and a load more is not made by the last digit of a unit.
  if (formula === 'resale.remaining') return result.value === 0 ? 0 : again;
  if (formula === 'loads.count') return again - result.value === 1 && Math.abs(of('volume') / of('perLoad') - result.value) < 1e-6 ? result.value : again;
  return again;
}

/** Every working in a document, wherever it stands. */
export function workingsIn(value: unknown): WorkingEntry[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('formula' in value && 'inputs' in value && 'result' in value) return [value as WorkingEntry];
  return Object.values(value).flatMap(workingsIn);
}
