import type { Answers } from '../answers/answers.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { needsOf } from '../needs/all.ts';
import type { Need } from '../needs/need.ts';
import type { Candidate, World } from '../ranking/candidate.ts';
import { evaluate, type Evaluation } from '../ranking/evaluate.ts';
import { worldOf } from '../ranking/rank.ts';

/** A buyer before a lot: what he needs, and how a candidate of it is made to serve him. */
export interface Considered {
  answers: Answers;
  world: World;
  needs: readonly Need[];
  /** A machine or unit in its best build, with what must be bought. */
  evaluationOf(candidate: Candidate): Evaluation;
}

/** A buyer's answers before a dealer's catalogue, both in SI. */
export function considered(catalogue: Catalogue, answers: Answers): Considered {
  const world = worldOf(catalogue, answers);
  const needs = needsOf(answers, world.book);
  return { answers, world, needs, evaluationOf: (candidate) => evaluate(candidate, needs, world) };
}
