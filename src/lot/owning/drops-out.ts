import type { Evaluation } from '../../ranking/evaluate.ts';
import { boundOf, type Bound } from '../../ranking/relax.ts';
import { byCodeUnit } from '../../units/compare.ts';

/** The bound of a demand beyond which one of two drops out, while the other still serves. */
export interface DropsOut {
  need: string;
  capability: string;
  task?: string;
  is: Bound['is'];
  /** SI unit of the bounds. */
  unit: Bound['unit'];
  /** What the buyer asks for today. */
  wants: number;
  /** Which of the two drops out, and at which bound; `today` where it does so already. */
  side: 'a' | 'b';
  at: number;
  today: boolean;
  /** How far the other goes. */
  otherAt: number;
}

const money: readonly string[] = ['price', 'instalment'];

/**
 * Where the buyer's own demands would part two candidates: each demand for which he gave a figure, and of
 * which both have their own. Of money it is silent, for that is what is compared.
 */
export function dropsOutOf(a: Evaluation, b: Evaluation): DropsOut[] {
  return a.judged.flatMap(({ need, verdict }): DropsOut[] => {
    const bound = boundOf(need);
    const other = b.judged.find((each) => each.need.id === need.id)?.verdict;
    if (!bound || money.includes(need.capability) || verdict.has === undefined || other?.has === undefined) return [];
    // A load that rides behind and one on the loader are carried by different things; their figures can't be set beside each other.
    if (verdict.has === other.has || verdict.by !== other.by || verdict.unit !== other.unit) return [];
    const less = (verdict.has < other.has) === (bound.is === 'at-least') ? 'a' : 'b';
    const [at, otherAt] = less === 'a' ? [verdict.has, other.has] : [other.has, verdict.has];
    const today = (less === 'a' ? verdict : other).outcome === 'failed';
    return [{
      need: need.id, capability: need.capability, ...(need.task && { task: need.task }), is: bound.is, unit: bound.unit,
      wants: bound.value, side: less, at, today, otherAt,
    }];
  }).sort((x, y) => byCodeUnit(x.need, y.need));
}
