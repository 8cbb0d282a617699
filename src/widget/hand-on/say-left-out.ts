import { questions, type QuestionId } from '../../answers/questions.ts';
import type { AnswersDocument } from '../../answers/schema.ts';
import type { LeftOut } from '../../handoff/carried.ts';
import type { Voice } from '../../reasons/say.ts';
import type { HandOnWords } from './words/words.ts';

/** A place of the document as a question's field names it: a task's by the name of the task. */
function fieldAt(place: string, { tasks = [] }: AnswersDocument): string {
  const [, index, rest] = /^tasks\[(\d+)\]\.(.+)$/.exec(place) ?? [];
  return index === undefined ? place : `tasks.${tasks[Number(index)]?.task}.${rest}`;
}

function sayPlace(place: string, answers: AnswersDocument, { words }: Voice, { kept }: Pick<HandOnWords, 'kept'>): string {
  const at = fieldAt(place, answers);
  const question = questions.find(({ fields }) => fields.some((field) => field.at === at));
  const label = question && words.questions[question.id as QuestionId].fields[at]?.label;
  if (label) return label;
  const [first] = place.split(/[.[]/, 1);
  const key = first === 'owned' ? first : place.split('.').at(-1)!;
  return Object.hasOwn(kept, key) ? kept[key as keyof typeof kept] : place;
}

/** What doesn't go along with the answers, in a sentence; undefined where all of it does. */
export function sayLeftOut(leftOut: readonly LeftOut[], answers: AnswersDocument, voice: Voice, own: Pick<HandOnWords, 'kept' | 'handoff'>): string | undefined {
  if (leftOut.length === 0) return undefined;
  return own.handoff.leftOut(voice.words.list([...new Set(leftOut.map(({ place }) => sayPlace(place, answers, voice, own)))]));
}
