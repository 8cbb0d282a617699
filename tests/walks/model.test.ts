/** On demand, for it takes minutes (`MODEL=1`). The guide runs beside the page: whatever a buyer does there, the page asks what the guide says, and holds the answers it holds. */
import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { answersFormat, noAnswers } from '../../src/answers/names.ts';
import { questionOf, questions, type Field, type QuestionId } from '../../src/answers/questions.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { beginVisit, type Place, type VisitActor, type Wish } from '../../src/guide/guide.ts';
import type { Skip } from '../../src/guide/skip.ts';
import { readBoxes, type Boxes } from '../../src/widget/box.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { openDemo, type Demo } from './browser.ts';
import { box, list, option, placeIn, wizardOn } from './buyer.ts';

const typing = { units: 'us', decimalMark: '.', currency: 'USD' } as const;

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

/** How often each option was chosen and each way taken: the least used is taken next, so that all come to be. */
class Used {
  readonly counts = new Map<string, number>();
  least<T extends string>(prefix: string, of: readonly T[]): T {
    const [first] = [...of].sort((a, b) => this.of(`${prefix}=${a}`) - this.of(`${prefix}=${b}`));
    this.note(`${prefix}=${first!}`);
    return first!;
  }
  of(key: string) { return this.counts.get(key) ?? 0; }
  note(key: string) { this.counts.set(key, this.of(key) + 1); }
}

const sayings = ['not-sure', 'said'] as const;

/** What a buyer puts into a field, the option used least; nothing typed where he says nothing of it. */
function boxFor(field: Field, answers: AnswersDocument, used: Used): Boxes[string] {
  const amount = () => ('boundUnit' in field ? `${(field.from + field.to) / 4} ${field.boundUnit}` : 'from' in field ? String(Math.ceil((field.from + field.to) / 4)) : '');
  switch (field.control) {
    case 'choice':
      return { chosen: used.least(field.at, [...field.options, 'not-sure']) };
    case 'yes-no':
      return { chosen: used.least(field.at, ['yes', 'no', 'not-sure']) };
    case 'choice-or-quantity': {
      const chosen = used.least(field.at, [...field.options, 'not-sure']);
      return chosen === field.opens ? { chosen, typed: amount() } : { chosen };
    }
    case 'several': {
      const [options, one] = [field.options(answers), used.least(field.at, field.options(answers))];
      return { ticked: options.filter((option) => option === one || used.of(`${field.at}=${option}`) % 3 === 1) };
    }
    case 'order':
      return { ticked: [used.least(field.at, field.options)] };
    default:
      return used.least(field.at, sayings) === 'said' ? { typed: amount() } : {};
  }
}

async function putIn(wizard: Locator, field: Field, answers: AnswersDocument, { chosen, ticked = [], typed }: Boxes[string]) {
  const pulled = list(wizard, field.at);
  if (chosen !== undefined) await ((await pulled.count()) > 0 ? pulled.selectOption(chosen) : option(wizard, field.at, chosen).check());
  if (field.control === 'several') {
    for (const each of field.options(answers)) await option(wizard, field.at, each).setChecked(ticked.includes(each));
  }
  if (field.control === 'order') await placeIn(wizard, field.at, 0).selectOption(ticked[0]!);
  if (typed !== undefined) await box(wizard, field.at).fill(typed);
  else if ('from' in field && field.control !== 'choice-or-quantity') await box(wizard, field.at).fill('');
}

const placeOf = (visit: VisitActor): Place => {
  const snapshot = visit.getSnapshot();
  return snapshot.matches('checking') ? 'check' : snapshot.matches('result') ? 'result' : snapshot.context.at!;
};

/** Where the page is, what it holds, and what it has proven. */
const seen = (wizard: Locator) => wizard.evaluate(async (element) => {
  const page = element as AcreToAxle;
  await page.updateComplete;
  const part = (of: string) => page.shadowRoot!.querySelector<HTMLElement>(`[part="${of}"]`);
  const place = part('question')?.dataset['question'] ?? (part('check') ? 'check' : 'result');
  const { skipped } = (page as unknown as { visit: { getSnapshot(): { context: { skipped: readonly Skip[] } } } }).visit.getSnapshot().context;
  return { place, answers: page.answers, skipped, focus: page.shadowRoot!.activeElement?.id };
});

test.runIf(process.env['MODEL'])('every question, option, Back and change is walked, and the page is where the guide is', async () => {
  const { page, complaints } = await demo.open();
  const wizard = wizardOn(page);
  await wizard.evaluate((element) => (element as AcreToAxle).ready);
  const used = new Used();
  let visit = beginVisit(noAnswers);

  /** Does the same on the page and in the guide, and compares the two. */
  const both = async (does: () => Promise<unknown>, wishFor: (skips: readonly Skip[]) => Wish) => {
    const before = placeOf(visit);
    await does();
    const there = await seen(wizard);
    visit.send(wishFor(there.skipped));
    expect([there.place, there.answers]).toEqual([placeOf(visit), visit.getSnapshot().context.answers]);
    if (there.place !== before) expect(there.focus, `${before} to ${there.place}`).toBe('heading');
    used.note(`place=${there.place}`);
  };
  const press = (part: string) => () => wizard.locator(`[part="${part}"]`).click();
  const change = (question: QuestionId) => both(() => wizard.locator(`[data-change="${question}"]`).first().click(), () => ({ type: 'step.chosen', question }));

  async function answer(id: QuestionId) {
    const fields: readonly Field[] = questionOf(id).fields;
    const { answers } = visit.getSnapshot().context;
    const boxes = Object.fromEntries(fields.map((field) => [field.at, boxFor(field, answers, used)]));
    const read = readBoxes(questionOf(id), boxes, typing);
    if (read !== 'unsure' && 'faults' in read) {
      // Nothing at all was said: that is what "not sure" is for.
      await both(press('unsure'), (skips) => ({ type: 'answer.unsure', skips }));
      return;
    }
    for (const field of fields) await putIn(wizard, field, answers, boxes[field.at]!);
    await both(press('continue'), (skips) => (read === 'unsure' ? { type: 'answer.unsure', skips } : { type: 'answer.given', values: read.values, skips }));
  }

  const wanted = questions.flatMap(({ id, fields }) => (fields as readonly Field[]).flatMap((field) => {
    // Of a long list to pull down it is enough that some were chosen.
    if (field.control === 'choice' && field.options.length > 8) return [];
    if (field.control === 'choice' || field.control === 'choice-or-quantity') return [...field.options, 'not-sure'].map((option) => `${field.at}=${option}`);
    if (field.control === 'order') return field.options.map((option) => `${field.at}=${option}`);
    return id === 'tasks' || id === 'more' ? (field as Extract<Field, { control: 'several' }>).options({ format: answersFormat }).map((option) => `${field.at}=${option}`) : [];
  }));
  const missing = () => [...wanted, ...questions.map(({ id }) => `place=${id}`)].filter((key) => used.of(key) === 0);

  for (let walk = 0; walk < 60 && missing().length > 0; walk++) {
    for (let step = 0; placeOf(visit) !== 'check' && step < 60; step++) {
      const at = placeOf(visit) as QuestionId;
      if (step % 7 === 6) await both(press('back'), () => ({ type: 'step.back' }));
      else if (step % 11 === 10) {
        await both(press('see-result'), () => ({ type: 'result.asked' }));
        await both(press('resume'), () => ({ type: 'questions.resumed' }));
      } else await answer(at);
    }
    const path = await wizard.locator('[part="check"] [data-change]').evaluateAll((all) => all.map((each) => (each as HTMLElement).dataset['change'] as QuestionId));
    await change(used.least('change', path));
    while (placeOf(visit) !== 'check') await answer(placeOf(visit) as QuestionId);
    await both(press('continue'), () => ({ type: 'answers.checked' }));
    await change(used.least('change', path));
    while (placeOf(visit) !== 'result') await answer(placeOf(visit) as QuestionId);
    await both(press('start-again'), () => ({ type: 'visit.cleared' }));
    if (walk === 0) {
      // Brought back, all is as it was.
      await both(press('see-result'), () => ({ type: 'result.asked' }));
      await both(press('bring-back'), () => ({ type: 'visit.restored' }));
      await wizard.evaluate((element, none) => { (element as AcreToAxle).answers = none; }, noAnswers);
      visit = beginVisit(noAnswers);
    }
  }
  expect(missing()).toEqual([]);
  expect(complaints).toEqual([]);
  console.log(`walked: ${[...used.counts.values()].reduce((sum, count) => sum + count, 0)} choices and steps, ${used.counts.size} different`);
}, 1_200_000);
