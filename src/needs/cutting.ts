import { taskOf, type Answers } from '../answers/answers.ts';
import type { Need } from './need.ts';

/** Rough ground wants a rotary cutter that covers the tyres, and the PTO power to turn it. */
export function needsOfCutting(answers: Answers): Need[] {
  const task = taskOf(answers, 'cut-rough');
  if (!task) return [];
  const area = answers.land?.rough;
  return [{
    id: 'cut-rough.cutter', capability: 'rotary-cutter', growth: task.growth ?? 'grass', must: task.must === true,
    safety: false, task: 'cut-rough', from: ['tasks.cut-rough.growth'],
    rule: `cut.power.${task.growth ?? 'grass'}`, working: [],
  }, ...(area === undefined ? [] : [{
    id: 'cut-rough.hours', capability: 'rotary-cutter.hours', area, must: false, safety: false,
    task: 'cut-rough', from: ['land.rough'], rule: 'cut.speed', working: [],
  } as const])];
}
