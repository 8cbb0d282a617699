/// <reference types="mocha" />
import { assert } from 'chai';
import '../../src/widget/define.ts';
// Fetched file by file here, it takes longer than a test may.
import '../../src/widget/reckoner.ts';
import '../../src/reasons/words/en/telling.ts';
import '../../src/reasons/words/de/telling.ts';
import type { AcreToAxle } from '../../src/widget/define.ts';
import { all } from './on-page.ts';
import { answersFormat } from '../../src/answers/schema.ts';

const catalogue = (await (await fetch('/demo/catalogue.json')).json()) as NonNullable<AcreToAxle['catalogue']>;
const said = { format: answersFormat, land: { slope: 'flat', overhead: 'open' }, drivers: { least: 'experienced', under18: false } } as const;

async function press(wizard: AcreToAxle, button: HTMLButtonElement | undefined) {
  assert.isDefined(button);
  button!.click();
  await wizard.updateComplete;
}

afterEach(() => { document.body.replaceChildren(); });

it('from how a machine ranks to the order and back: what was said stays, however long the order', async () => {
  const wizard = document.createElement('acre-to-axle');
  wizard.catalogue = catalogue;
  wizard.answers = { ...said, priorities: ['headroom', 'price', 'comfort', 'resale'] };
  document.body.append(wizard);
  await wizard.ready;
  const named = (text: string) => all<HTMLButtonElement>(wizard, 'button').find((each) => each.textContent.trim() === text);
  if (!named('Change what matters most')) await press(wizard, named('See the result so far'));
  await press(wizard, named('Change what matters most'));
  const places = all<HTMLSelectElement>(wizard, '[part="question"] select');
  assert.deepEqual(places.map(({ value }) => value), ['headroom', 'price', 'comfort', 'resale', '']);
  places[0]!.value = 'fit';
  places[0]!.dispatchEvent(new Event('change', { bubbles: true }));
  await wizard.updateComplete;
  await press(wizard, named('Continue'));
  assert.isDefined(named('Change what matters most'), 'back at the result');
  assert.deepEqual(wizard.answers, { ...said, priorities: ['fit', 'price', 'comfort', 'resale'] });
});
