import type { Answers } from '../answers/answers.ts';
import { taskOf } from '../answers/answers.ts';
import { criteria, type Criterion } from '../answers/schema.ts';
import type { FigureId } from '../trade/book.ts';
import type { Capability, Need } from '../needs/need.ts';
import type { Working } from '../trade/working.ts';
import { narrowestTyres, type World } from './candidate.ts';
import type { Evaluation } from './evaluate.ts';
import { keptOver } from './kept-value.ts';
import { massParts, totalOf } from './mass.ts';
import type { Spec, Verdict } from './verdict.ts';
import { yearlyHours } from './yearly-hours.ts';

/** What a criterion is worth to the buyer, 0 to 1, with the figure it was read from. */
export interface Value {
  /** Undefined where the figure isn't known: it then earns nothing, and is said to be unknown. */
  value: number | undefined;
  figure?: number;
  unit?: Verdict['unit'];
  /** The figure at which it would earn everything, and nothing. */
  anchors?: readonly [best: number, worst: number];
  workings?: readonly Working[];
  missing?: readonly Spec[];
}

/** Linear between two anchors, flat beyond them. */
export const between = (figure: number, best: number, worst: number) =>
  Math.min(1, Math.max(0, (figure - worst) / (best - worst)));

const valued = (figure: number, best: number, worst: number, unit: Verdict['unit']): Value =>
  ({ value: between(figure, best, worst), figure, unit, anchors: [best, worst] });

const read = (figure: number | undefined, best: number, worst: number, unit: Verdict['unit'], missing: Spec): Value =>
  figure === undefined ? { value: undefined, missing: [missing] } : valued(figure, best, worst, unit);

const loads: readonly Capability[] = [
  'loader.lift', 'loader.height', 'hitch.lift', 'rotary-cutter', 'implement', 'implement.pull', 'tow.mass', 'backhoe',
];
const isLoad = ({ capability }: Need) => loads.includes(capability);

/** The criteria that can tell machines apart for this buyer; by his answers alone, never by who competes. */
export function applyingCriteria(answers: Answers, needs: readonly Need[]): Criterion[] {
  const applies: Record<Criterion, boolean> = {
    price: true,
    time: needs.some(({ capability }) => capability === 'mower.hours'),
    headroom: needs.some(isLoad),
    fit: taskOf(answers, 'mow-lawn') !== undefined || needs.some(({ capability }) => capability === 'width')
      || answers.land?.obstacles === 'some' || answers.land?.obstacles === 'many',
    comfort: true,
    resale: true,
  };
  return criteria.filter((criterion) => applies[criterion]);
}

/** Package price that earns everything, and that which earns nothing. */
export function priceAnchors(answers: Answers, { book, dealer }: World): readonly [best: number, worst: number] {
  const limit = answers.budget?.limit;
  const usable = limit && limit.currency === dealer.currency && limit.value > 0;
  return usable
    ? [limit.value * book.value('value.price.best'), limit.value * book.value('value.price.worst')]
    : [book.value('value.price.best-amount'), book.value('value.price.worst-amount')];
}

function priceValue({ price }: Evaluation, answers: Answers, world: World): Value {
  const [best, worst] = priceAnchors(answers, world);
  return read(price && (price.low + price.high) / 2, best, worst, 'money', 'price');
}

function timeValue({ build, judged }: Evaluation, answers: Answers, { book }: World): Value {
  const hours = judged.find(({ need }) => need.capability === 'mower.hours');
  const given = taskOf(answers, 'mow-lawn')?.hours;
  const [best, worst] = given
    ? [given * book.value('value.time.best'), given * book.value('value.time.worst')]
    : [book.value('value.time.best-hours'), book.value('value.time.worst-hours')];
  if (!build.mower) return { value: 0 };
  return { ...read(hours?.verdict.has, best, worst, 's', hours?.verdict.missing?.[0] ?? 'decks'), ...(hours && { workings: hours.verdict.workings }) };
}

/** The surplus over the hardest of the load needs; more than the full share earns no more. */
function headroomValue({ judged }: Evaluation, _answers: Answers, { book }: World): Value {
  const full = book.value('value.headroom.full');
  const of = judged.filter(({ need }) => isLoad(need));
  const missing = of.flatMap(({ verdict }) => (verdict.outcome === 'unknown' ? (verdict.missing ?? []) : []));
  if (missing.length > 0) return { value: undefined, missing };
  const surpluses = of.flatMap(({ verdict }) => {
    if (verdict.has !== undefined && verdict.wants) return [verdict.has / verdict.wants - 1];
    return verdict.outcome === 'failed' ? [-1] : [];
  });
  const least = Math.min(...surpluses);
  if (surpluses.length === 0) return { value: 1 };
  const { value, ...told } = valued(least, full, book.value('value.headroom.none'), 'ratio');
  // A shortfall is told by the need itself; there is no surplus to speak of here.
  return least < 0 ? { value } : { value, ...told };
}

/** How it suits the ground: mass on a lawn, room in the narrowest passage, turning among obstacles. */
function fitValue(evaluation: Evaluation, answers: Answers, { book }: World): Value {
  const { build, judged } = evaluation;
  const anchored = (figure: number | undefined, best: FigureId, worst: FigureId, unit: Verdict['unit'], missing: Spec) =>
    read(figure, book.value(best), book.value(worst), unit, missing);
  const parts: Value[] = [];
  if (taskOf(answers, 'mow-lawn')) {
    const { parts: masses, missing } = massParts(build);
    parts.push(missing.length > 0
      ? { value: undefined, missing }
      : anchored(totalOf(masses), 'value.fit.mass.best', 'value.fit.mass.worst', 'kg', 'mass'));
  }
  const openings = judged.flatMap(({ need }) => (need.capability === 'width' ? [need.atMost] : []));
  if (openings.length > 0) {
    const narrowest = narrowestTyres(build);
    const room = narrowest && (Math.min(...openings) - narrowest.widthOverRear) / 2;
    parts.push(anchored(room, 'value.fit.side.best', 'value.fit.side.worst', 'm', 'tyres'));
  }
  if (answers.land?.obstacles === 'some' || answers.land?.obstacles === 'many') {
    parts.push(anchored(build.machine.turningRadius, 'value.fit.turn.best', 'value.fit.turn.worst', 'm', 'turningRadius'));
  }
  const missing = parts.flatMap((part) => part.missing ?? []);
  const known = parts.map(({ value }) => value ?? 0);
  const value = known.reduce((sum, each) => sum + each, 0) / known.length;
  const [weakest] = [...parts].sort((a, b) => (a.value ?? 0) - (b.value ?? 0));
  return { ...weakest, value, ...(missing.length > 0 && { missing }) };
}

const amenities = ['suspensionSeat', 'tiltWheel', 'cruise'] as const;

/** Share of the buyer's wishes met; without any, share of the plain comforts a machine can have. */
function comfortValue({ build, judged }: Evaluation, _answers: Answers, _world: World): Value {
  const wishes = judged.filter(({ need }) => need.id.startsWith('comfort.'));
  if (wishes.length > 0) {
    const metOnes = wishes.filter(({ verdict }) => verdict.outcome === 'met').length;
    const missing = wishes.flatMap(({ verdict }) => (verdict.outcome === 'unknown' ? (verdict.missing ?? []) : []));
    return { value: metOnes / wishes.length, figure: metOnes / wishes.length, unit: 'ratio', anchors: [1, 0], ...(missing.length > 0 && { missing }) };
  }
  const { machine, unit } = build;
  const owns = amenities.filter((name) => unit?.fitted?.[name] ?? (machine[name]?.availability === 'fitted' || machine[name]?.availability === 'option'));
  const missing = amenities.filter((name) => machine[name] === undefined && unit?.fitted?.[name] === undefined);
  return {
    value: owns.length / amenities.length, figure: owns.length / amenities.length, unit: 'ratio', anchors: [1, 0],
    ...(missing.length > 0 && { missing }),
  };
}

/** Share of today's price kept over the buyer's own years and hours. */
function resaleValue(evaluation: Evaluation, answers: Answers, world: World): Value {
  const { book } = world;
  const years = answers.budget?.keepYears ?? book.value('keep.years');
  const kept = keptOver(evaluation, years, yearlyHours(answers, evaluation.judged, book), world);
  if (!('share' in kept)) return { value: undefined, missing: kept };
  return { ...valued(kept.share, book.value('value.resale.best'), book.value('value.resale.worst'), 'ratio'), workings: kept.workings };
}

const functions: Record<Criterion, (evaluation: Evaluation, answers: Answers, world: World) => Value> = {
  price: priceValue, time: timeValue, headroom: headroomValue, fit: fitValue, comfort: comfortValue, resale: resaleValue,
};

/** What each criterion is worth for an evaluation. */
export const valuesOf = (evaluation: Evaluation, applying: readonly Criterion[], answers: Answers, world: World) =>
  Object.fromEntries(applying.map((criterion) => [criterion, functions[criterion](evaluation, answers, world)])) as Partial<Record<Criterion, Value>>;
