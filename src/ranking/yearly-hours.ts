import type { Answers } from '../answers/answers.ts';
import type { RuleBook } from '../trade/book.ts';
import type { Judged } from './verdict.ts';

const hourly = ['mower.hours', 'rotary-cutter.hours', 'implement.hours', 'loader.loose'];

/**
 * Hours a year on the machine [h]: as the buyer said, else what his jobs add up to, each as often as he said
 * it is done (a lawn as often as lawns are), else what owners on smallholdings run.
 */
export function yearlyHours(answers: Answers, judged: readonly Judged[], book: RuleBook): number {
  if (answers.budget?.hoursPerYear !== undefined) return answers.budget.hoursPerYear;
  const times = (task: string | undefined) =>
    answers.tasks?.find((each) => each.task === task)?.perYear ?? (task === 'mow-lawn' ? book.value('mow.per-year') : 0);
  const seconds = judged.reduce(
    (sum, { need, verdict }) => sum + (hourly.includes(need.capability) ? (verdict.has ?? 0) * times(need.task) : 0), 0,
  );
  return seconds > 0 ? seconds / 3600 : book.value('keep.hours-per-year');
}
