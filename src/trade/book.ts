import { factors, kindOfUnit, type Unit } from '../units/quantity.ts';
import { atLeast, atMost, byCodeUnit } from '../units/compare.ts';
import { cutting } from './figures/cutting.ts';
import { drawing } from './figures/drawing.ts';
import { engine } from './figures/engine.ts';
import { formulaRules } from './figures/formulas.ts';
import { lifting } from './figures/lifting.ts';
import { lot } from './figures/lot.ts';
import { materials } from './figures/materials.ts';
import { money } from './figures/money.ts';
import { mowing } from './figures/mowing.ts';
import { operator } from './figures/operator.ts';
import { owning } from './figures/owning.ts';
import { place } from './figures/place.ts';
import { plausible } from './figures/plausible.ts';
import { stability } from './figures/stability.ts';
import { valueAnchors } from './figures/value-anchors.ts';
import { waysOut } from './figures/ways-out.ts';
import { work } from './figures/work.ts';
import type { FigureRule, Rule } from './record.ts';

/** Goes up when a figure changes, so that a shortlist says by which rules it was made. */
export const rulesVersion = '1';

export const figureRules = {
  ...mowing, ...cutting, ...work, ...lifting, ...materials, ...place, ...engine, ...stability, ...operator, ...money, ...owning, ...lot, ...valueAnchors, ...waysOut, ...drawing, ...plausible,
};
export type FigureId = keyof typeof figureRules;
export type FormulaId = keyof typeof formulaRules;
export type RuleId = FigureId | FormulaId;

export const rules: Record<RuleId, Rule> = { ...figureRules, ...formulaRules };
export const ruleIds = (Object.keys(rules) as RuleId[]).sort(byCodeUnit);
export const figureIds = (Object.keys(figureRules) as FigureId[]).sort(byCodeUnit);
export const isFigureId = (id: string): id is FigureId => Object.hasOwn(figureRules, id);

/** A dealer's own value: in the unit of the rule, or in any unit of its kind. */
export type Override = number | { value: number; unit: string };

export interface RuleBook {
  /** A figure in SI, or in its own unit where that is none of SI's (ratio, years, money). */
  value(id: FigureId): number;
  isDealers(id: FigureId): boolean;
}

const figure = (id: FigureId): FigureRule => figureRules[id];

const siFactor = (unit: string) => {
  const kind = kindOfUnit(unit);
  return kind ? (factors[kind] as Record<string, number>)[unit]! : 1;
};

/** Why a dealer's value for a rule is refused: what it should have been, in the units of the rule. */
export type Refusal =
  | { why: 'no-figure' }
  | { why: 'not-to-change'; kind: 'definition' | 'published-figure' }
  | { why: 'other-unit'; unit: string }
  | { why: 'unsafe'; value: number; unit: string; safer: 'more' | 'less' }
  | { why: 'out-of-range'; least: number; most: number; unit: string };

/** Why a dealer's value for a rule is refused; undefined where it stands. */
export function whyRefused(id: string, override: Override): Refusal | undefined {
  if (!isFigureId(id)) return { why: 'no-figure' };
  const rule = figure(id);
  if (rule.kind === 'definition' || rule.kind === 'published-figure') return { why: 'not-to-change', kind: rule.kind };
  const unit = typeof override === 'number' ? rule.unit : override.unit;
  if (unit !== rule.unit && (kindOfUnit(unit) === undefined || kindOfUnit(unit) !== kindOfUnit(rule.unit))) {
    return { why: 'other-unit', unit: rule.unit };
  }
  const [least, most] = rule.valid.map((bound) => bound * siFactor(rule.unit)) as [number, number];
  const value = (typeof override === 'number' ? override : override.value) * siFactor(unit);
  const own = rule.value * siFactor(rule.unit);
  if ((rule.safer === 'more' && !atLeast(value, own)) || (rule.safer === 'less' && !atMost(value, own))) {
    return { why: 'unsafe', value: rule.value, unit: rule.unit, safer: rule.safer };
  }
  if (!(atLeast(value, least) && atMost(value, most))) return { why: 'out-of-range', least: rule.valid[0], most: rule.valid[1], unit: rule.unit };
  return undefined;
}

/** A refusal in the words of a fault: what would have been taken. */
export function sayRefusal(refusal: Refusal): string {
  switch (refusal.why) {
    case 'no-figure': return 'the id of a figure in the rule book';
    case 'not-to-change': return `no value of the dealer's own: this is a ${refusal.kind.replace('-', ' ')}`;
    case 'other-unit': return `a value in ${refusal.unit}`;
    case 'unsafe': return `a value on the safe side of ${refusal.value} ${refusal.unit}: ${refusal.safer}`;
    case 'out-of-range': return `from ${refusal.least} to ${refusal.most} ${refusal.unit}`;
  }
}

/** Why a dealer's value for a rule is refused, in the words of a fault; undefined where it stands. */
export function refusalOf(id: string, override: Override): string | undefined {
  const refusal = whyRefused(id, override);
  return refusal && sayRefusal(refusal);
}

/**
 * The rule book a reckoning goes by: ours, with a dealer's own values where they are allowed.
 * A refused value is left out here; the check of the catalogue names it.
 */
export function ruleBook(overrides: Record<string, Override> = {}): RuleBook {
  const stands = (id: FigureId) => id in overrides && whyRefused(id, overrides[id]!) === undefined;
  return {
    isDealers: stands,
    value(id) {
      const { value, unit } = figure(id);
      if (!stands(id)) return value * siFactor(unit);
      const own = overrides[id]!;
      return typeof own === 'number' ? own * siFactor(unit) : own.value * siFactor(own.unit);
    },
  };
}

/** The SI unit a figure's value is given in by {@link RuleBook.value}. */
export const siUnitOfRule = (id: FigureId): Unit | FigureRule['unit'] => {
  const { unit } = figure(id);
  const kind = kindOfUnit(unit);
  return kind ? (Object.keys(factors[kind])[0] as Unit) : unit;
};
