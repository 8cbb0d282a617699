import type { Locator } from 'playwright-core';
import { offeredTasks, type QuestionId } from '../../src/answers/questions.ts';
import { answersFormat } from '../../src/answers/names.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { answer, isCheck, questionOn } from './buyer.ts';

/** A buyer with every job there is, whom every question is asked. */
export const everyJob: AnswersDocument = {
  format: answersFormat,
  tasks: offeredTasks.map((task) => ({ task })) as NonNullable<AnswersDocument['tasks']>,
  land: { slope: { value: 12, unit: 'deg' }, overhead: { value: 10, unit: 'ft' }, mown: { value: 2, unit: 'acre' } },
  storage: { kind: 'garage' },
  haul: { how: 'own-trailer' },
  // One answer to each finer point, so that each is asked.
  budget: { pay: 'cash', hoursPerYear: 100 },
  comfort: { cab: 'heat', drive: 'pedal', smoothSeat: true },
};

export type Stop = QuestionId | 'faults' | 'check' | 'result';

/**
 * Stops at every step of a visit of {@link everyJob}, filled in where there is something to fill in, once with the
 * summary of faults, at the page where the answers are checked, and at the result with all of it unfolded.
 */
export async function atEveryStep(wizard: Locator, look: (stop: Stop) => Promise<void>) {
  await wizard.locator('[part="continue"]').click();
  await look('faults');
  while (!(await isCheck(wizard))) {
    await look((await questionOn(wizard))!);
    await answer(wizard, everyJob);
  }
  await look('check');
  await wizard.locator('[part="continue"]').click();
  await wizard.locator('[part="result"]').waitFor();
  await wizard.evaluate((element) => element.shadowRoot!.querySelectorAll('details').forEach((each) => { each.open = true; }));
  // The line-up is drawn once it is unfolded.
  await wizard.locator('svg').first().waitFor();
  await look('result');
}
