import { answersOf } from '../answers/answers.ts';
import { answerAt, withAnswers } from '../answers/at.ts';
import type { Criterion } from '../answers/names.ts';
import { questions, type QuestionId } from '../answers/questions.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { judgeWidth } from '../ranking/judges/place.ts';
import { rank, type Placed, type Ranking } from '../ranking/rank.ts';
import { boundOf } from '../ranking/relax.ts';
import { inUnit, type Amount, type Quantity } from '../units/quantity.ts';

/** What a buyer may say of the machine that stands first: that he wants one that costs less, lifts more, takes less room. */
export const steerIds = ['cheaper', 'more-lift', 'smaller'] as const;
export type SteerId = (typeof steerIds)[number];

/** The answer to one question, changed so that another machine, or a cheaper package, comes first. */
export interface Steer {
  question: QuestionId;
  values: Readonly<Record<string, unknown>>;
}

/** Where weights alone are put in another order. */
const criterionOf: Record<SteerId, Criterion> = { cheaper: 'price', 'more-lift': 'headroom', smaller: 'fit' };

/** The unit a gate is told in where none was said before. */
const openingIn = { us: 'in', metric: 'cm' } as const;

/** The narrowest opening that a machine passes as it would be bought [m]; undefined where its tyres aren't known. */
const openingOf = ({ best: { build } }: Placed, { world }: Ranking) => judgeWidth(anyGate, build, world).has;

const anyGate = {
  id: 'land.gate', capability: 'width', passage: 'gate', atMost: Infinity as Quantity<'length'>, must: false, safety: false, from: [], working: [],
} as const;

const lowOf = ({ best }: Placed) => best.price?.low;

/** Strength to spare, by the needs as they were; among those that have more than counts, none has more. */
const spareOf = ({ best: { values } }: Placed) => values.headroom?.figure ?? values.headroom?.value;

const nextAbove = (figures: readonly (number | undefined)[], than: number) =>
  Math.min(...figures.filter((figure): figure is number => figure !== undefined && figure > than));

const nextBelow = (figures: readonly (number | undefined)[], than: number) =>
  Math.max(...figures.filter((figure): figure is number => figure !== undefined && figure < than));

/** The question that asks for an answer. */
const questionAt = (at: string) => questions.find(({ fields }) => fields.some((field) => field.at === at))!.id;

/** A bound that the first machine misses and the next one on the way keeps. */
function bounds(id: SteerId, answers: AnswersDocument, ranking: Ranking, units: 'us' | 'metric'): Steer[] {
  const [first, ...others] = ranking.standing as [Placed, ...Placed[]];
  if (id === 'cheaper') {
    const low = lowOf(first);
    const limit = low === undefined ? -Infinity : nextBelow(others.map(lowOf), low);
    const { currency } = ranking.world.dealer;
    return Number.isFinite(limit) ? [{ question: 'budget', values: { 'budget.limit': { value: Math.ceil(limit), currency }, 'budget.firm': true } }] : [];
  }
  if (id === 'smaller') {
    const opening = openingOf(first, ranking);
    const gate = opening === undefined ? -Infinity : nextBelow(others.map((other) => openingOf(other, ranking)), opening);
    if (!Number.isFinite(gate)) return [];
    const unit = openingIn[units];
    return [{ question: 'gate', values: { 'land.gate': { value: Math.ceil(inUnit('length', gate as Quantity<'length'>, unit)), unit } } }];
  }
  return ranking.needs.flatMap((need): Steer[] => {
    const load = boundOf(need);
    const said = load?.unit === 'kg' ? (answerAt(answers, load.at) as Amount<'mass'> | undefined) : undefined;
    const liftOf = ({ best }: Placed) => best.judged.find((each) => each.need.id === need.id)?.verdict.has;
    const lift = liftOf(first);
    const more = lift === undefined ? Infinity : nextAbove(others.map(liftOf), lift);
    return load && said && Number.isFinite(more)
      ? [{ question: questionAt(load.at), values: { [load.at]: { value: Math.floor(inUnit('mass', more as Quantity<'mass'>, said.unit)), unit: said.unit } } }] : [];
  });
}

/** From the gentle to the strict: what matters most first, then a bound that the machine in first place misses. */
function trials(id: SteerId, answers: AnswersDocument, ranking: Ranking, units: 'us' | 'metric'): Steer[] {
  const criterion = criterionOf[id];
  const order = (answers.priorities ?? []).filter((each) => each !== criterion);
  const first: Steer = { question: 'priorities', values: { priorities: [criterion, ...order] } };
  return [...(ranking.weights[criterion] === undefined || answers.priorities?.[0] === criterion ? [] : [first]), ...bounds(id, answers, ranking, units)];
}

/** Whether what comes first after a change is what was wished for, measured by what was asked before it. */
function isBetter(id: SteerId, before: Placed, after: Placed, ranking: Ranking): boolean {
  const less = (one: number | undefined, other: number | undefined) => one !== undefined && other !== undefined && one < other;
  if (id === 'cheaper') return less(lowOf(after), lowOf(before));
  const asItWas = [...ranking.standing, ...ranking.toAsk].find(({ machine }) => machine.id === after.machine.id);
  if (!asItWas) return false;
  return id === 'smaller' ? less(openingOf(asItWas, ranking), openingOf(before, ranking)) : less(spareOf(before), spareOf(asItWas));
}

/**
 * The change of one answer, the gentlest there is, by which a machine comes first that is more as the buyer
 * wants it; undefined where no machine of the line-up is and can do the work.
 *
 * @param units  the buyer's own, for an answer not given before
 */
export function steerTo(id: SteerId, answers: AnswersDocument, ranking: Ranking, catalogue: Catalogue, units: 'us' | 'metric'): Steer | undefined {
  const [first] = ranking.standing;
  if (!first) return undefined;
  return trials(id, answers, ranking, units).find(({ values }) => {
    const [after] = rank(catalogue, answersOf(withAnswers(answers, values))).standing;
    return after && isBetter(id, first, after, ranking);
  });
}
