/// <reference types="mocha" />
import 'axe-core/axe.min.js';
import { assert } from 'chai';
import '../../src/widget/define.ts';
// Fetched file by file here, it takes longer than a test may.
import '../../src/widget/reckoner.ts';
import '../../src/reasons/words/en/telling.ts';
import type { AcreToAxle } from '../../src/widget/define.ts';
import { all, settled } from './on-page.ts';

declare const axe: { run(root: Element, options: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };

const catalogue = (await (await fetch('/demo/catalogue.json')).json()) as Exclude<NonNullable<AcreToAxle['catalogue']>, string>;
const bales = { format: 'acre-to-axle/answers/1', tasks: [{ task: 'lift-bales', must: true, weight: { value: 900, unit: 'lb' }, height: { value: 8, unit: 'ft' } }] } as const;

async function shown(width: number, answers: AcreToAxle['answers'] = bales as never) {
  const wizard = document.createElement('acre-to-axle');
  wizard.catalogue = catalogue;
  wizard.style.inlineSize = `${width}px`;
  document.body.append(wizard);
  await wizard.ready;
  wizard.answers = answers;
  await settled(wizard);
  return wizard;
}

afterEach(() => { document.body.replaceChildren(); });

it('stands beside the question where there is room, every machine once, at its standing', async () => {
  const wizard = await shown(1200);
  assert.lengthOf(all(wizard, '.drawn svg g.machine'), catalogue.machines.length);
  const { ruledOut } = wizard.shortlist!;
  assert.isNotEmpty(ruledOut);
  assert.sameMembers(all(wizard, '.drawn svg g.ruled-out').map(({ id }) => id), ruledOut.map(({ machine }) => `line-up-machine-${machine}`));
});

it('is one tap away where there isn’t, and then no wider than the page', async () => {
  const wizard = await shown(320);
  assert.equal(all(wizard, '.drawn svg').length, 0);
  all<HTMLElement>(wizard, 'details.folded > summary')[0]!.click();
  await settled(wizard);
  assert.lengthOf(all(wizard, '.drawn svg g.machine'), catalogue.machines.length);
  assert.isAtMost(all(wizard, '.drawn svg')[0]!.getBoundingClientRect().right, wizard.getBoundingClientRect().right);
});

it('a machine that is tapped says why it steps back; one that comes back says so', async () => {
  const wizard = await shown(1200);
  const { machine } = wizard.shortlist!.ruledOut[0]!;
  all(wizard, `#line-up-machine-${machine}`)[0]!.dispatchEvent(new MouseEvent('click', { bubbles: true }));
  await settled(wizard);
  const said = all(wizard, '.pointed')[0]!.textContent;
  assert.include(said, catalogue.machines.find(({ id }) => id === machine)!.name);
  assert.include(said, 'ruled out');
  const result = all<HTMLButtonElement>(wizard, 'button').find(({ textContent }) => textContent.trim() === 'See the result so far');
  result!.click();
  await settled(wizard);
  const reasons = all(wizard, '[part="ruled-out"] li').map(({ textContent }) => textContent.trim());
  assert.isTrue(reasons.some((reason) => said!.includes(reason)), said!);
  wizard.answers = { format: 'acre-to-axle/answers/1', tasks: [{ task: 'lift-bales', must: false }] };
  await settled(wizard);
  assert.notInclude(all(wizard, '.pointed')[0]!.textContent, 'ruled out');
});

it('a tap between the lines of a machine is a tap on it', async () => {
  const wizard = await shown(1200);
  const [machine] = all(wizard, '.drawn svg g.machine');
  const { left, top } = machine!.getBoundingClientRect();
  all(wizard, '.drawn svg')[0]!.dispatchEvent(new MouseEvent('click', { bubbles: true, clientX: left + 1, clientY: top + 1 }));
  await settled(wizard);
  const { name } = catalogue.machines.find(({ id }) => machine!.id.endsWith(`-${id}`))!;
  assert.include(all(wizard, '.pointed')[0]!.textContent, name);
});

it('says the same in words, and axe has nothing to say, from either side', async function () {
  this.timeout(20_000);
  const wizard = await shown(1200);
  const words = all(wizard, '.line-up li').map(({ textContent }) => textContent);
  assert.lengthOf(words, catalogue.machines.length);
  for (const { name } of catalogue.machines) assert.isTrue(words.some((line) => line!.includes(name)), name);
  for (const side of [0, 1]) {
    all<HTMLInputElement>(wizard, 'input[name="line-up-view"]')[side]!.click();
    await settled(wizard);
    const { violations } = await axe.run(wizard, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'], rules: { region: { enabled: false } } });
    assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`), []);
  }
});
