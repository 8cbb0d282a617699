import { finerPoints } from '../../src/answers/names.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { visitOf } from '../../src/guide/next-question.ts';

/** A document whose buyer says that he wants those finer points looked at which he answers. */
export const withFinerPoints = (answers: AnswersDocument): AnswersDocument =>
  ({ ...answers, more: finerPoints.filter((id) => visitOf(answers).seen.includes(id)) });
