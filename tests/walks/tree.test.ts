import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { questionOf, type QuestionId } from '../../src/answers/questions.ts';
import { en } from '../../src/reasons/words/en.ts';
import { openDemo, type Demo } from './browser.ts';
import { box, isCheck, option, questionOn, unsure, wizardOn } from './buyer.ts';
import { atEveryStep } from './every-step.ts';
import { treeReader, type TreeNode } from './tree.ts';

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

/** Roles that are operated: each must say what it is. */
const operated = ['button', 'link', 'checkbox', 'radio', 'textbox', 'combobox', 'DisclosureTriangle', 'group', 'radiogroup', 'heading', 'image', 'figure'];
/** Groups that only hold things together have no name, and need none. */
const mayBeNameless = ['group', 'figure'];

const wordsOf = (id: QuestionId) => en.questions[id as keyof typeof en.questions];
const of = (tree: readonly TreeNode[], role: string) => tree.filter((node) => node.role === role);
const named = (tree: readonly TreeNode[], role: string, name: string) => {
  const found = tree.find((node) => node.role === role && node.name === name);
  if (!found) throw new Error(`no ${role} “${name}” among ${of(tree, role).map((node) => `“${node.name}”`).join(', ')}`);
  return found;
};

async function open(): Promise<{ page: Page; tree: () => Promise<TreeNode[]> }> {
  const { page } = await demo.open({ viewport: { width: 700, height: 800 } });
  return { page, tree: await treeReader(page) };
}

/** Goes on unsure until a question is asked. */
async function goTo(page: Page, id: QuestionId) {
  const wizard = wizardOn(page);
  while ((await questionOn(wizard)) !== id) {
    if (await isCheck(wizard)) throw new Error(`${id} is not asked`);
    await unsure(wizard);
  }
}

/** What has the focus, as a screen reader is told it. */
const focusedOf = (tree: readonly TreeNode[]) => tree.findLast(({ states, role }) => states['focused'] === true && role !== 'RootWebArea');

test('on every step all that is operated has a name, one heading tells what is asked, and it has the focus', async () => {
  const { page, tree } = await open();
  const stops: string[] = [];
  await atEveryStep(wizardOn(page), async (stop) => {
    stops.push(stop);
    // The summary of the first question's faults keeps the focus while that question is looked at.
    const atHeading = stop !== 'faults' && stop !== 'tasks';
    // A browser brings the tree up to date when it gets round to it.
    if (atHeading) await expect.poll(async () => focusedOf(await tree())?.role, { message: stop }).toBe('heading');
    const nodes = await tree();
    expect(nodes.filter(({ role, name }) => operated.includes(role) && !mayBeNameless.includes(role) && name === '').map(({ role }) => `${stop}: ${role} without a name`)).toEqual([]);
    if (stop === 'faults') return expect(of(nodes, 'alert').length).toBe(1);
    if (stop === 'check' || stop === 'result') return expect(of(nodes, 'heading').length).toBeGreaterThan(1);
    const heading = named(nodes, 'heading', wordsOf(stop).ask);
    if (atHeading) expect(focusedOf(nodes), stop).toEqual(heading);
    for (const field of questionOf(stop).fields) {
      const { label = '' } = wordsOf(stop).fields[field.at] ?? {};
      if (field.control === 'money' || field.control === 'number' || field.control === 'quantity') {
        expect(of(nodes, 'textbox').some(({ name }) => name.startsWith(label)), `${stop}: “${label}” among ${of(nodes, 'textbox').map(({ name }) => name).join(' | ')}`).toBe(true);
      }
    }
  });
  expect(stops.length).toBeGreaterThan(30);
});

test('boxes to tick are a group named by the question, none of them ticked, and say so once they are', async () => {
  const { page, tree } = await open();
  const { ask, fields } = wordsOf('tasks');
  const before = await tree();
  named(before, 'group', ask);
  expect(of(before, 'checkbox').map(({ states }) => states['checked'])).toEqual(of(before, 'checkbox').map(() => 'false'));
  await option(wizardOn(page), 'tasks', 'dig').check();
  const label = fields.tasks!.options!['dig']!;
  expect((await tree()).filter(({ role, states }) => role === 'checkbox' && states['checked'] === 'true').map(({ name }) => name)).toEqual([expect.stringContaining(label)]);
});

test('options of one choice are radios, “Not sure” last; the one that is chosen says so', async () => {
  const { page, tree } = await open();
  await goTo(page, 'storage');
  const radios = async () => of(await tree(), 'radio').filter(({ name }) => name !== en.wizard.unitsUs && name !== en.wizard.unitsMetric);
  const before = await radios();
  expect(before.map(({ states }) => states['checked'])).toEqual(before.map(() => 'false'));
  expect(before.at(-1)!.name).toBe(en.wizard.notSure);
  await option(wizardOn(page), 'storage.kind', 'shed').check();
  expect((await radios()).filter(({ states }) => states['checked'] === 'true').length).toBe(1);
});

test('a box that was typed wrongly is told as such, with the fault as its description, and the summary says the same', async () => {
  const { page, tree } = await open();
  const wizard = wizardOn(page);
  await goTo(page, 'gate');
  await box(wizard, 'land.gate').fill('wide enough');
  await wizard.locator('[part="continue"]').click();
  const nodes = await tree();
  const wrong = of(nodes, 'textbox').find(({ states }) => states['invalid'] === 'true')!;
  const alert = of(nodes, 'alert');
  expect(alert.length).toBe(1);
  const link = nodes[nodes.indexOf(alert[0]!) + 1 + nodes.slice(nodes.indexOf(alert[0]!) + 1).findIndex(({ role }) => role === 'link')]!;
  expect(link.name).not.toBe('');
  expect(wrong.description).toContain(link.name);
  await wizard.locator('[part="fault-summary"] a').click();
  expect(focusedOf(await tree())!.name).toBe(wrong.name);
});

test('what is folded away says so, and that it is open once it is', async () => {
  const { page, tree } = await open();
  const why = async () => named(await tree(), 'DisclosureTriangle', en.wizard.why).states['expanded'];
  expect(await why()).toBe(false);
  await wizardOn(page).locator('[part="question"] summary').click();
  expect(await why()).toBe(true);
});

test('Tab goes from one to the next in the order in which they are told, and leaves the wizard at its end', async () => {
  const { page, tree } = await open();
  const wizard = wizardOn(page);
  await goTo(page, 'storage');
  const nodes = await tree();
  const stops = nodes.filter(({ states, role }) => states['focusable'] === true && ['radio', 'button', 'textbox', 'combobox', 'DisclosureTriangle', 'checkbox'].includes(role));
  const told = stops.map(({ role, name }) => `${role} ${name}`);
  const passed: string[] = [];
  await wizard.locator('#heading').focus();
  for (let step = 0; step < told.length + 1; step++) {
    await page.keyboard.press('Tab');
    if (!(await wizard.evaluate((element) => element.shadowRoot!.activeElement !== null))) break;
    const { role, name } = focusedOf(await tree())!;
    passed.push(`${role} ${name}`);
  }
  // A group of radios is one stop; all others are passed, in their order.
  const places = passed.map((each) => told.indexOf(each));
  expect(places).toEqual([...places].sort((a, b) => a - b));
  expect(places).not.toContain(-1);
  expect(told.filter((each) => !each.startsWith('radio')).filter((each) => !passed.includes(each))).toEqual([]);
  expect(await wizard.evaluate((element) => element.shadowRoot!.activeElement)).toBe(null);
});
