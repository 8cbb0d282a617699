import type { AnswersDocument } from '../answers/schema.ts';
import { byCodeUnit } from '../units/compare.ts';
import { readLine } from './read-line.ts';
import type { Asked } from './requests.ts';

/** What is alike for the judges: the same jobs, then the same figures of them, then land, storage and who drives. */
function keyOf(answers: AnswersDocument | undefined): string {
  if (!answers) return '';
  const { tasks = [], land, storage, drivers, ...rest } = answers;
  return JSON.stringify([tasks.map(({ task }) => task), tasks, land, storage, drivers, rest]);
}

/** Puts those next to each other who ask for the like: what was judged for one is remembered for the next. */
export const inLikeOrder = <Each extends Asked>(asked: readonly Each[]): Each[] =>
  asked.map((each) => ({ each, key: keyOf(readLine(each.text)) })).sort((a, b) => byCodeUnit(a.key, b.key)).map(({ each }) => each);
