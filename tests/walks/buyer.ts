import type { Locator, Page } from 'playwright-core';
import { answerAt } from '../../src/answers/at.ts';
import { questionOf, type Field, type QuestionId } from '../../src/answers/questions.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { withFinerPoints } from '../support/with-finer-points.ts';

/** A buyer who answers the wizard on the page as a document says, and is not sure of the rest. */
export const wizardOn = (page: Page) => page.locator('acre-to-axle');

const isAmount = (value: unknown): value is { value: number; unit: string } => typeof value === 'object' && value !== null && 'unit' in value;

const nameOf = (at: string) => `field-${at.replaceAll('.', '-')}`;

/** The box a field is typed in, the option of a value, the list to pull down, the list of a place in an order. */
export const box = (wizard: Locator, at: string) => wizard.locator(`input[type="text"][data-field="${at}"]`);
export const option = (wizard: Locator, at: string, value: string) => wizard.locator(`input[name="${nameOf(at)}"][value="${value}"]`);
export const list = (wizard: Locator, at: string) => wizard.locator(`select[data-field="${at}"]`);
export const placeIn = (wizard: Locator, at: string, place: number) => wizard.locator(`#${nameOf(at)}-${place}`);

async function fill(wizard: Locator, field: Field, value: unknown) {
  const typed = (amount: { value: number; unit: string }) => box(wizard, field.at).fill(`${amount.value} ${amount.unit === 'percent' ? '%' : amount.unit}`);
  switch (field.control) {
    case 'choice': {
      const pulled = list(wizard, field.at);
      return (await pulled.count()) > 0 ? pulled.selectOption(String(value)).then(() => undefined) : option(wizard, field.at, String(value)).check();
    }
    case 'yes-no':
      return option(wizard, field.at, value ? 'yes' : 'no').check();
    case 'several':
      for (const each of value as string[]) await option(wizard, field.at, each).check();
      return;
    case 'order':
      for (const [place, each] of (value as string[]).slice(0, field.places).entries()) {
        await placeIn(wizard, field.at, place).selectOption(each);
      }
      return;
    case 'choice-or-quantity':
      await option(wizard, field.at, isAmount(value) ? field.opens : String(value)).check();
      if (isAmount(value)) await typed(value);
      return;
    case 'money':
      return box(wizard, field.at).fill(String((value as { value: number }).value));
    case 'number':
      return box(wizard, field.at).fill(String(value));
    default:
      return typed(value as { value: number; unit: string });
  }
}

/** The question on show; none on the pages that follow them. */
export const questionOn = (wizard: Locator): Promise<QuestionId | undefined> => wizard.evaluate((element) =>
  (element.shadowRoot!.querySelector<HTMLElement>('[data-question]')?.dataset.question as QuestionId | undefined));

/** Where one option is chosen, "not sure" is the last of them; elsewhere it is a button. */
export async function unsure(wizard: Locator) {
  const last = wizard.locator('input[value="not-sure"]');
  const button = wizard.locator('[part="unsure"]');
  if ((await button.count()) > 0) return button.click();
  await last.check();
  return wizard.locator('[part="continue"]').click();
}

/** Answers the question on show as the document says; "not sure" where it says nothing. */
export async function answer(wizard: Locator, answers: AnswersDocument) {
  const id = (await questionOn(wizard))!;
  const said = questionOf(id).fields.flatMap((field) => {
    const value = answerAt(withFinerPoints(answers), field.at);
    return value === undefined || (Array.isArray(value) && value.length === 0 && id !== 'musts') ? [] : [{ field, value }];
  });
  for (const { field, value } of said) await fill(wizard, field, value);
  if (said.length > 0) await wizard.locator('[part="continue"]').click();
  else await unsure(wizard);
  return id;
}

export const isResult = (wizard: Locator) => wizard.locator('[part="result"]').isVisible();

export const isCheck = (wizard: Locator) => wizard.locator('[part="check"]').isVisible();

/** Answers question after question until all answers are to be checked; gives the questions in the order they were asked. */
export async function walkToCheck(wizard: Locator, answers: AnswersDocument): Promise<QuestionId[]> {
  const asked: QuestionId[] = [];
  const isNext = async () => {
    await wizard.locator('[data-question], [part="check"]').first().waitFor();
    return !(await isCheck(wizard));
  };
  while (await isNext()) asked.push(await answer(wizard, answers));
  return asked;
}

/** Walks from the first question to the result; gives the questions in the order they were asked. */
export async function walk(wizard: Locator, answers: AnswersDocument): Promise<QuestionId[]> {
  const asked = await walkToCheck(wizard, answers);
  await wizard.locator('[part="continue"]').click();
  return asked;
}
