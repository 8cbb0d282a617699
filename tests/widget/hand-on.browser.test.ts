/// <reference types="mocha" />
import { assert } from 'chai';
import { render } from 'lit';
import '../../src/widget/define.ts';
// Fetched file by file here, it takes longer than a test may.
import '../../src/widget/reckoner.ts';
import '../../src/reasons/words/en/telling.ts';
import '../../src/reasons/words/de/telling.ts';
import { handOn as german } from '../../src/widget/hand-on/words/de.ts';
import { handOn as english } from '../../src/widget/hand-on/words/en.ts';
import { HandOn } from '../../src/widget/hand-on.ts';
import { fragmentOf, readHandedOn } from '../../src/handoff/link.ts';
import { pack } from '../../src/handoff/pack.ts';
import { readTypedForm } from '../../src/handoff/typed-form.ts';
import { readerFor } from '../../src/reasons/asking-voice.ts';
import { namesIn } from '../../src/reasons/say.ts';
import { asking } from '../../src/reasons/words/en/asking.ts';
import { telling } from '../../src/reasons/words/en/telling.ts';
import type { AcreToAxle, AcreEventDetails } from '../../src/widget/define.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { afterwards, instead, putBack } from '../support/instead.ts';
import { closing, opening, pseudoWords } from '../support/pseudo-words.ts';
import { painted, scan } from '../support/scan.ts';
import { all, settled } from './on-page.ts';

const json = async (path: string) => (await fetch(path)).json() as Promise<unknown>;
const catalogue = (await json('/demo/catalogue.json')) as CatalogueDocument;
const farm = (await json('/demo/answers/hay-and-barn.json')) as AnswersDocument;
const acre = (await json('/demo/answers/first-acre.json')) as AnswersDocument;

/** Until what is fetched has come: a condition, looked at in each frame. */
async function until(wizard: AcreToAxle, holds: () => boolean) {
  while (!holds()) await settled(wizard);
}

async function shown(set: Partial<AcreToAxle> = {}): Promise<AcreToAxle> {
  const wizard = Object.assign(document.createElement('acre-to-axle'), { catalogue, ...set });
  document.body.append(wizard);
  await wizard.ready;
  await settled(wizard);
  return wizard;
}

const field = (wizard: AcreToAxle, of: 'link' | 'typed') => all<HTMLTextAreaElement>(wizard, `#hand-on-${of}`)[0]!;
const isResult = (wizard: AcreToAxle) => all(wizard, '[part="result"]').length > 0;
const section = (wizard: AcreToAxle) => all<HTMLDetailsElement>(wizard, '[part="hand-on"]')[0]!;

/** The result of some answers with the section unfolded. */
async function unfolded(answers: AnswersDocument, set: Partial<AcreToAxle> = {}) {
  const wizard = await shown(set);
  wizard.answers = answers;
  await settled(wizard);
  all<HTMLElement>(wizard, '[part="see-result"]')[0]?.click();
  await until(wizard, () => isResult(wizard));
  section(wizard).open = true;
  await until(wizard, () => section(wizard).querySelector('h4') !== null);
  return wizard;
}

const button = (wizard: AcreToAxle, text: string) => [...section(wizard).querySelectorAll('button')].find((each) => each.textContent === text)!;
const said = (wizard: AcreToAxle) => [...section(wizard).querySelectorAll('[role="status"]')].map((each) => each.textContent).filter((text) => text !== '');

function heard<E extends keyof AcreEventDetails>(type: E) {
  const details: AcreEventDetails[E][] = [];
  const hear = (event: Event) => { details.push((event as CustomEvent<AcreEventDetails[E]>).detail); };
  document.addEventListener(type, hear);
  afterwards(() => document.removeEventListener(type, hear));
  return details;
}

const address = location.href;
afterEach(() => {
  document.body.replaceChildren();
  putBack();
  history.replaceState(null, '', address);
});

it('another library reads from the code what the link is; the link, and the line typed back, are the answers', async () => {
  const wizard = await unfolded(farm, { linkPage: 'https://dealer.example/find?site=2#top' });
  const link = field(wizard, 'link').value;
  const svg = section(wizard).querySelector<SVGSVGElement>('.code svg')!;
  assert.equal(scan(await painted(svg, 300), 300, 300), link);
  assert.match(link, /^https:\/\/dealer\.example\/find\?site=2#a1=[\w-]+$/);
  assert.deepEqual(readHandedOn(link), { answers: wizard.answers });
  assert.deepEqual(readTypedForm(field(wizard, 'typed').value.toLowerCase().replaceAll('-', ' ')), { answers: wizard.answers });
  assert.deepEqual(wizard.answers, farm);
});

it('links lead to the page itself where the host names none or no page: without what its query and fragment hold', async () => {
  history.replaceState(null, '', `${location.pathname}?visitor=17#part`);
  const own = `${location.origin}${location.pathname}`;
  const warned: string[] = [];
  instead(console, 'warn', (text: string) => warned.push(text));
  for (const linkPage of [undefined, '', 'javascript:alert(1)', 'https://']) {
    const wizard = await unfolded(acre, { linkPage });
    assert.equal(field(wizard, 'link').value.split('#')[0], own, String(linkPage));
    wizard.remove();
  }
  assert.lengthOf(warned.filter((text) => text.includes('link-page: read')), 2);
  const wizard = await unfolded(acre, { linkPage: '../lot/?p=3' });
  assert.equal(field(wizard, 'link').value.split('#')[0], new URL('../lot/?p=3', document.baseURI).href);
});

it('copies, and tells the host that a link was copied and nothing of it', async () => {
  const wizard = await unfolded(farm);
  const written: string[] = [];
  instead(navigator, 'clipboard', { writeText: async (text: string) => { written.push(text); } });
  const events = heard('acre-handed-on');
  button(wizard, english.link.copy).click();
  await until(wizard, () => said(wizard).length > 0);
  button(wizard, english.typed.copy).click();
  await until(wizard, () => written.length > 1);
  await settled(wizard);
  assert.deepEqual(written, [field(wizard, 'link').value, field(wizard, 'typed').value]);
  assert.deepEqual(events, [{ how: 'link-copied' }, { how: 'typed-copied' }]);
  assert.deepEqual(said(wizard), [english.copied]);
});

it('where a page may not copy, the text is selected and that is said; copied by hand it counts', async () => {
  const wizard = await unfolded(farm);
  for (const clipboard of [undefined, { writeText: () => Promise.reject(new DOMException('no', 'NotAllowedError')) }]) {
    instead(navigator, 'clipboard', clipboard);
    const events = heard('acre-handed-on');
    const link = field(wizard, 'link');
    link.setSelectionRange(0, 0);
    button(wizard, english.link.copy).click();
    await until(wizard, () => said(wizard).length > 0);
    assert.deepEqual(said(wizard), [english.marked]);
    assert.equal(wizard.shadowRoot!.activeElement, link);
    assert.equal(link.value.slice(link.selectionStart, link.selectionEnd), link.value);
    assert.deepEqual(events, []);
    link.dispatchEvent(new ClipboardEvent('copy', { bubbles: true }));
    assert.deepEqual(events, [{ how: 'link-copied' }]);
    putBack();
  }
});

it('shares where the browser can; thought better of, nothing is said; forbidden, the other way is', async () => {
  const bare = await unfolded(farm);
  assert.equal('share' in navigator, false, 'the browser of the tests shares nothing');
  assert.isUndefined(button(bare, english.share));
  bare.remove();
  const shared: ShareData[] = [];
  const answers = [undefined, new DOMException('no', 'AbortError'), new DOMException('no', 'NotAllowedError')];
  instead(navigator, 'share', async (data: ShareData) => {
    shared.push(data);
    const trouble = answers[shared.length - 1];
    if (trouble) throw trouble;
  });
  const wizard = await unfolded(farm);
  const events = heard('acre-handed-on');
  button(wizard, english.share).click();
  await until(wizard, () => events.length > 0);
  assert.deepEqual(shared, [{ title: english.shareTitle, url: field(wizard, 'link').value }]);
  button(wizard, english.share).click();
  await settled(wizard);
  assert.deepEqual(said(wizard), []);
  button(wizard, english.share).click();
  await until(wizard, () => said(wizard).length > 0);
  assert.deepEqual(said(wizard), [english.notShared]);
  assert.deepEqual(events, [{ how: 'shared' }]);
});

it('what a link doesn’t carry is told by the name the buyer knows it by, and isn’t in it', async () => {
  const wizard = await unfolded({
    ...farm, tasks: [{ task: 'move-loose', must: true, material: 'what Jo left behind' }], haul: { how: 'hire', delivery: 'K1A 0B1' },
    owned: [{ id: 'a', name: 'Jo’s tiller', kind: 'tiller' }],
  });
  const text = section(wizard).textContent;
  for (const place of [asking.questions.loose.fields['tasks.move-loose.material']!.label, english.kept.delivery, english.kept.owned]) assert.include(text, place);
  const read = readHandedOn(field(wizard, 'link').value) as { answers: AnswersDocument };
  assert.notMatch(JSON.stringify(read.answers), /Jo|K1A/);
  assert.include(JSON.stringify(wizard.answers), 'K1A');
});

it('more than anybody types is told, not cut; the link has it', async () => {
  const implement = (index: number) => ({ kind: 'tiller', width: { value: 48.123 + index, unit: 'in' } });
  const wizard = await unfolded({ ...farm, owned: Array.from({ length: 12 }, (_, index) => implement(index)) } as AnswersDocument);
  assert.isUndefined(field(wizard, 'typed'));
  assert.match(section(wizard).textContent, /has \d{2,} characters; 60 can be typed/);
  assert.deepEqual(readHandedOn(field(wizard, 'link').value), { answers: wizard.answers });
});

it('a mail is saved as a file whose address is given up later', async () => {
  const wizard = await unfolded(farm);
  const [saved, given, later]: [string[], string[], (() => void)[]] = [[], [], []];
  instead(HTMLAnchorElement.prototype, 'click', function save(this: HTMLAnchorElement) { saved.push(this.download, this.href); });
  instead(URL, 'revokeObjectURL', (url: string) => given.push(url));
  instead(window, 'setTimeout', (act: () => void) => later.push(act));
  const events = heard('acre-handed-on');
  button(wizard, english.mail.save).click();
  putBack();
  assert.equal(saved[0], 'tractor-shortlist.eml');
  const message = await fetch(saved[1]!);
  assert.equal(message.headers.get('content-type'), 'message/rfc822');
  assert.match(await message.text(), /^Subject: .+\r\n(?:.+\r\n)*X-Unsent: 1\r\n/);
  assert.deepEqual(events, [{ how: 'mail-saved' }]);
  assert.lengthOf(later, 1);
  instead(URL, 'revokeObjectURL', (url: string) => given.push(url));
  later[0]!();
  assert.deepEqual(given, [saved[1]]);
});

it('speaks another language once that is chosen, unfolded as it is', async () => {
  const wizard = await unfolded(farm);
  wizard.lang = 'de';
  await until(wizard, () => section(wizard).textContent.includes(german.explained));
  assert.notInclude(section(wizard).textContent, english.explained);
  assert.include(decodeURIComponent(section(wizard).querySelector('a')!.href), german.handoff.subject(catalogue.dealer.name));
});

it('nothing in it is said in words of the code’s own', () => {
  const reader = readerFor(asking, 'us', 'en-US', 'USD');
  const words = pseudoWords({ ...asking, ...telling });
  const page = document.createElement('div');
  const none = { needs: [], shortlist: [], askDealer: [], ruledOut: [], changes: [], conflicts: { sets: [], complete: true }, waysOut: [], cautions: [], unknowns: [], notCleared: [], tradeOffs: [] };
  const view = { answers: { ...farm, haul: { delivery: 'K1A 0B1' } } as AnswersDocument, shortlist: none as never, catalogue, voice: { words, reader, nameOf: namesIn(catalogue, reader) }, words: pseudoWords(english), page: undefined };
  render(new HandOn(() => {}, () => {}).template(view), page);
  const texts = [...page.querySelectorAll('p, label, button, h4, a, title')].map((each) => each.textContent.trim()).filter((text) => text !== '');
  assert.isAbove(texts.length, 8);
  assert.deepEqual(texts.filter((text) => !text.startsWith(opening) || !text.endsWith(closing)), []);
});

describe('a page that begins from links', () => {
  const linked = (answers: AnswersDocument) => `#${fragmentOf(pack(answers))}`;
  const came = (wizard: AcreToAxle) => all(wizard, '[part="opened"]')[0]?.textContent.trim();

  /** As a link leads here: the page is there with the fragment before the wizard is. */
  function arriveAt(hash: string) {
    history.replaceState({ host: 1 }, '', `${location.pathname}?a=b${hash}`);
    return [history.length, location.href, document.title, JSON.stringify(history.state)];
  }
  const now = () => [history.length, location.href, document.title, JSON.stringify(history.state)];

  it('shows the result of the answers, says so, takes no focus and leaves the page its address', async () => {
    const before = arriveAt(linked(acre));
    const [opened, results] = [heard('acre-opened'), heard('acre-result-shown')];
    const wizard = await shown({ fromLink: true });
    await until(wizard, () => came(wizard) !== undefined);
    assert.deepEqual(wizard.answers, acre);
    assert.isTrue(isResult(wizard));
    assert.equal(came(wizard), english.opened);
    assert.equal(document.activeElement, document.body);
    assert.deepEqual(opened, [{ outcome: 'taken-over' }]);
    assert.lengthOf(results, 1);
    assert.deepEqual(now(), before);
    all<HTMLElement>(wizard, '[data-change]')[0]!.click();
    await settled(wizard);
    assert.isUndefined(came(wizard), 'going on, it has been read');
    assert.deepEqual(now(), before);
  });

  it('shows no question before the answers are there', async () => {
    arriveAt(linked(acre));
    const wizard = Object.assign(document.createElement('acre-to-axle'), { catalogue, fromLink: true });
    const seen = new Set<string>();
    document.body.append(wizard);
    await wizard.updateComplete;
    const watch = new MutationObserver(() => { if (all(wizard, 'form')[0]) seen.add('form'); });
    watch.observe(wizard.shadowRoot!, { childList: true, subtree: true });
    assert.lengthOf(all(wizard, 'form'), 0);
    await until(wizard, () => isResult(wizard));
    watch.disconnect();
    assert.isEmpty(seen);
  });

  it('control: heeds no fragment unless the host wants it, nor one that isn’t ours', async () => {
    const before = arriveAt(linked(acre));
    const wizard = await shown();
    assert.isFalse(isResult(wizard));
    assert.isUndefined(came(wizard));
    arriveAt('#about-us');
    const other = await shown({ fromLink: true });
    assert.lengthOf(all(other, 'form'), 1);
    assert.isUndefined(came(other));
    assert.equal(before[0], history.length);
  });

  const good = linked(farm);
  const why = (code: 'damaged' | 'newer' | 'too-long') => english.handoff.refusals[code]({ sign: '', group: 0 }).why;
  for (const [what, hash, code, mend] of [
    ['a sign is wrong', `${good.slice(0, -4)}${good.at(-4) === 'A' ? 'B' : 'A'}${good.slice(-3)}`, 'damaged', english.notOpened.again],
    ['it is cut short', good.slice(0, -5), 'damaged', english.notOpened.again],
    ['it is of a later kind', good.replace('#a1=', '#a2='), 'newer', english.notOpened.newer],
    ['it is longer than any', `${good}${'A'.repeat(3000)}`, 'too-long', english.notOpened.again],
  ] as const) {
    it(`begins afresh and says why and what to do where ${what}`, async () => {
      const before = arriveAt(hash);
      const opened = heard('acre-opened');
      const wizard = await shown({ fromLink: true });
      await until(wizard, () => came(wizard) !== undefined);
      for (const text of [english.notOpened.what, why(code), mend]) assert.include(came(wizard)!, text);
      assert.equal(all(wizard, '[part="opened"]')[0]!.getAttribute('role'), 'alert');
      assert.lengthOf(all(wizard, 'form'), 1);
      assert.notProperty(wizard.answers, 'tasks');
      assert.deepEqual(opened, [{ outcome: code }]);
      assert.deepEqual(now(), before);
    });
  }

  it('a further link followed on the same page is opened; put elsewhere on the page, what was changed since stays', async () => {
    arriveAt(linked(acre));
    const wizard = await shown({ fromLink: true });
    location.hash = linked(farm);
    await until(wizard, () => JSON.stringify(wizard.answers) === JSON.stringify(farm));
    wizard.answers = acre;
    document.body.prepend(document.createElement('p'), wizard);
    await settled(wizard);
    assert.deepEqual(wizard.answers, acre);
    wizard.remove();
    location.hash = linked(acre);
    location.hash = linked(farm);
    await settled(wizard);
    assert.deepEqual(wizard.answers, acre, 'taken out of the page, it heeds it no more');
  });
});
