import { questions, type QuestionId } from '../answers/questions.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import { visitOf, pathOf } from '../guide/next-question.ts';

/** What of the sheet goes together, in the order of the guide; each section begins with the question named. */
const begins = { work: 'tasks', jobs: 'lawn', ground: 'slope', place: 'storage', money: 'budget', more: 'more', order: 'priorities' } as const satisfies Record<string, QuestionId>;

export type SectionId = keyof typeof begins;
export const sectionIds = Object.keys(begins) as SectionId[];

export interface Section {
  id: SectionId;
  questions: readonly QuestionId[];
}

const idsOf = questions.map(({ id }) => id);
const starts = sectionIds.map((id) => idsOf.indexOf(begins[id]));

/**
 * The questions that apply to what was said so far, by section. One that an answer still to come decides isn't there
 * until it does: on a sheet nobody is led past it.
 */
export function sectionsOf(answers: AnswersDocument): Section[] {
  const visit = visitOf(answers);
  const path = pathOf(visit).filter((id) => isAsked(id, answers, visit.seen));
  return sectionIds.map((id, index) => {
    const [from, to] = [starts[index]!, starts[index + 1] ?? idsOf.length];
    return { id, questions: path.filter((each) => idsOf.indexOf(each) >= from && idsOf.indexOf(each) < to) };
  });
}

const isAsked = (id: QuestionId, answers: AnswersDocument, seen: readonly QuestionId[]) =>
  questions.find((each) => each.id === id)!.asked(answers, (other) => (seen as readonly string[]).includes(other)) === 'yes';
