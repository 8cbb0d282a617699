import type { QuestionId } from '../answers/questions.ts';
import type { SkipReason } from '../reasons/skip-reason.ts';

/** A question that need not be asked: whatever its answer, nothing that is told first would change. */
export interface Skip {
  question: QuestionId;
  because: SkipReason;
  /** Ids of the machines the reason speaks of. */
  machines: readonly string[];
}
