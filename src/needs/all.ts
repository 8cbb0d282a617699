import type { Answers } from '../answers/answers.ts';
import type { RuleBook } from '../trade/book.ts';
import { needsOfBudget } from './budget.ts';
import { needsOfCarrying } from './carrying.ts';
import { needsOfComfort } from './comfort.ts';
import { needsOfCutting } from './cutting.ts';
import { needsOfDigging } from './digging.ts';
import { needsOfGrossMass } from './gross-mass.ts';
import { needsOfGround } from './ground.ts';
import { needsOfHaul } from './haul.ts';
import { needsOfLifting } from './lifting.ts';
import { needsOfMowing } from './mowing.ts';
import type { Need, NotCleared } from './need.ts';
import { needsOfOperator, notClearedByOperator } from './operator.ts';
import { needsOfPlace } from './place.ts';
import { needsOfSlope, notClearedBySlope } from './slope.ts';
import { needsOfTowing, notClearedByTowing } from './towing.ts';
import { needsOfWorkingGround } from './working-ground.ts';

const themes: readonly ((answers: Answers, book: RuleBook) => Need[])[] = [
  needsOfOperator, needsOfSlope, needsOfMowing, needsOfCutting, needsOfLifting, needsOfDigging,
  needsOfCarrying, needsOfWorkingGround, needsOfTowing, needsOfGrossMass, needsOfGround, needsOfPlace, needsOfHaul, needsOfBudget, needsOfComfort,
];

/** Everything the answers demand of a machine. */
export const needsOf = (answers: Answers, book: RuleBook) => themes.flatMap((needs) => needs(answers, book));

/** What can't count as cleared, whatever the machine. */
export const notCleared = (answers: Answers, book: RuleBook): NotCleared[] => [
  ...notClearedBySlope(answers, book), ...notClearedByOperator(answers, book), ...notClearedByTowing(answers),
];
