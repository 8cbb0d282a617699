import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { questionOf, questions, type Field, type Question } from '../../src/answers/questions.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { openDemo, type Demo, type Visit } from './browser.ts';
import { box, isResult, list, option, placeIn, questionOn, unsure, wizardOn } from './buyer.ts';
import { notSure, scriptedBuyers, type ScriptedBuyer } from './scripted-buyers.ts';

/** How fast a text is read in silence, and how long a buyer should need to read his way to a shortlist. */
const wordsAMinute = 230;
const mostSeconds = 180;

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

/** Texts on screen in what each selector finds first: not what is drawn, not what is folded away, of a list to pull down only what shows. */
const textsIn = (wizard: Locator, ...selectors: string[]): Promise<string[]> => wizard.evaluate((element, wanted) => {
  const seen = (node: Node): string[] => {
    if (node instanceof Text) return [node.data];
    if (!(node instanceof Element) || node.matches('.echo, [aria-hidden="true"], svg') || !node.checkVisibility()) return [];
    if (node instanceof HTMLSelectElement) return [node.selectedOptions[0]?.textContent ?? ''];
    const children = node.matches('details:not([open])') ? [...node.children].filter((child) => child.matches('summary')) : [...node.childNodes];
    return children.flatMap(seen);
  };
  return wanted.flatMap((selector) => element.shadowRoot!.querySelector(selector) ?? []).flatMap(seen).map((text) => text.trim());
}, selectors);

/** A reader who has read "Continue" once knows it again where it stands: of a text met before, with a colon or without, only its figures are read anew. */
function reader() {
  const known = new Set<string>();
  return (texts: readonly string[]) => texts.map((text) => text.replace(/\s*:$/, '')).reduce((sum, text) => {
    const words = text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word));
    const kind = text.replaceAll(/\p{N}+/gu, '#');
    const read = known.has(text) ? 0 : known.has(kind) ? words.filter((word) => /\p{N}/u.test(word)).length : words.length;
    known.add(text).add(kind);
    return sum + read;
  }, 0);
}

/** The result as far as it is read at first: the answer, what is not cleared, and the first machine with why and why not; or the ways out. */
const firstScreenful = [
  '[part="result"] > .close', '[part="not-cleared"]', '[part="result"] > .machine header', '[part="result"] > .machine .columns > :first-child', '[part="result"] > .machine li.against',
];
const whereNothingFits = ['[part="result"] > .close', '[part="not-cleared"]', '[part="conflicts"]', '[part="ways-out"]'];

/** What is the same on every step: how far it is, why it is asked, and the ways on and back. */
const around = ['[part="progress"]', '[part="question"] summary', '[part="question"] > .actions', '[part="question"] > .actions.apart'];

/** Answers one field as typed and ticked. */
async function fill(wizard: Locator, field: Field, said: string | readonly string[]) {
  if (typeof said !== 'string') {
    for (const [place, each] of said.entries()) await (field.control === 'order' ? placeIn(wizard, field.at, place).selectOption(each) : option(wizard, field.at, each).check());
    return;
  }
  const value = said === notSure ? 'not-sure' : said;
  if (field.control === 'choice' && (await list(wizard, field.at).count()) > 0) return void (await list(wizard, field.at).selectOption(value));
  if (['choice', 'yes-no', 'choice-or-quantity'].includes(field.control)) return option(wizard, field.at, value).check();
  return box(wizard, field.at).fill(said);
}

/** Answers what is on show, or goes on where there is no question; what wasn't understood ends the walk. */
async function goOn(wizard: Locator, { answers }: ScriptedBuyer): Promise<Question | undefined> {
  const id = await questionOn(wizard);
  const question = id && questionOf(id);
  const said = question?.fields.flatMap((field) => (answers[field.at] === undefined ? [] : [{ field, value: answers[field.at]! }])) ?? [];
  for (const { field, value } of said) await fill(wizard, field, value);
  if (!question || said.length > 0) await wizard.locator('[part="continue"]').click();
  else await unsure(wizard);
  const faults = wizard.locator('[part="fault-summary"]');
  if ((await faults.count()) > 0) throw new Error(`${question?.id}: ${await faults.textContent()}`);
  return question;
}

/** Walks to the result; gives the questions asked and the words that stood on the way, by where they stood. */
async function readAlong(wizard: Locator, buyer: ScriptedBuyer) {
  const words = { 'the questions': 0, 'around them': 0, 'other pages': 0, 'the result': 0 };
  const steps: { id: string; words: number }[] = [];
  const read = reader();
  while (!(await isResult(wizard))) {
    const aside = read(await textsIn(wizard, ...around));
    const here = read(await textsIn(wizard, '[part="question"], [part="check"]'));
    const question = await goOn(wizard, buyer);
    words[question ? 'the questions' : 'other pages'] += here;
    words['around them'] += aside;
    if (question) steps.push({ id: question.id, words: here + aside });
  }
  const stands = (await wizard.locator('[part="result"] > .machine').count()) > 0;
  words['the result'] = read(await textsIn(wizard, ...(stands ? firstScreenful : whereNothingFits)));
  return { words, steps };
}

const secondsFor = (words: number) => (60 * words) / wordsAMinute;

describe.each(scriptedBuyers)('$name: $story', (buyer) => {
  let visit: Visit;
  let read: Awaited<ReturnType<typeof readAlong>>;
  beforeAll(async () => {
    visit = await demo.open({ viewport: { width: buyer.screen ?? 1280, height: buyer.screen ? 640 : 800 } });
    const wizard = wizardOn(visit.page);
    await wizard.evaluate(async (element, { lang, units }) => {
      if (lang) element.setAttribute('lang', lang);
      if (units) element.setAttribute('units', units);
      await (element as AcreToAxle).ready;
    }, { lang: buyer.lang, units: buyer.units });
    read = await readAlong(wizard, buyer);
  });
  afterAll(() => visit.page.context().close());

  test('comes to a machine or a way out, and is asked nothing twice', async () => {
    expect(await wizardOn(visit.page).locator('[part="machine"], [part="ways-out"] li').count()).toBeGreaterThan(0);
    expect(new Set(read.steps.map(({ id }) => id)).size).toBe(read.steps.length);
    expect(visit.complaints).toEqual([]);
  });

  const most = buyer.seconds ?? mostSeconds;
  test(`reads less than ${most} seconds`, () => {
    const parts = Object.entries(read.words);
    expect(parts.filter(([part, count]) => part !== 'other pages' && count < 20)).toEqual([]);
    const seconds = parts.reduce((sum, [, count]) => sum + secondsFor(count), 0);
    const inParts = parts.map(([part, count]) => `${part} ${secondsFor(count).toFixed(0)} s`).join(', ');
    console.log(`${buyer.name}: ${read.steps.length} questions, ${seconds.toFixed(0)} s (${inParts})\n  ${read.steps.map((step) => `${step.id} ${secondsFor(step.words).toFixed(0)}`).join(', ')}`);
    expect(seconds, `${(seconds - most).toFixed(0)} s too long: ${inParts}`).toBeLessThan(most);
  });
});

test('every answer in a script belongs to a field there is, and no two scripts are alike', () => {
  const fields: readonly string[] = questions.flatMap((question) => question.fields.map(({ at }) => at));
  expect(scriptedBuyers.flatMap(({ answers }) => Object.keys(answers)).filter((at) => !fields.includes(at))).toEqual([]);
  expect(new Set(scriptedBuyers.map(({ answers }) => JSON.stringify(answers.tasks))).size).toBe(scriptedBuyers.length);
});

test('control: what can’t be read ends the walk', async () => {
  const { page } = await demo.open();
  const vague = { ...scriptedBuyers[0]!, answers: { ...scriptedBuyers[0]!.answers, 'land.mown': 'about an acre' } };
  await expect(readAlong(wizardOn(page), vague)).rejects.toThrow('lawn: ');
});
