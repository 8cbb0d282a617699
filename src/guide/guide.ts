/**
 * The guide: which question is asked, and what Back, Change and "not sure" mean. Pure: it holds no effects,
 * so its paths can be generated and replayed; it is rebuilt from an answers document, never from a snapshot.
 */
import { assign, createActor, setup, type Actor } from 'xstate';
import { noAnswers } from '../answers/names.ts';
import type { QuestionId } from '../answers/questions.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import { answered, withSkips, type Values } from './answered.ts';
import { nextQuestion, openQuestions, pathOf, questionBefore, visitOf, type Visit } from './next-question.ts';
import type { Skip } from './skip.ts';

/** Where a visit can be: at a question, at the page where all answers are checked, or at the result. */
export type Place = QuestionId | 'check' | 'result';

export interface Stage extends Required<Visit> {
  /** The question on show while asking. */
  at: QuestionId | undefined;
  /** Questions to be asked, after a change, before the page is shown again from which it was made. */
  detour: { ask: readonly QuestionId[]; from: 'check' | 'result' } | undefined;
  /** What "start again" put away, to be brought back. */
  before: Required<Visit> | undefined;
  /** The visit as it was before the last steer. */
  unsteered: Required<Visit> | undefined;
}

export type Wish =
  /** With it, what was proven meanwhile of the visit as the answer leaves it; a proof that comes later is none. */
  | { type: 'answer.given'; values: Values; skips?: readonly Skip[] }
  | { type: 'answer.unsure'; skips?: readonly Skip[] }
  | { type: 'step.back' }
  | { type: 'step.chosen'; question: QuestionId }
  /** A place that was on show before, come to by the browser's own Back and Forward. */
  | { type: 'place.revisited'; place: Place }
  | { type: 'answers.checked' }
  | { type: 'result.asked' }
  | { type: 'questions.resumed' }
  /** One answer changed from the result, and the result shown again at once; or what was there before it. */
  | { type: 'result.steered'; question: QuestionId; values: Values }
  | { type: 'steer.undone' }
  | { type: 'visit.cleared' }
  | { type: 'visit.restored' };

/** The stage after an answer: values put, the question passed, and what a change made necessary to ask. */
function afterAnswer(stage: Stage, values: Values | undefined, skips: readonly Skip[] = []): Partial<Stage> {
  const { at, detour } = stage;
  if (!at) return {};
  const visit = withSkips(answered(stage, at, values), skips);
  if (!detour) return visit;
  const [before, open] = [openQuestions(stage), openQuestions(visit)];
  return { ...visit, detour: { ...detour, ask: open.filter((id) => detour.ask.includes(id) || !before.includes(id)) } };
}

const put = ({ answers, seen, skipped }: Stage): Required<Visit> => ({ answers, seen, skipped });
const detourTo = (question: QuestionId, from: 'check' | 'result'): Partial<Stage> => ({ at: question, detour: { ask: [], from } });

export const guide = setup({
  types: {
    context: {} as Stage,
    events: {} as Wish,
    input: {} as { answers?: AnswersDocument | undefined },
  },
  guards: {
    'on a detour with more to ask?': ({ context }) => (context.detour?.ask.length ?? 0) > 0,
    'on a detour from the check?': ({ context }) => context.detour?.from === 'check',
    'on a detour?': ({ context }) => context.detour !== undefined,
    'anything left to ask?': ({ context }) => nextQuestion(context) !== undefined,
    'just answered?': ({ context }) => context.at !== undefined,
    'anything before?': ({ context }) => questionBefore(context, context.at) !== undefined,
    'anything put away?': ({ context }) => context.before !== undefined,
    'steered?': ({ context }) => context.unsteered !== undefined,
    'the check?': (_, place: Place) => place === 'check',
    'the result?': (_, place: Place) => place === 'result',
    'on the way?': ({ context }, place: Place) => (pathOf(context) as Place[]).includes(place),
  },
  actions: {
    'ask the next': assign(({ context }) => ({ at: nextQuestion(context) })),
    'ask what the change needs': assign(({ context }) => ({ at: context.detour?.ask[0] })),
    'step back': assign(({ context }) => ({ at: questionBefore(context, context.at), detour: undefined })),
    'end the detour': assign({ at: undefined, detour: undefined }),
    'put all away': assign(({ context }) => ({
      answers: noAnswers, seen: [], skipped: [], at: undefined, detour: undefined, before: put(context),
    })),
    'bring all back': assign(({ context }) => ({ ...(context.before ?? {}), before: undefined, at: undefined, detour: undefined })),
  },
}).createMachine({
  id: 'guide',
  context: ({ input }) => ({ ...visitOf(input.answers ?? noAnswers), skipped: [], at: undefined, detour: undefined, before: undefined, unsteered: undefined }),
  initial: 'deciding',
  states: {
    deciding: {
      always: [
        { guard: 'on a detour with more to ask?', actions: 'ask what the change needs', target: 'asking' },
        { guard: 'on a detour from the check?', target: 'checking' },
        { guard: 'on a detour?', target: 'result' },
        { guard: 'anything left to ask?', actions: 'ask the next', target: 'asking' },
        // Whoever comes with all answers given has checked them before.
        { guard: 'just answered?', target: 'checking' },
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
    checking: {
      entry: 'end the detour',
      on: {
        'answers.checked': 'result',
        'step.chosen': { target: 'asking', actions: assign(({ event }) => detourTo(event.question, 'check')) },
      },
    },
    result: {
      entry: 'end the detour',
      on: {
        'questions.resumed': { guard: 'anything left to ask?', target: 'deciding' },
        'result.steered': {
          actions: assign(({ context, event }) => ({ ...answered(context, event.question, event.values), unsteered: put(context) })),
        },
        'steer.undone': { guard: 'steered?', actions: assign(({ context }) => ({ ...context.unsteered, unsteered: undefined })) },
      },
    },
  },
  on: {
    'step.back': { guard: 'anything before?', actions: 'step back', target: '.asking' },
    'step.chosen': { target: '.asking', actions: assign(({ event }) => detourTo(event.question, 'result')) },
    'place.revisited': [
      { guard: { type: 'the check?', params: ({ event }) => event.place }, target: '.checking' },
      { guard: { type: 'the result?', params: ({ event }) => event.place }, target: '.result' },
      {
        guard: { type: 'on the way?', params: ({ event }) => event.place },
        target: '.asking', actions: assign(({ event }) => ({ at: event.place as QuestionId, detour: undefined })),
      },
    ],
    'visit.cleared': { target: '.deciding', actions: 'put all away' },
    'visit.restored': { guard: 'anything put away?', target: '.deciding', actions: 'bring all back' },
  },
});

export type VisitActor = Actor<typeof guide>;

/** A visit that has begun, at what its answers leave to be asked. */
export const beginVisit = (answers: AnswersDocument): VisitActor => createActor(guide, { input: { answers } }).start();
