import type { QuestionId } from '../answers/questions.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { SkipReason } from '../reasons/skip-reason.ts';
import { withSkips } from './answered.ts';
import { caseOf, type Proof } from './case.ts';
import { metAnyway } from './met-anyway.ts';
import { openQuestions, type Visit } from './next-question.ts';
import { oneLeft } from './one-left.ts';
import { sameOrder } from './same-order.ts';
import type { Skip } from './skip.ts';

export interface Rule {
  question: QuestionId;
  because: SkipReason;
  proof: Proof;
}

/** What can be proven of which question. Those proven first needn't be open for those that follow. */
export const rules: readonly Rule[] = [
  { question: 'comfort-musts', because: 'met-anyway', proof: metAnyway },
  { question: 'priorities', because: 'one-left', proof: oneLeft },
  { question: 'priorities', because: 'same-order', proof: sameOrder },
];

/**
 * Proves which questions need no asking: where over all ways to finish the visit no verdict, none of the first
 * places, nor their order, additions, prices or cautions can change by an answer. Where nothing is proven the
 * question is asked. Gives way after each piece of work, so that a page can stop it or go on later.
 */
export function* provingSkips(visit: Visit, catalogue: Catalogue, all: readonly Rule[] = rules): Generator<undefined, readonly Skip[]> {
  let sofar = visit;
  // Before it is known what is to be done, and which of it must be, nothing is settled.
  if (!visit.seen.includes('tasks')) return sofar.skipped ?? [];
  for (const { question, because, proof } of all) {
    if (!openQuestions(sofar).includes(question)) continue;
    const machines = yield* proof(caseOf(sofar, catalogue));
    if (machines) sofar = withSkips(sofar, [{ question, because, machines }]);
    yield;
  }
  return sofar.skipped ?? [];
}

/** The questions that need no asking, all at once. */
export function skips(visit: Visit, catalogue: Catalogue): readonly Skip[] {
  const work = provingSkips(visit, catalogue);
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}
