import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { wizardOn } from './buyer.ts';

const read = (path: string) => readFileSync(new URL(`../../demo/${path}`, import.meta.url), 'utf8');
export const answers = JSON.parse(read('answers/first-acre.json')) as AnswersDocument;
export const lot = JSON.parse(read('catalogue.json')) as CatalogueDocument;

/** Answers all for a buyer, on a page that is open, and shows the result. @param relay  what mails it */
export async function goToResult(page: Page, relay: string, catalogue: CatalogueDocument = lot): Promise<Locator> {
  const wizard = wizardOn(page);
  await wizard.evaluate(async (element, [said, at, stock]) => {
    const widget = element as AcreToAxle;
    widget.relay = at;
    widget.catalogue = stock;
    await widget.ready;
    widget.answers = said;
  }, [answers, relay, catalogue] as const);
  await wizard.locator('[part="see-result"], [part="result"]').first().waitFor();
  if (await wizard.locator('[part="see-result"]').count() > 0) await wizard.locator('[part="see-result"]').click();
  await wizard.locator('[part="result"]').waitFor();
  return wizard;
}
