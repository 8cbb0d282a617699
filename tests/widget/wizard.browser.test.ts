/// <reference types="mocha" />
import { assert } from 'chai';
import '../../src/widget/define.ts';
// Fetched file by file here, it takes longer than a test may.
import '../../src/widget/delivery.ts';
import '../../src/widget/reckoner.ts';
import '../../src/reasons/words/en/telling.ts';
import '../../src/reasons/words/de/telling.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import type { AcreToAxle } from '../../src/widget/define.ts';
import { all, settled } from './on-page.ts';

const catalogue = (await (await fetch('/demo/catalogue.json')).json()) as NonNullable<AcreToAxle['catalogue']>;

async function shown(set: (wizard: AcreToAxle) => void = () => {}): Promise<AcreToAxle> {
  const wizard = document.createElement('acre-to-axle');
  wizard.catalogue = catalogue;
  set(wizard);
  document.body.append(wizard);
  await wizard.ready;
  await settled(wizard);
  return wizard;
}

const heading = (wizard: AcreToAxle) => all(wizard, 'h2')[0]!.textContent;
const focused = (wizard: AcreToAxle) => wizard.shadowRoot!.activeElement?.id;

async function press(wizard: AcreToAxle, text: string) {
  const button = all<HTMLButtonElement>(wizard, 'button').find((each) => each.textContent.trim() === text);
  assert.isDefined(button, `a button "${text}"`);
  button!.click();
  await settled(wizard);
}

async function choose(wizard: AcreToAxle, value: string) {
  const input = all<HTMLInputElement>(wizard, 'input').find((each) => each.value === value);
  assert.isDefined(input, `an option "${value}"`);
  input!.click();
  await settled(wizard);
}

async function type(wizard: AcreToAxle, at: string, text: string) {
  const input = all<HTMLInputElement>(wizard, `input[data-field="${at}"]`)[0]!;
  input.value = text;
  input.dispatchEvent(new Event('input', { bubbles: true }));
  await settled(wizard);
}

/** Where one option is chosen, "not sure" is the last of them; elsewhere it is a button. */
async function beUnsure(wizard: AcreToAxle) {
  const last = all<HTMLInputElement>(wizard, 'input[value="not-sure"]');
  if (all(wizard, 'button').some(({ textContent }) => textContent.trim() === 'Not sure')) return press(wizard, 'Not sure');
  last[0]!.click();
  return press(wizard, 'Continue');
}

/** To the page where the answers are checked, with a job said and all else left unsure. */
async function toCheck(set: (wizard: AcreToAxle) => void = () => {}, task = 'dig') {
  const wizard = await shown(set);
  await choose(wizard, task);
  await press(wizard, 'Continue');
  while (!all(wizard, '[part="check"]')[0]) await beUnsure(wizard);
  return wizard;
}

async function toLawn() {
  const wizard = await shown();
  await choose(wizard, 'mow-lawn');
  await press(wizard, 'Continue');
  await press(wizard, 'Continue');
  return wizard;
}

afterEach(() => { document.body.replaceChildren(); });

it('takes no focus on first load, and gives it to the heading when the buyer moves on', async () => {
  const wizard = await shown();
  assert.equal(document.activeElement, document.body);
  await choose(wizard, 'dig');
  await press(wizard, 'Continue');
  assert.equal(focused(wizard), 'heading');
});

it('asks the first question before the line-up is there, keeps what was ticked, and waits with the next', async () => {
  let arrive = (_answer: Response) => {};
  const fetched = window.fetch;
  const asked = new Promise<void>((called) => {
    window.fetch = () => new Promise((resolve) => {
      arrive = resolve;
      called();
    });
  });
  try {
    const wizard = document.createElement('acre-to-axle');
    wizard.catalogue = '/demo/on-its-way.json';
    document.body.append(wizard);
    await settled(wizard);
    await choose(wizard, 'dig');
    const { ready } = wizard;
    await asked;
    arrive(Response.json(catalogue));
    await ready;
    assert.deepEqual(all<HTMLInputElement>(wizard, 'input[type=checkbox]:checked').map(({ value }) => value), ['dig']);
    await press(wizard, 'Continue');
    assert.deepEqual(wizard.answers.tasks, [{ task: 'dig' }]);
  } finally {
    window.fetch = fetched;
  }
});

it('an order to wait is said while the line-up is on its way and the first question is answered', async () => {
  const fetched = window.fetch;
  window.fetch = () => new Promise(() => {});
  try {
    const wizard = document.createElement('acre-to-axle');
    wizard.catalogue = '/demo/never.json';
    document.body.append(wizard);
    await settled(wizard);
    await choose(wizard, 'dig');
    await press(wizard, 'Continue');
    assert.isNotEmpty(all(wizard, '[role=status]')[0]?.textContent);
  } finally {
    window.fetch = fetched;
  }
});

it('a question proven to move nothing is not asked; the result says why, and asks it all the same', async () => {
  const wizard = await shown((element) => {
    const { machines } = catalogue as CatalogueDocument;
    element.catalogue = { ...(catalogue as CatalogueDocument), machines: machines.slice(0, 1), units: [] };
  });
  const proven = async () => {
    while (!(wizard as unknown as { proving: { proof?: { skips?: unknown } } }).proving.proof?.skips) await new Promise((resolve) => { requestAnimationFrame(resolve); });
  };
  await choose(wizard, 'clear-snow');
  await proven();
  await press(wizard, 'Continue');
  await proven();
  await press(wizard, 'Continue');
  await press(wizard, 'See the result so far');
  const line = all(wizard, '.answers > div').find(({ textContent }) => textContent!.includes('Not asked'));
  assert.include(line?.textContent, (catalogue as CatalogueDocument).machines[0]!.name);
  line!.querySelector('button')!.click();
  await settled(wizard);
  assert.isNotEmpty(all(wizard, 'select'), 'the order is asked');
});

it('answers set before anything can check them wait, and their faults are told', async () => {
  const wizard = document.createElement('acre-to-axle');
  const told: string[] = [];
  wizard.addEventListener('acre-error', (event) => { told.push((event as CustomEvent<{ code: string }>).detail.code); });
  wizard.catalogue = catalogue;
  wizard.answers = { format: 'acre-to-axle/answers/1', land: { slope: 'hilly' } } as never;
  document.body.append(wizard);
  await wizard.ready;
  assert.deepEqual(told, ['answers.faulty']);
  assert.deepEqual(wizard.answers, { format: 'acre-to-axle/answers/1' });
});

it('says on Continue that nothing was chosen: summary first, with the focus, and the same words at the field', async () => {
  const wizard = await shown();
  await press(wizard, 'Continue');
  assert.equal(focused(wizard), 'summary');
  const [link] = all<HTMLAnchorElement>(wizard, '.summary a');
  assert.equal(all(wizard, '.fault')[0]!.textContent, link!.textContent);
  link!.click();
  assert.equal(wizard.shadowRoot!.activeElement?.getAttribute('data-field'), 'tasks');
});

it('keeps what was typed when it cannot be read, and names field, rule and example', async () => {
  const wizard = await toLawn();
  await type(wizard, 'land.mown', '2 acres');
  await type(wizard, 'tasks.mow-lawn.hours', 'a while');
  await press(wizard, 'Continue');
  assert.equal(all<HTMLInputElement>(wizard, '[data-field="tasks.mow-lawn.hours"]')[0]!.value, 'a while');
  assert.equal(all<HTMLInputElement>(wizard, '[data-field="land.mown"]')[0]!.value, '2 acres');
  assert.match(all(wizard, '.fault')[0]!.textContent, /Longest you want one mow to take.*For example/);
});

it('echoes what it understood, in both systems of units', async () => {
  const wizard = await toLawn();
  await type(wizard, 'land.mown', '2 ac');
  assert.match(all(wizard, '.echo')[0]!.textContent, /2\s*acres.*0\.81\s*ha/);
});

it('keeps every answer through Back', async () => {
  const wizard = await toLawn();
  await type(wizard, 'land.mown', '2 acres');
  await press(wizard, 'Continue');
  const { answers } = wizard;
  await press(wizard, 'Back');
  assert.equal(all<HTMLInputElement>(wizard, '[data-field="land.mown"]')[0]!.value, '2 acre');
  assert.deepEqual(wizard.answers, answers);
});

it('keeps the unit as it was typed when the units are switched', async () => {
  const wizard = await toLawn();
  await type(wizard, 'land.mown', '2 acres');
  await press(wizard, 'Continue');
  all<HTMLInputElement>(wizard, '.units input')[1]!.click();
  await settled(wizard);
  assert.deepEqual(wizard.answers.land?.mown, { value: 2, unit: 'acre' });
});

it('shows the result at any time, and goes on with the questions from there', async () => {
  const wizard = await toLawn();
  await press(wizard, 'See the result so far');
  assert.equal(heading(wizard), 'What fits your work');
  assert.isAbove(all(wizard, '.machine').length, 0);
  await press(wizard, 'Go on with the questions');
  assert.match(heading(wizard), /How much lawn/);
});

it('“not sure” is the last option, chosen by nobody but the buyer, and counts as an answer', async () => {
  const wizard = await shown();
  await choose(wizard, 'dig');
  await press(wizard, 'Continue');
  while (!/steepest/.test(heading(wizard))) await beUnsure(wizard);
  const options = all<HTMLInputElement>(wizard, 'input[type=radio][name^=field]');
  assert.equal(options.at(-1)!.value, 'not-sure');
  assert.isFalse(options.some(({ checked }) => checked));
  await press(wizard, 'Continue');
  assert.equal(focused(wizard), 'summary');
  await choose(wizard, 'not-sure');
  await press(wizard, 'Continue');
  assert.isTrue(wizard.answers.unsure?.includes('slope'));
  await press(wizard, 'Back');
  assert.isTrue(all<HTMLInputElement>(wizard, 'input[value="not-sure"]')[0]!.checked, 'said before, it stays said');
});

it('asks which of two readings of a number is meant, and takes the one chosen', async () => {
  const wizard = await shown((each) => { each.lang = 'de'; each.units = 'metric'; });
  await choose(wizard, 'move-loose');
  const go = async () => {
    all<HTMLButtonElement>(wizard, '[part="continue"]')[0]!.click();
    await settled(wizard);
  };
  await go();
  await go();
  await type(wizard, 'tasks.move-loose.volume', '1,500');
  await go();
  assert.equal(focused(wizard), 'summary');
  const readings = all<HTMLButtonElement>(wizard, '.wrong button');
  assert.deepEqual(readings.map(({ textContent }) => textContent.replaceAll(/\s/g, ' ')), ['1,5 m³', '1.500 m³']);
  readings[1]!.click();
  await settled(wizard);
  await go();
  assert.deepInclude(wizard.answers.tasks?.[0], { volume: { value: 1500, unit: 'm3' } });
});

it('all answers are checked before the result; one changed there leads back there', async () => {
  const wizard = await toCheck();
  assert.equal(focused(wizard), 'heading');
  all<HTMLButtonElement>(wizard, 'button[aria-label^="Change: What do you want to spend"]')[0]!.click();
  await settled(wizard);
  await type(wizard, 'budget.limit', '18,000');
  await press(wizard, 'Continue');
  assert.isNotEmpty(all(wizard, '[part="check"]'));
  assert.include(all(wizard, '.answers')[0]!.textContent, '$18,000');
  await press(wizard, 'See what fits');
  assert.isNotEmpty(all(wizard, '[part="result"]'));
});

describe('the browser’s Back', () => {
  const popped = () => new Promise((resolve) => { window.addEventListener('popstate', resolve, { once: true }); });
  const browse = async (wizard: AcreToAxle, by: number) => {
    const come = popped();
    history.go(by);
    await come;
    await settled(wizard);
  };

  it('leads through the questions where the host allows it, and keeps what the host keeps in its history', async () => {
    history.replaceState({ ofTheHost: 7 }, '');
    const [address, before] = [location.href, history.length];
    const wizard = await shown((each) => { each.history = 'push'; });
    assert.equal(history.length, before, 'nothing before the buyer does something');
    await choose(wizard, 'dig');
    await press(wizard, 'Continue');
    await choose(wizard, 'dig');
    await press(wizard, 'Continue');
    assert.match(heading(wizard), /How deep/);
    await browse(wizard, -2);
    assert.match(heading(wizard), /What do you want to do/);
    assert.equal(focused(wizard), 'heading');
    assert.deepEqual(wizard.answers.tasks, [{ task: 'dig', must: true }], 'no answer is lost');
    assert.include(history.state, { ofTheHost: 7 });
    await browse(wizard, 2);
    assert.match(heading(wizard), /How deep/);
    assert.equal(location.href, address);
  });

  it('and the Back of the page are one', async () => {
    const wizard = await shown((each) => { each.history = 'push'; });
    await choose(wizard, 'dig');
    await press(wizard, 'Continue');
    const come = popped();
    const { length } = history;
    await press(wizard, 'Back');
    await come;
    await settled(wizard);
    assert.match(heading(wizard), /What do you want to do/);
    assert.equal(history.length, length);
  });

  it('is left alone otherwise', async () => {
    const { length } = history;
    await toCheck();
    assert.equal(history.length, length);
  });
});

it('heads the result with what was left unsaid, and carries cautions and terms', async () => {
  const wizard = await shown();
  await press(wizard, 'See the result so far');
  const notice = all(wizard, '.notice')[0]!.textContent;
  assert.match(notice, /how steep/);
  assert.match(notice, /who will drive/);
  assert.match(notice, /overhead/);
  assert.match(all(wizard, '[part="cautions"]')[0]!.textContent, /seat belt/);
  assert.isAbove(all(wizard, '.terms p')[0]!.textContent.length, 100);
});

it('every machine shown has something for it and something against it or not known', async () => {
  const wizard = await shown();
  await press(wizard, 'See the result so far');
  for (const machine of all(wizard, '.machine')) {
    assert.isNotNull(machine.querySelector('li.for'));
    assert.isNotNull(machine.querySelector('li.against, li.unknown'));
  }
});

it('tells the page only what the buyer did, and nothing he typed', async () => {
  const heard: [string, unknown][] = [];
  const wizard = await shown();
  for (const name of ['acre-answered', 'acre-result-shown', 'acre-error']) {
    document.body.addEventListener(name, (event) => heard.push([name, (event as CustomEvent).detail]), { once: true });
  }
  wizard.answers = { format: 'acre-to-axle/answers/1', land: { slope: 'flat' } };
  await settled(wizard);
  assert.deepEqual(heard, []);
  await choose(wizard, 'dig');
  await press(wizard, 'Continue');
  assert.deepEqual(heard, [['acre-answered', { question: 'tasks', unsure: false }]]);
});

it('keeps two wizards on one page apart', async () => {
  const [one, other] = [await shown(), await shown()];
  await choose(one, 'dig');
  await press(one, 'Continue');
  assert.deepEqual(one.answers.tasks, [{ task: 'dig' }]);
  assert.isUndefined(other.answers.tasks);
});

it('refuses answers with faults by name, and keeps those it had', async () => {
  const wizard = await shown();
  assert.throws(() => { wizard.answers = { format: 'acre-to-axle/answers/1', land: { slope: 'hilly' } } as never; }, /land\.slope.*flat/);
  assert.deepEqual(Object.keys(wizard.answers), ['format']);
});

it('goes on past keys and tasks of a newer version, and says of the task that it doesn’t know it', async () => {
  const wizard = await shown();
  wizard.answers = { format: 'acre-to-axle/answers/1', tasks: [{ task: 'dig' }, { task: 'fly' }], land: { slop: 'flat' } } as never;
  await press(wizard, 'See the result so far');
  assert.deepEqual(wizard.answers.tasks, [{ task: 'dig' }]);
  assert.deepInclude(wizard.shortlist!.cautions, { id: 'task-unknown', about: 'fly' });
});

it('shows a plain message and the page’s own fallback where the line-up cannot be used', async () => {
  const codes: string[] = [];
  document.body.addEventListener('acre-error', (event) => codes.push((event as CustomEvent<{ code: string }>).detail.code), { once: true });
  const wizard = document.createElement('acre-to-axle');
  wizard.innerHTML = '<p>Call us</p>';
  const heard = new Promise((resolve) => { wizard.addEventListener('acre-error', resolve, { once: true }); });
  wizard.catalogue = '/demo/no-such-file.json';
  document.body.append(wizard);
  await Promise.all([heard, wizard.ready]);
  await settled(wizard);
  assert.deepEqual(codes, ['catalogue.missing']);
  assert.match(all(wizard, '[role="alert"]')[0]!.textContent, /call or write to the dealer/);
  assert.isNotNull(all<HTMLSlotElement>(wizard, 'slot:not([name])')[0]);
});

it('speaks German where the page does, without losing an answer', async () => {
  const wizard = await toLawn();
  await type(wizard, 'land.mown', '2 acres');
  await press(wizard, 'Continue');
  const { answers } = wizard;
  const before = heading(wizard);
  wizard.lang = 'de';
  while (heading(wizard) === before) await settled(wizard);
  assert.deepEqual(wizard.answers, answers);
  assert.equal(all(wizard, '.sheet')[0]!.getAttribute('lang'), 'de');
});
