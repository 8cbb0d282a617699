import { wishesOf, type QuestionId } from '../answers/questions.ts';
import type { Answers } from '../answers/answers.ts';
import { needsOf } from '../needs/all.ts';
import type { ComfortWish } from '../needs/need.ts';
import { choicesOf } from '../ranking/choices.ts';
import { evaluate, type Evaluation } from '../ranking/evaluate.ts';
import { unitsOf } from '../ranking/lot.ts';
import { isFailedGate, isOpenGate } from '../ranking/verdict.ts';
import { stillAsked, type Proof } from './case.ts';

/** Questions whose answers only weigh what is judged without them. */
const onlyWeigh: readonly QuestionId[] = ['use', 'priorities'];
/** Of more wishes than these not every choice is tried. */
const mostWishes = 4;

/** All that is found of a candidate, in a form to be compared: what is built and bought, each verdict, what it rules out. */
const found = ({ build: { machine, unit, ...build }, judged, ...rest }: Evaluation) => JSON.stringify({
  ...rest, build: [machine.id, unit?.id, build],
  judged: judged.map((each) => {
    const { workings: _workings, ...verdict } = each.verdict;
    return [each.need.id, verdict, isFailedGate(each), isOpenGate(each)];
  }),
});

const withMusts = (answers: Answers, must: ComfortWish[]): Answers => ({ ...answers, comfort: { ...answers.comfort, must } });

/**
 * Where every machine and unit does what was wished for, a wish made a must moves nothing: each choice of musts
 * is tried on each of them, those ruled out too, for they may come back in what is told of ways out.
 */
export const metAnyway: Proof = function* metAnyway(of) {
  const { visit, catalogue, answers, world, needs } = of;
  const wishes = wishesOf(visit.answers);
  if (wishes.length > mostWishes || stillAsked(of, 'comfort-musts').some((id) => !onlyWeigh.includes(id))) return undefined;
  const others = choicesOf(wishes).filter((must) => must.length > 0).map((must) => needsOf(withMusts(answers, must), world.book));
  const machines = catalogue.machines;
  for (const machine of machines) {
    for (const candidate of [{ machine }, ...unitsOf(catalogue, machine).flat().map((unit) => ({ machine, unit }))]) {
      const before = found(evaluate(candidate, needs, world));
      for (const each of others) {
        yield;
        if (found(evaluate(candidate, each, world)) !== before) return undefined;
      }
    }
  }
  return machines.map(({ id }) => id);
};
