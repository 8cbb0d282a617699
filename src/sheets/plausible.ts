import type { MachineDocument, UnitDocument } from '../catalogue/schema.ts';
import { atLeast, atMost } from '../units/compare.ts';
import type { FigureId, RuleBook } from '../trade/book.ts';
import { inUnit, kindOfUnit, toSi, type Kind, type Quantity, type Unit } from '../units/quantity.ts';
import { checksOfMachine, checksOfUnit } from './plausible-checks.ts';

/** A value with its unit, as a document has it. */
export interface Figure {
  value: number;
  unit: string;
}

/** A figure beyond its bounds. */
export interface Odd {
  /** Field of the entry, numbered from 1 as in headings. */
  field: string;
  read: Figure;
  least: Figure | undefined;
  most: Figure;
  /** The field the bounds follow from, where it is another one. */
  by: { field: string; read: Figure } | undefined;
  /** The same number in a unit in which it would be within them. */
  meant: Figure | undefined;
}

type Bound = 'least' | 'most';

/** The two rules that bound a figure; of hours there is no least. */
const boundRules = {
  'power': (bound: Bound) => `plausible.power.${bound}` as const,
  'mass': (bound: Bound) => `plausible.mass.${bound}` as const,
  'wheelbase': (bound: Bound) => `plausible.wheelbase.${bound}` as const,
  'length': (bound: Bound) => `plausible.length.${bound}` as const,
  'width': (bound: Bound) => `plausible.width.${bound}` as const,
  'height': (bound: Bound) => `plausible.height.${bound}` as const,
  'loader-height': (bound: Bound) => `plausible.loader-height.${bound}` as const,
  'deck-width': (bound: Bound) => `plausible.deck-width.${bound}` as const,
  'dig-depth': (bound: Bound) => `plausible.dig-depth.${bound}` as const,
  'mass-by-power': (bound: Bound) => `plausible.mass-by-power.${bound}` as const,
  'loader-by-power': (bound: Bound) => `plausible.loader-by-power.${bound}` as const,
  'loader-by-mass': (bound: Bound) => `plausible.loader-by-mass.${bound}` as const,
  'hitch-by-mass': (bound: Bound) => `plausible.hitch-by-mass.${bound}` as const,
  'pto-by-power': (bound: Bound) => `plausible.pto-by-power.${bound}` as const,
  'gross-by-mass': (bound: Bound) => `plausible.gross-by-mass.${bound}` as const,
  'lift-ahead': (bound: Bound) => `plausible.lift-ahead.${bound}` as const,
  'wheelbase-by-length': (bound: Bound) => `plausible.wheelbase-by-length.${bound}` as const,
  'track-by-width': (bound: Bound) => `plausible.track-by-width.${bound}` as const,
  'price-by-list': (bound: Bound) => `plausible.price-by-list.${bound}` as const,
} satisfies Record<string, (bound: Bound) => FigureId>;

export interface Check {
  field: string;
  figure: Figure | undefined;
  rule: keyof typeof boundRules | 'hours';
  by?: { field: string; figure: Figure | undefined };
  /** What a bound of one of the other figure is: 1 where the rule is a share. */
  each?: Unit;
}

/** Units that are taken for one another. */
const mistaken: Partial<Record<Kind, readonly Unit[]>> = { mass: ['lb', 'kg'], length: ['in', 'mm', 'cm', 'ft', 'm'], power: ['hp', 'kW'] };
/** In SI where the unit is one of ours and the rule measured; hours and money stay as they are. */
const plainValue = ({ value, unit }: Figure, kind: Kind | undefined) => (kind ? (toSi({ value, unit: unit as Unit }) as number) : value);

const kindOf = ({ unit }: Figure): Kind | undefined => (unit === 'h' ? undefined : kindOfUnit(unit));

function within(value: number, [least, most]: readonly [number | undefined, number]) {
  return (least === undefined || atLeast(value, least)) && atMost(value, most);
}

/** The bounds of one check in SI, or undefined where what it hangs on is unknown. */
function boundsOf({ rule, by, each }: Check, book: RuleBook): readonly [number | undefined, number] | undefined {
  const least = rule === 'hours' ? undefined : book.value(boundRules[rule]('least'));
  const most = book.value(rule === 'hours' ? 'plausible.hours.most' : boundRules[rule]('most'));
  if (!by) return [least, most];
  if (!by.figure) return undefined;
  const base = each ? inUnit('power', plainValue(by.figure, 'power') as Quantity<'power'>, each as 'hp') : plainValue(by.figure, kindOf(by.figure));
  return [least === undefined ? undefined : least * base, most * base];
}

/** What a conversion there and back leaves alone. */
const digits = 12;

function oddOf(checks: readonly Check[], book: RuleBook): Odd[] {
  const found: Odd[] = [];
  const doubted = new Set<string>();
  for (const check of checks) {
    const { field, figure, by } = check;
    const bounds = figure && boundsOf(check, book);
    // What hangs on a figure that is itself in doubt says nothing more.
    if (!figure || !bounds || doubted.has(field) || (by && doubted.has(by.field))) continue;
    const kind = kindOf(figure);
    if (within(plainValue(figure, kind), bounds)) continue;
    doubted.add(field);
    const inItsUnit = (value: number): Figure => ({ value: Number((kind ? inUnit(kind, value as Quantity<Kind>, figure.unit as never) : value).toPrecision(digits)), unit: figure.unit });
    const all = checks.filter((each) => each.field === field).flatMap((each) => boundsOf(each, book) ?? []);
    const pairs = Array.from({ length: all.length / 2 }, (_, at) => [all[at * 2], all[at * 2 + 1]!] as const);
    const meant = kind && mistaken[kind]?.find((unit) => unit !== figure.unit && pairs.every((pair) => within(toSi({ value: figure.value, unit: unit as Unit }) as number, pair)));
    found.push({
      field, read: figure,
      least: bounds[0] === undefined ? undefined : inItsUnit(bounds[0]), most: inItsUnit(bounds[1]),
      by: by?.figure && { field: by.field, read: by.figure },
      meant: meant === undefined ? undefined : { value: figure.value, unit: meant },
    });
  }
  return found;
}

/** Figures of a machine that can hardly be, by the rule book. */
export const oddOfMachine = (machine: MachineDocument, book: RuleBook): Odd[] => oddOf(checksOfMachine(machine), book);

/** The same of a unit, beside its machine. */
export const oddOfUnit = (unit: UnitDocument, machine: MachineDocument | undefined, book: RuleBook): Odd[] => oddOf(checksOfUnit(unit, machine), book);

