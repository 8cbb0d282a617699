import { answersFormat } from '../../answers/names.ts';
import { readAnswers } from '../../answers/read-answers.ts';
import type { AnswersDocument } from '../../answers/schema.ts';
import { carried } from '../../handoff/carried.ts';
import { record } from '../../handoff/fields.ts';
import { layouts } from '../../handoff/pack.ts';

/**
 * Answers without anything somebody wrote: what is chosen from a list, and figures. It is what goes along in a link, so that a
 * mail and the page behind its link reckon with the same. Never throws.
 */
export function fromClosedLists({ format: _format, ...said }: AnswersDocument): AnswersDocument {
  const { value } = carried(record(layouts.at(-1)!), said, []);
  return readAnswers({ format: answersFormat, ...(value as object) }).value ?? { format: answersFormat };
}
