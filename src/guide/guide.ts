/**
 * The guide: which question is asked, and what Back, Change and "not sure" mean. Pure: it holds no effects,
 * so its paths can be generated and replayed; it is rebuilt from an answers document, never from a snapshot.
 */
import { assign, setup } from 'xstate';
import { withAnswer } from '../answers/at.ts';
import { questionOf, type QuestionId } from '../answers/questions.ts';
import { answersFormat } from '../answers/names.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import { nextQuestion, openQuestions, questionBefore, visitOf, type Visit } from './next-question.ts';

export interface Stage extends Visit {
  /** The question on show while asking. */
  at: QuestionId | undefined;
  /** Questions to be asked before the result is shown again, after a change made from there. */
  detour: readonly QuestionId[] | undefined;
  /** What "start again" put away, to be brought back. */
  before: Visit | undefined;
}

export type Wish =
  | { type: 'answer.given'; values: Readonly<Record<string, unknown>> }
  | { type: 'answer.unsure' }
  | { type: 'step.back' }
  | { type: 'step.chosen'; question: QuestionId }
  | { type: 'result.asked' }
  | { type: 'questions.resumed' }
  | { type: 'visit.cleared' }
  | { type: 'visit.restored' };

export const noAnswers: AnswersDocument = { format: answersFormat };

const passed = ({ seen }: Visit, at: QuestionId | undefined) => (at && !seen.includes(at) ? [...seen, at] : seen);

/** The unsure list with a question put in or taken out; no list where it would be empty. */
function withUnsure(answers: AnswersDocument, id: QuestionId, unsure: boolean): AnswersDocument {
  const others = (answers.unsure ?? []).filter((each) => each !== id);
  const all = unsure ? [...others, id] : others;
  const { unsure: _unsure, ...rest } = answers;
  return all.length > 0 ? { ...rest, unsure: all } : rest;
}

/** The stage after an answer: values put, the question passed, and what a change made necessary to ask. */
function answered(stage: Stage, values: Readonly<Record<string, unknown>>, unsure: boolean): Partial<Stage> {
  const { at, detour } = stage;
  if (!at) return {};
  const given = Object.entries(values).reduce((all, [path, value]) => withAnswer(all, path, value), stage.answers);
  const visit = { answers: withUnsure(given, at, unsure), seen: passed(stage, at) };
  if (!detour) return visit;
  const before = openQuestions(stage);
  const newly = openQuestions(visit).filter((id) => !before.includes(id));
  return { ...visit, detour: [...detour.filter((id) => id !== at), ...newly] };
}

const nothing = (at: QuestionId | undefined) =>
  Object.fromEntries(at ? questionOf(at).fields.map((field) => [field.at, undefined]) : []);

export const guide = setup({
  types: {
    context: {} as Stage,
    events: {} as Wish,
    input: {} as { answers?: AnswersDocument | undefined },
  },
  guards: {
    'on a detour with more to ask?': ({ context }) => (context.detour?.length ?? 0) > 0,
    'on a detour?': ({ context }) => context.detour !== undefined,
    'anything left to ask?': ({ context }) => nextQuestion(context) !== undefined,
    'anything before?': ({ context }) => questionBefore(context, context.at) !== undefined,
    'anything put away?': ({ context }) => context.before !== undefined,
  },
  actions: {
    'ask the next': assign(({ context }) => ({ at: nextQuestion(context) })),
    'ask what the change needs': assign(({ context }) => ({ at: context.detour?.[0] })),
    'step back': assign(({ context }) => ({ at: questionBefore(context, context.at), detour: undefined })),
    'end the detour': assign({ at: undefined, detour: undefined }),
    'put all away': assign(({ context: { answers, seen } }) => ({
      answers: noAnswers, seen: [], at: undefined, detour: undefined, before: { answers, seen },
    })),
    'bring all back': assign(({ context }) => ({ ...(context.before ?? {}), before: undefined, at: undefined, detour: undefined })),
  },
}).createMachine({
  id: 'guide',
  context: ({ input }) => ({ ...visitOf(input.answers ?? noAnswers), at: undefined, detour: undefined, before: undefined }),
  initial: 'deciding',
  states: {
    deciding: {
      always: [
        { guard: 'on a detour with more to ask?', actions: 'ask what the change needs', target: 'asking' },
        { guard: 'on a detour?', target: 'result' },
        { guard: 'anything left to ask?', actions: 'ask the next', target: 'asking' },
        { target: 'result' },
      ],
    },
    asking: {
      on: {
        'answer.given': { target: 'deciding', actions: assign(({ context, event }) => answered(context, event.values, false)) },
        'answer.unsure': { target: 'deciding', actions: assign(({ context }) => answered(context, nothing(context.at), true)) },
        'result.asked': 'result',
      },
    },
    result: {
      entry: 'end the detour',
      on: {
        'questions.resumed': { guard: 'anything left to ask?', target: 'deciding' },
      },
    },
  },
  on: {
    'step.back': { guard: 'anything before?', actions: 'step back', target: '.asking' },
    'step.chosen': { target: '.asking', actions: assign(({ event }) => ({ at: event.question, detour: [] })) },
    'visit.cleared': { target: '.deciding', actions: 'put all away' },
    'visit.restored': { guard: 'anything put away?', target: '.deciding', actions: 'bring all back' },
  },
});
