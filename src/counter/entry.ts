/** What stands on the sheet: the boxes as staff left them, and the answers they come to. */
import { questionOf, questions, type Field, type Question, type QuestionId } from '../answers/questions.ts';
import type { TypedFault, Typing } from '../answers/read-typed.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import { answered } from '../guide/answered.ts';
import { visitOf } from '../guide/next-question.ts';
import { boxesOf, notSure, readBoxes, type Box, type Boxes } from '../widget/box.ts';

export interface Entry {
  answers: AnswersDocument;
  boxes: Boxes;
}

/** All boxes of the sheet, as a document fills them. */
export const boxesFor = (answers: AnswersDocument, typing: Typing): Boxes =>
  Object.assign({}, ...questions.map((question) => boxesOf(question, answers, typing))) as Boxes;

const readOne = (field: Field, boxes: Boxes, typing: Typing) => readBoxes({ id: '', fields: [field], readBy: [], asked: () => 'yes' }, boxes, typing);

/** What is wrong in one box; nothing where it is empty, for a sheet may be left unfinished anywhere. */
export function faultOf(field: Field, boxes: Boxes, typing: Typing): TypedFault | undefined {
  const read = readOne(field, boxes, typing);
  const fault = read !== 'unsure' && 'faults' in read ? read.faults[0] : undefined;
  return fault && fault.fault !== 'nothing-chosen' ? fault : undefined;
}

const valueOf = (field: Field, boxes: Boxes, typing: Typing): unknown => {
  const read = readOne(field, boxes, typing);
  return read !== 'unsure' && 'values' in read ? read.values[field.at] : undefined;
};

/** What the boxes of a question come to; a box that can't be read says nothing, and keeps what stands in it. */
function given(question: Question, boxes: Boxes, answers: AnswersDocument, typing: Typing): AnswersDocument {
  const values = Object.fromEntries(question.fields.map((field) => [field.at, valueOf(field, boxes, typing)]));
  const isUnsure = question.fields.some(({ at }) => boxes[at]?.chosen === notSure) && Object.values(values).every((value) => value === undefined);
  return answered(visitOf(answers), question.id as QuestionId, isUnsure ? undefined : values).answers;
}

/** Boxes whose options hang on other answers: those that are no more aren't ticked any more. */
function pruned({ answers, boxes }: Entry): Entry {
  const kept = questions.flatMap<Field>(({ fields }) => [...fields]).flatMap((field) => {
    const ticked = boxes[field.at]?.ticked;
    if (field.control !== 'several' || !ticked) return [];
    const options = field.options(answers);
    return ticked.every((each) => options.includes(each)) ? [] : [[field.at, { ticked: ticked.filter((each) => options.includes(each)) }] as const];
  });
  return kept.length === 0 ? { answers, boxes } : { answers, boxes: { ...boxes, ...Object.fromEntries(kept) } };
}

/** The sheet with another text, tick or choice in one of its boxes. */
export function entered({ answers, boxes }: Entry, id: QuestionId, at: string, box: Box, typing: Typing): Entry {
  const next = { ...boxes, [at]: box };
  return pruned({ answers: given(questionOf(id), next, answers, typing), boxes: next });
}

/** The same sheet where units or language changed: what can be read is written anew, what can't stays as it was typed. */
export function retyped({ answers, boxes }: Entry, before: Typing, typing: Typing): Entry {
  const fields = questions.flatMap<Field>((question) => [...question.fields]);
  const unread = fields.filter((field) => faultOf(field, boxes, before)).map(({ at }) => [at, boxes[at]!]);
  const chosen = fields.filter(({ at }) => boxes[at]?.chosen === notSure).map(({ at }) => [at, boxes[at]!]);
  return { answers, boxes: { ...boxesFor(answers, typing), ...Object.fromEntries([...unread, ...chosen]) } };
}
