import type { Criterion } from '../answers/schema.ts';
import { between } from '../ranking/values.ts';
import { formatNumber } from '../units/formats.ts';
import { showAmount } from '../units/show.ts';
import { capital } from './capital.ts';
import { whyNot } from './contrast.ts';
import { sayReason, type Voice } from './say.ts';
import type { Contrast, CriterionState, NeedState, TradeOff } from './schema.ts';

type Gap = Contrast['criteria'][number];

/** Points of a hundred; a difference that is there is never shown as none. */
const hundredths = (points: number, { reader }: Voice) => formatNumber(
  100 * points, reader.locale, points < 0.001 ? { maximumSignificantDigits: 1 } : { maximumFractionDigits: 1 },
);

/** Whether a figure is all that a value was read from: fit is the mean of several, and its figure that of the weakest. */
const isWhole = ({ value, figure, anchors }: CriterionState) =>
  value === undefined || (figure !== undefined && anchors !== undefined && Math.abs(between(figure, ...anchors) - value) < 1e-5);

/** Whether the figures of two tell why one is worth more: they measure the same, and nothing else counts. */
export const figuresTell = ({ of: [a, b] }: Gap) =>
  isWhole(a) && isWhole(b) && (a.value === undefined || b.value === undefined || (a.unit === b.unit && a.anchors?.join() === b.anchors?.join()));

function sayFigure(criterion: Criterion, { value, figure, unit, anchors }: CriterionState, { words: { contrast }, reader }: Voice): string | undefined {
  if (value === undefined) return contrast.notKnown;
  if (figure === undefined || !unit || !anchors) return undefined;
  // Room is better the more there is of it; of turning radius less is better.
  const fit = unit === 'kg' ? 'fit.mass' : anchors[0] > anchors[1] ? 'fit.side' : 'fit.turn';
  return contrast.figures[criterion === 'fit' ? fit : criterion](showAmount(figure, unit, reader));
}

/** One criterion in which two differ, from the side of one of them. */
export function sayGap(gap: Gap, of: string, { sides }: Contrast, voice: Voice): string {
  const { words: { contrast, language } } = voice;
  const [own, other] = (sides[0].id === of ? gap.of : [...gap.of].reverse()).map((state) => sayFigure(gap.criterion, state, voice));
  const topic = capital(contrast.topics[gap.criterion], language);
  const points = contrast.points(hundredths(gap.points, voice), gap.favours === of);
  return own && other && own !== other && figuresTell(gap) ? contrast.gap(topic, own, other, points) : contrast.gapOfPoints(topic, points);
}

/** How one side does by a need; what is said of it is said of that machine. */
export function sayNeedState({ outcome, moot, ...state }: NeedState, { need, capability }: { need: string; capability: string }, voice: Voice): string {
  if (moot) return voice.words.contrast.moot;
  return sayReason({ ...state, id: `${capability}.${outcome}`, kind: 'unknown', need, weight: 0 }, voice);
}

/** What would bring the lower of two level with the upper. */
export function sayLift({ lift }: Contrast, upper: string, { words }: Voice): string[] {
  return [
    ...(lift.gates.length > 0 ? [words.contrast.liftNeeds(upper, words.list(lift.gates.map((need) => words.needs[need] ?? need)))] : []),
    ...(lift.criteria.length > 0 ? [words.contrast.liftCriteria(upper, words.list(lift.criteria.map((each) => words.contrast.topics[each])))] : []),
  ];
}

/** Why the lower of two stands where it does, in sentences: what costs it its place, what it has all the same, what would lift it. */
export function sayWhyBelow(contrast: Contrast, voice: Voice): { costs: string[]; despite: string[]; lift: string[] } {
  const { above, below, costs, despite } = whyNot(contrast);
  return {
    costs: costs.map((gap) => sayGap(gap, below, contrast, voice)),
    despite: despite.map((gap) => sayGap(gap, below, contrast, voice)),
    lift: sayLift(contrast, voice.nameOf(above), voice),
  };
}

/** What a machine gives up for what, in a line. */
export function sayTradeOff({ than, gains, losses }: TradeOff, { words: { contrast, list }, nameOf }: Voice): string {
  return contrast.trade(nameOf(than), list(gains.map((each) => contrast.gains[each])), list(losses.map((each) => contrast.losses[each])));
}
