/**
 * The guide: which question is asked, and what Back, Change and "not sure" mean. Pure: it holds no effects,
 * so its paths can be generated and replayed; it is rebuilt from an answers document, never from a snapshot.
 */
import { assign, setup } from 'xstate';
import { answersFormat } from '../answers/names.ts';
import type { QuestionId } from '../answers/questions.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import { answered, withSkips, type Values } from './answered.ts';
import { nextQuestion, openQuestions, questionBefore, visitOf, type Visit } from './next-question.ts';
import type { Skip } from './skip.ts';

export interface Stage extends Required<Visit> {
  /** The question on show while asking. */
  at: QuestionId | undefined;
  /** Questions to be asked before the result is shown again, after a change made from there. */
  detour: readonly QuestionId[] | undefined;
  /** What "start again" put away, to be brought back. */
  before: Required<Visit> | undefined;
}

export type Wish =
  /** With it, what was proven meanwhile of the visit as the answer leaves it; a proof that comes later is none. */
  | { type: 'answer.given'; values: Values; skips?: readonly Skip[] }
  | { type: 'answer.unsure'; skips?: readonly Skip[] }
  | { type: 'step.back' }
  | { type: 'step.chosen'; question: QuestionId }
  | { type: 'result.asked' }
  | { type: 'questions.resumed' }
  | { type: 'visit.cleared' }
  | { type: 'visit.restored' };

export const noAnswers: AnswersDocument = { format: answersFormat };

/** The stage after an answer: values put, the question passed, and what a change made necessary to ask. */
function afterAnswer(stage: Stage, values: Values | undefined, skips: readonly Skip[] = []): Partial<Stage> {
  const { at, detour } = stage;
  if (!at) return {};
  const visit = withSkips(answered(stage, at, values), skips);
  if (!detour) return visit;
  const [before, open] = [openQuestions(stage), openQuestions(visit)];
  return { ...visit, detour: open.filter((id) => detour.includes(id) || !before.includes(id)) };
}

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
    'put all away': assign(({ context: { answers, seen, skipped } }) => ({
      answers: noAnswers, seen: [], skipped: [], at: undefined, detour: undefined, before: { answers, seen, skipped },
    })),
    'bring all back': assign(({ context }) => ({ ...(context.before ?? {}), before: undefined, at: undefined, detour: undefined })),
  },
}).createMachine({
  id: 'guide',
  context: ({ input }) => ({ ...visitOf(input.answers ?? noAnswers), skipped: [], at: undefined, detour: undefined, before: undefined }),
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
        'answer.given': { target: 'deciding', actions: assign(({ context, event }) => afterAnswer(context, event.values, event.skips)) },
        'answer.unsure': { target: 'deciding', actions: assign(({ context, event }) => afterAnswer(context, undefined, event.skips)) },
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
