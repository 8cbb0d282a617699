import { readdirSync, readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { servePaths } from '../support/serve-paths.ts';
import { openDemo, type Demo, type Visit } from './browser.ts';
import { isResult, option, walk, wizardOn } from './buyer.ts';
import { countsOf, heldBy } from './heap.ts';

// Every kind of host: the whole walk to a shortlist, with nothing on the console and nothing of the host's touched.

const buyer = JSON.parse(readFileSync(new URL('../../demo/answers/first-acre.json', import.meta.url), 'utf8')) as AnswersDocument;

let demo: Demo;
beforeAll(async () => { demo = await openDemo(); });
afterAll(() => demo.close());

const host = (name: string, prepare?: (page: Page) => Promise<unknown>) => demo.visit(`embed/${name}.html`, prepare);

const firstOn = (page: Page) => wizardOn(page).first();
const asked = (wizard: Locator) => wizard.locator('h2').waitFor();
const ready = (wizard: Locator) => wizard.evaluate((element) => (element as AcreToAxle).ready);
const standing = (wizard: Locator) => wizard.evaluate((element) => (element as AcreToAxle).shortlist!.shortlist.map(({ machine }) => machine));
const answersOf = (wizard: Locator) => wizard.evaluate((element) => (element as AcreToAxle).answers);
const fetchesOf = ({ requests }: Visit, file: string) => requests.filter((url) => url.endsWith(file)).length;

/** What belongs to the page and not to the wizard. */
const ownOf = (page: Page) => page.evaluate(() => ({
  title: document.title, entries: history.length, address: location.href, focus: document.activeElement?.tagName, cookies: document.cookie,
  globals: Object.keys(window).filter((name) => /acre|lit|xstate|zod/i.test(name)).sort(),
}));

async function walkWhole(visit: Visit, wizard: Locator) {
  await asked(wizard);
  await walk(wizard, buyer);
  expect(await wizard.locator('.machine').count()).toBeGreaterThan(0);
  expect(await standing(wizard)).not.toEqual([]);
  expect(visit.complaints).toEqual([]);
}

describe.each(['plain', 'strict', 'dark', 'twice', 'right-to-left', 'hostile'])('the host “%s”', (name) => {
  test('is walked from the first question to a shortlist, and keeps what is its own', async () => {
    const visit = await host(name);
    const { page, requests } = visit;
    await asked(firstOn(page));
    await ready(firstOn(page));
    const before = await ownOf(page);
    expect(before.focus).toBe('BODY');
    expect(await page.evaluate(() => scrollY)).toBe(0);
    await walkWhole(visit, firstOn(page));
    expect(await ownOf(page)).toEqual({ ...before, focus: 'ACRE-TO-AXLE' });
    expect(requests.filter((url) => !url.startsWith(demo.address) && !url.startsWith('data:'))).toEqual([]);
    const kept = await page.evaluate(async () => [localStorage.length, sessionStorage.length, (await indexedDB.databases()).length, (await caches.keys()).length]);
    expect(kept).toEqual([0, 0, 0, 0]);
  });
});

test('nothing of a hostile host reaches the wizard: what it shows and where is as on a plain page', async () => {
  const looks = async (name: string) => {
    const { page } = await host(name);
    await asked(firstOn(page));
    await ready(firstOn(page));
    return firstOn(page).evaluate((element) => {
      const root = element.shadowRoot!;
      const sheet = root.querySelector('.sheet')!;
      const { display, textAlign, textTransform, whiteSpace } = getComputedStyle(sheet);
      const seen = [...root.querySelectorAll<HTMLElement>('h2, .option, button, select, summary')].filter((each) => each.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && each.offsetHeight > 0);
      const { direction } = getComputedStyle(root.querySelector('h2')!);
      return { style: { display, textAlign, textTransform, whiteSpace, direction }, seen: seen.map(({ textContent }) => textContent.trim()), wide: sheet.getBoundingClientRect().width / element.parentElement!.getBoundingClientRect().width };
    });
  };
  const plain = await looks('plain');
  expect(plain.seen.length).toBeGreaterThan(20);
  for (const name of ['hostile', 'right-to-left']) {
    const { style, seen, wide } = await looks(name);
    expect(style).toEqual(plain.style);
    // Where there is less room for the line-up it is folded away, which is one thing more to press.
    expect(seen).toEqual(expect.arrayContaining(plain.seen.filter((text) => !/same in words/i.test(text))));
    expect(wide).toBeCloseTo(1, 1);
  }
});

test('the colours and the rounding of the host are taken over', async () => {
  const { page } = await host('dark');
  await asked(firstOn(page));
  const worn = await firstOn(page).evaluate((element) => {
    const style = (selector: string) => getComputedStyle(element.shadowRoot!.querySelector(selector)!);
    return [style('.sheet').backgroundColor, style('.sheet').color, style('.sheet').borderRadius, style('[part="continue"]').backgroundColor, style('[part="continue"]').letterSpacing, style('h2').fontFamily];
  });
  // As demo/embed/dark.css says them.
  expect(worn).toEqual(['rgb(23, 32, 42)', 'rgb(223, 231, 238)', '10px', 'rgb(143, 208, 255)', '0.32px', expect.stringContaining('Georgia')]);
});

test('what the owner set on the tag is his: the wizard changes none of it, and stays hidden where it is told to', async () => {
  const given = { lang: 'fr', dir: 'ltr', role: 'region', tabindex: '-1', title: 'Ours', class: 'one two', style: 'margin: 3px' };
  const visit = await host('plain', (page) => page.addInitScript((attributes) => {
    document.addEventListener('DOMContentLoaded', () => {
      for (const [name, value] of Object.entries(attributes)) document.querySelector('acre-to-axle')!.setAttribute(name, value);
    });
  }, given));
  const wizard = firstOn(visit.page);
  await asked(wizard);
  await ready(wizard);
  await expect.poll(() => wizard.locator('.sheet').getAttribute('lang')).toBe('fr');
  await wizard.locator('.language select').selectOption('es');
  await expect.poll(() => wizard.locator('.sheet').getAttribute('lang')).toBe('es');
  await wizard.locator('input[name="units"]').last().check();
  const attributes = await wizard.evaluate((element) => Object.fromEntries([...element.attributes].map(({ name, value }) => [name, value])));
  expect(attributes).toEqual({ ...given, catalogue: '../catalogue.json' });
  await wizard.evaluate((element) => { (element as HTMLElement).hidden = true; });
  expect(await wizard.isVisible()).toBe(false);
});

test('nothing that belongs to everyone is changed, and nothing added but what Lit and Zod share between copies of theirs', async () => {
  const { page } = await demo.visit('embed/');
  const shared = () => page.evaluate(() => {
    const owners = { window, Object: Object.prototype, Array: Array.prototype, String: String.prototype, Promise: Promise.prototype, Element: Element.prototype, HTMLElement: HTMLElement.prototype, Event: EventTarget.prototype, Intl };
    return Object.entries(owners).flatMap(([owner, of]) => Reflect.ownKeys(of).map((key) => `${owner}.${String(key)}`)).sort();
  });
  const before = await shared();
  await page.addScriptTag({ type: 'module', url: '/widget/acre-to-axle.js' });
  await page.evaluate(() => document.body.append(Object.assign(document.createElement('acre-to-axle'), { catalogue: '/catalogue.json' })));
  await ready(wizardOn(page));
  const added = (await shared()).filter((name) => !before.includes(name));
  expect(added).toEqual(['__zod_globalConfig', 'litElementVersions', 'litHtmlVersions', 'litPropertyMetadata', 'reactiveElementVersions'].map((name) => `window.${name}`));
});

test('the dealer’s words stand in their slots, and those inside the tag are hidden once the wizard is there', async () => {
  const visit = await host('slots');
  const { page } = visit;
  await asked(firstOn(page));
  const said = (text: string) => page.getByText(text).isVisible();
  expect(await Promise.all(['Take two minutes', 'Nothing you type here', '41 Quarry Lane', 'Come and sit on them', 'we ask the same questions'].map(said))).toEqual([true, true, true, false, false]);
  await walkWhole(visit, firstOn(page));
  expect(await Promise.all(['Take two minutes', 'Nothing you type here', '41 Quarry Lane', 'Come and sit on them'].map(said))).toEqual([false, true, true, true]);
});

test('where scripts are blocked, what stands inside the tag can be read and used', async () => {
  const { page } = await host('script-blocked');
  expect(await page.getByRole('link', { name: '555-555-0142' }).isVisible()).toBe(true);
  expect(await firstOn(page).evaluate((element) => element.shadowRoot)).toBeNull();
});

test('where the script can’t be had, the same', async () => {
  const { page } = await host('plain', (opened) => opened.route('**/acre-to-axle.js', (route) => route.abort()));
  expect(await page.getByRole('link', { name: '555-555-0142' }).isVisible()).toBe(true);
});

test('five on a page know nothing of each other, and those far down fetch nothing', async () => {
  const visit = await host('several');
  const { page } = visit;
  const third = page.locator('#wizard-3');
  await ready(firstOn(page));
  expect(fetchesOf(visit, 'catalogue.json')).toBeLessThan(5);
  await walkWhole(visit, third);
  for (const other of [1, 2, 4, 5]) expect(await answersOf(page.locator(`#wizard-${other}`))).toEqual({ format: 'acre-to-axle/answers/1' });
  await page.locator('#wizard-5').scrollIntoViewIfNeeded();
  await ready(page.locator('#wizard-5'));
  expect(fetchesOf(visit, 'catalogue.json')).toBe(5);
  expect(fetchesOf(visit, 'acre-to-axle-reckoner.js')).toBe(1);
});

test('what was set before the script is kept, and one made after it works alike', async () => {
  const visit = await host('upgraded');
  const { page } = visit;
  const early = page.locator('#before');
  const late = page.locator('#later acre-to-axle');
  await late.waitFor();
  await ready(early);
  await expect.poll(() => early.locator('.sheet').getAttribute('lang')).toBe('de');
  expect((await answersOf(early)).tasks).toEqual([{ task: 'dig' }]);
  expect(await early.evaluate((element) => [...element.attributes].map(({ name }) => name).sort())).toEqual(['id', 'lang']);
  await walkWhole(visit, late);
  expect(await late.evaluate((element) => (element as AcreToAxle).units)).toBe('metric');
});

test('in a modal dialog nothing is fetched until it is opened; then the focus stays in it', async () => {
  const visit = await host('dialog');
  const { page } = visit;
  await page.waitForLoadState('networkidle');
  expect(fetchesOf(visit, 'catalogue.json') + fetchesOf(visit, 'acre-to-axle-reckoner.js')).toBe(0);
  await page.locator('#open').click();
  await walkWhole(visit, firstOn(page));
  expect(await page.evaluate(() => document.querySelector('dialog')!.contains(document.activeElement))).toBe(true);
  await page.getByRole('button', { name: 'Close' }).click();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('open');
});

describe('in a frame', () => {
  const inside = (page: Page) => page.frameLocator('iframe').locator('acre-to-axle');
  const heightOf = (page: Page) => page.locator('iframe').evaluate((frame) => frame.getBoundingClientRect().height);
  const fits = async (page: Page) => Math.abs((await inside(page).evaluate((element) => element.getBoundingClientRect().height)) - (await heightOf(page))) < 2;

  test('the whole walk, and at every height the frame is as high as what is in it', async () => {
    const visit = await host('framed');
    const { page } = visit;
    await asked(inside(page));
    await expect.poll(() => fits(page)).toBe(true);
    const first = await heightOf(page);
    await walk(inside(page), buyer);
    expect(await inside(page).locator('.machine').count()).toBeGreaterThan(0);
    await expect.poll(() => fits(page)).toBe(true);
    expect(await heightOf(page)).not.toBe(first);
    // The one warning is the browser's, of a frame of the same origin; a host of another has none.
    expect(visit.complaints.filter((each) => !each.includes('allow-same-origin'))).toEqual([]);
  });

  test('a page of another origin is told the height only if it is named', async () => {
    const elsewhere = demo.address.replace('127.0.0.1', 'localhost');
    const framedFrom = async (hosts: string) => {
      const visit = await host('framed', (page) => Promise.all([
        page.route('**/embed/framed.html', async (route) => {
          const response = await route.fetch();
          await route.fulfill({ response, body: (await response.text()).replace('./frame.html', `${elsewhere}embed/frame.html`) });
        }),
        page.route('**/embed/frame.html', async (route) => {
          const response = await route.fetch();
          await route.fulfill({ response, headers: { 'content-type': 'text/html' }, body: (await response.text()).replace('content="self"', `content="${hosts}"`) });
        }),
      ]));
      await asked(inside(visit.page));
      return visit;
    };
    const named = await framedFrom(`https://other.example ${demo.address.slice(0, -1)}`);
    await expect.poll(() => fits(named.page)).toBe(true);
    expect(named.complaints).toEqual([]);
    const unnamed = await framedFrom('https://other.example');
    await expect.poll(() => unnamed.complaints.join()).toContain("isn't named");
    expect(await fits(unnamed.page)).toBe(false);
  });

  test('what others say is heeded by neither side', async () => {
    const { page } = await host('framed');
    await asked(inside(page));
    await expect.poll(() => fits(page)).toBe(true);
    const before = await heightOf(page);
    const format = 'acre-to-axle/frame/1';
    const junk: unknown[] = [
      'hello', 7, null, { format, says: 'height', height: 9 }, '{', JSON.stringify({ says: 'height', height: 9 }), JSON.stringify({ format, says: 'height', height: '9px' }),
      JSON.stringify({ format, says: 'height', height: -1 }), JSON.stringify({ format, says: 'height', height: 1e9 }), JSON.stringify({ format, says: 'height', height: 9, more: 'x'.repeat(4096) }),
    ];
    // From inside the frame, where source and origin are right and the shape isn't; then from the page itself, where the source is wrong.
    await page.frames()[1]!.evaluate((messages) => messages.forEach((each) => parent.postMessage(each, '*')), junk);
    await page.evaluate((message) => postMessage(message, '*'), JSON.stringify({ format, says: 'height', height: 9 }));
    await page.evaluate(() => new Promise((heard) => { addEventListener('message', heard, { once: true }); postMessage('last', '*'); }));
    expect(await heightOf(page)).toBe(before);
    // The control: the same from inside, well-formed, is heeded.
    await page.frames()[1]!.evaluate((message) => parent.postMessage(message, '*'), JSON.stringify({ format, says: 'height', height: 901 }));
    await expect.poll(() => heightOf(page)).toBe(901);
  });
});

describe('a host that moves things about', () => {
  test('moved in the page, it keeps its question and its answers', async () => {
    const visit = await host('plain');
    const wizard = firstOn(visit.page);
    await asked(wizard);
    await option(wizard, 'tasks', 'dig').check();
    await wizard.locator('[part="continue"]').click();
    const heading = await wizard.locator('h2').textContent();
    await visit.page.evaluate(() => {
      const element = document.querySelector('acre-to-axle')!;
      document.querySelector('header')!.after(element);
      document.body.append(element);
    });
    expect(await wizard.locator('h2').textContent()).toBe(heading);
    expect((await answersOf(wizard)).tasks).toEqual([{ task: 'dig' }]);
    await wizard.locator('[part="see-result"]').click();
    expect(await isResult(wizard)).toBe(true);
    expect(visit.complaints).toEqual([]);
  });

  test('removed while the list is on its way, it asks for no more and says nothing; put back, it goes on', async () => {
    let answer = () => {};
    const held = new Promise<void>((resolve) => { answer = resolve; });
    const visit = await host('plain', (page) => page.route('**/catalogue.json', async (route) => {
      await held;
      await route.continue().catch(() => {});
    }, { times: 1 }));
    const { page } = visit;
    await page.waitForRequest('**/catalogue.json');
    await page.evaluate(() => {
      const element = document.querySelector('acre-to-axle')!;
      (window as unknown as { put: Element }).put = element;
      element.remove();
    });
    answer();
    expect(await page.evaluate(() => (window as unknown as { put: AcreToAxle }).put.shortlist)).toBeUndefined();
    await page.evaluate(() => document.body.append((window as unknown as { put: Element }).put));
    await ready(firstOn(page));
    expect(await standing(firstOn(page))).not.toEqual([]);
    expect(visit.complaints).toEqual([]);
  });

  test('a hundred put in and taken out leave no listener, no node and no memory behind', async () => {
    const { page, complaints } = await host('plain');
    await ready(firstOn(page));
    const devtools = await page.context().newCDPSession(page);
    const mount = (times: number) => page.evaluate(async (count) => {
      const catalogue = await (await fetch('../catalogue.json')).json();
      for (let time = 0; time < count; time++) {
        const element = Object.assign(document.createElement('acre-to-axle'), { catalogue });
        document.body.append(element);
        await (element as AcreToAxle).ready;
        element.remove();
      }
    }, times);
    // What is fetched or remembered once isn't counted.
    await mount(30);
    const before = await heldBy(devtools);
    await mount(100);
    const after = await heldBy(devtools);
    expect(after.listeners - before.listeners).toBeLessThanOrEqual(2);
    expect(after.nodes - before.nodes).toBeLessThan(50);
    expect(after.heap / before.heap).toBeLessThan(1.05);
    // The control: as many that are kept are more than that.
    await page.evaluate(async () => {
      const kept = Array.from({ length: 10 }, () => Object.assign(document.createElement('acre-to-axle'), { catalogue: './none.json' }));
      Object.assign(window, { kept });
      document.body.append(...kept);
      kept.forEach((each) => each.remove());
    });
    expect((await countsOf(devtools)).nodes - after.nodes).toBeGreaterThan(50);
    expect(complaints).toEqual([]);
  });
});

test('left for another page and come back to, it stands where it stood', async () => {
  // Pages that may not be stored aren't kept for Back, so this host sends none of that.
  const lot = await servePaths({ 'cache-control': 'no-cache' });
  const built = new URL('../../dist/widget/', import.meta.url);
  for (const file of readdirSync(built)) lot.put(`/widget/${file}`, readFileSync(new URL(file, built)));
  lot.put('/catalogue.json', readFileSync(new URL('../../demo/catalogue.json', import.meta.url)));
  lot.put('/lot.html', '<!doctype html><title>Lot</title><link rel="icon" href="data:,"><script type="module" src="/widget/acre-to-axle.js"></script><acre-to-axle catalogue="/catalogue.json"></acre-to-axle>');
  lot.put('/other.html', '<!doctype html><title>Another</title><link rel="icon" href="data:,">');
  try {
    const visit = await demo.visit(`${lot.address}/lot.html`);
    const { page } = visit;
    const wizard = firstOn(page);
    await asked(wizard);
    await option(wizard, 'tasks', 'dig').check();
    await wizard.locator('[part="continue"]').click();
    await expect.poll(() => answersOf(wizard)).toHaveProperty('tasks');
    await page.evaluate(() => addEventListener('pageshow', ({ persisted }) => { document.documentElement.dataset.kept = String(persisted); }));
    const heading = await wizard.locator('h2').textContent();
    await page.goto(`${lot.address}/other.html`);
    await page.goBack({ waitUntil: 'commit' });
    await expect.poll(() => page.locator('html').getAttribute('data-kept')).toBe('true');
    expect(await wizard.locator('h2').textContent()).toBe(heading);
    await wizard.locator('[part="see-result"]').click();
    expect(await isResult(wizard)).toBe(true);
    expect(visit.complaints).toEqual([]);
  } finally {
    await lot.close();
  }
});

test('where storage is blocked it works all the same, even where the page wants the list kept', async () => {
  const visit = await host('plain', (page) => page.addInitScript(() => {
    const refuse = { get() { throw new DOMException('The operation is insecure.', 'SecurityError'); } };
    for (const name of ['localStorage', 'sessionStorage', 'indexedDB', 'caches']) Object.defineProperty(window, name, refuse);
    document.addEventListener('DOMContentLoaded', () => document.querySelector('acre-to-axle')!.toggleAttribute('keep-catalogue', true), { once: true });
  }));
  await walkWhole(visit, firstOn(visit.page));
});

test('where a browser knows no sheets of styles, the page’s nonce stands on the style elements in their place', async () => {
  const visit = await host('plain', async (page) => {
    await page.addInitScript(() => {
      Reflect.deleteProperty(Document.prototype, 'adoptedStyleSheets');
      Reflect.deleteProperty(ShadowRoot.prototype, 'adoptedStyleSheets');
      Object.assign(window, { litNonce: 'abc' });
    });
    await page.route('**/embed/plain.html', async (route) => {
      const response = await route.fetch();
      await route.fulfill({ response, headers: { ...response.headers(), 'content-security-policy': "default-src 'none'; script-src 'self'; style-src 'self' 'nonce-abc'; connect-src 'self'; img-src data:" } });
    });
  });
  const wizard = firstOn(visit.page);
  await asked(wizard);
  await ready(wizard);
  await wizard.locator('[part="see-result"]').click();
  expect(await isResult(wizard)).toBe(true);
  expect(await wizard.locator('style').count()).toBeGreaterThan(1);
  expect(await wizard.locator('.machine').first().evaluate((element) => getComputedStyle(element).borderTopStyle)).toBe('solid');
  expect(visit.complaints).toEqual([]);
});

test('where the browser can’t tell what is seen, it starts with the focus', async () => {
  const visit = await host('plain', (page) => page.addInitScript(() => { Reflect.deleteProperty(window, 'IntersectionObserver'); }));
  const { page } = visit;
  await asked(firstOn(page));
  await firstOn(page).locator('input').first().focus();
  await page.waitForRequest('**/catalogue.json', { timeout: 1_500 }).catch(() => {});
  expect(fetchesOf(visit, 'catalogue.json')).toBe(1);
});
