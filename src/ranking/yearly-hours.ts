import type { Answers } from '../answers/answers.ts';
import type { RuleBook } from '../trade/book.ts';
import { inUnit, type Quantity } from '../units/quantity.ts';
import type { Judged } from './verdict.ts';

const hourly = ['mower.hours', 'rotary-cutter.hours', 'implement.hours', 'loader.loose'];

/**
 * Hours a year on the machine [h]: as the buyer said, else what his jobs add up to, each as often as he said
 * it is done (a lawn as often as lawns are). Where a job's hours can't be reckoned the sum is only part of
 * it, and counts no less than what owners on smallholdings run.
 */
export function yearlyHours(answers: Answers, judged: readonly Judged[], book: RuleBook): number {
  const { budget, tasks = [] } = answers;
  if (budget?.hoursPerYear) return budget.hoursPerYear;
  const hours = tasks.map(({ task, perYear }) => {
    const once = judged.find(({ need, verdict }) => need.task === task && hourly.includes(need.capability) && verdict.has !== undefined);
    const times = perYear ?? (task === 'mow-lawn' ? book.value('mow.per-year') : undefined);
    // The meter runs while the machine works, not while its driver greases it.
    const driver = once?.need.capability === 'loader.loose' ? 1 : book.value('mow.labour');
    return once && times !== undefined ? (inUnit('time', once.verdict.has as Quantity<'time'>, 'h') * times) / driver : undefined;
  });
  const sum = hours.reduce<number>((all, each) => all + (each ?? 0), 0);
  const whole = hours.length > 0 && hours.every((each) => each !== undefined);
  return whole && sum > 0 ? sum : Math.max(sum, book.value('keep.hours-per-year'));
}
