import { answersOf, type Answers } from '../answers/answers.ts';
import type { QuestionId } from '../answers/questions.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { needsOf } from '../needs/all.ts';
import type { Need } from '../needs/need.ts';
import type { World } from '../ranking/candidate.ts';
import { worldOf } from '../ranking/rank.ts';
import { unansweredOf, type Visit } from './next-question.ts';

/** What a proof goes by: the visit, and what is asked of the machines so far. */
export interface Case {
  visit: Visit;
  catalogue: Catalogue;
  answers: Answers;
  world: World;
  needs: readonly Need[];
  /** Questions that may still be answered, each in any way. */
  open: readonly QuestionId[];
}

/**
 * Goes about proving that an answer moves nothing; gives way after each short piece of work.
 *
 * @returns ids of the machines the reason speaks of, or undefined where nothing is proven
 */
export type Proof = (of: Case) => Generator<undefined, readonly string[] | undefined>;

export function caseOf(visit: Visit, catalogue: Catalogue): Case {
  const answers = answersOf(visit.answers);
  const world = worldOf(catalogue, answers);
  return { visit, catalogue, answers, world, needs: needsOf(answers, world.book), open: unansweredOf(visit) };
}

/** The open questions without those proven to move nothing, and without one that is being proven. */
export const stillAsked = ({ open, visit: { skipped = [] } }: Case, but: QuestionId) =>
  open.filter((id) => id !== but && !skipped.some(({ question }) => question === id));
