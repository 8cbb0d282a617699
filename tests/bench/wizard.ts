/** What the wizard costs a page: bytes, the first question and the way from one to the next, beside a floor and a general library. */
import { readdirSync, readFileSync } from 'node:fs';
import { availableParallelism, loadavg } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser, type Page } from 'playwright-core';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { en } from '../../src/reasons/words/en.ts';
// @ts-expect-error: plain module without types, shared with the test runner
import { findChromium } from '../support/chromium.mjs';
import { answer, isCheck, isResult, wizardOn } from '../walks/buyer.ts';
import { line, quantile } from './measure.ts';
import { record, type Moment } from './record.ts';
import { serveFiles } from './served.ts';
import { surveyValues } from './survey-form.ts';
import { bare, contenders, ours, survey, type Contender } from './wizard-contenders.ts';

/** Loads of each page; walks of each buyer. */
const [loads, walks] = [15, 2];
/** Times the processor is slowed down. */
const slowdown = 4;
/** A buyer reads before he clicks [ms]: what the page does meanwhile is done by then. Shorter than any buyer reads. */
const reading = 250;
/** CSS pixels: wide enough for the line-up to stand beside the question. */
const viewport = { width: 1200, height: 900 };

const buyers = readdirSync('demo/answers').map((file) => JSON.parse(readFileSync(join('demo/answers', file), 'utf8')) as AnswersDocument);

const { files, sizes } = await contenders();
const server = await serveFiles(files);
const browser: Browser = await chromium.launch(await findChromium());

/** Opens a page nobody has visited before, and closes it after what is done there. */
async function visit<T>(contender: Contender, rate: number, during: (page: Page) => Promise<T>): Promise<T> {
  const context = await browser.newContext({ viewport });
  try {
    const page = await context.newPage();
    const thrown: Error[] = [];
    page.on('pageerror', (error) => thrown.push(error));
    await (await context.newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate });
    await page.addInitScript(record, contender.watched);
    await page.goto(server.address + contender.path);
    await page.waitForFunction(() => window.recorded.first);
    const result = await during(page);
    if (thrown[0]) throw thrown[0];
    return result;
  } finally {
    await context.close();
  }
}

const firstOf = (contender: Contender, rate: number) => visit(contender, rate, (page) => page.evaluate(() => window.recorded.first!));

/** Every step of a walk, once the last of them has been painted. */
const stepsOf = (page: Page) => page.evaluate(() =>
  new Promise<Moment[]>((done) => { requestAnimationFrame(() => setTimeout(() => done(window.recorded.steps))); }));

const walkOurs = (answers: AnswersDocument, rate: number) => visit(ours, rate, async (page) => {
  const wizard = wizardOn(page);
  await wizard.locator('[part="line-up"]').waitFor();
  for (;;) {
    await page.waitForTimeout(reading);
    if (await isResult(wizard)) return stepsOf(page);
    if (await isCheck(wizard)) await wizard.locator('[part="continue"]').click();
    else await answer(wizard, answers);
  }
});

const walkSurvey = (answers: AnswersDocument, rate: number) => visit(survey, rate, async (page) => {
  for (;;) {
    await page.waitForTimeout(reading);
    const at = await page.evaluate(() => (window.survey.isLastPage ? undefined : window.survey.currentPage.name as string));
    if (at === undefined) return stepsOf(page);
    await page.evaluate((values) => {
      for (const [name, value] of Object.entries(values)) window.survey.setValue(name, value);
    }, surveyValues(at, answers));
    await page.waitForTimeout(reading);
    await page.locator('.sd-navigation__next-btn').click();
  }
});

/** One line of the aims; a missed one is told, and is no failure. */
function aim(what: string, found: number, bound: 'at most' | 'at least', limit: number, unit: string) {
  const reached = bound === 'at most' ? found <= limit : found >= limit;
  console.log(`${what.padEnd(58)}${line([`${found.toFixed(unit === '×' ? 2 : 1)} ${unit}`, 10], [`${bound} ${limit} ${unit}`, 16], [reached ? 'reached' : 'MISSED', 9])}`);
}

const named = (name: string) => name.padEnd(16);
const headed = (...names: readonly string[]) => names.map((name) => name.padStart(18)).join('  ');

const names: Readonly<Record<keyof typeof sizes, string>> = { ours: ours.name, bare: bare.name, survey: survey.name, surveyStyle: 'its style' };

function tellSizes() {
  console.log('\nBytes of script; of the survey library all is needed at once\n');
  console.log(named('') + line(['first: raw', 12], ['gzip', 10], ['brotli', 10], ['whole: raw', 12], ['gzip', 10], ['brotli', 10]));
  for (const [of, { first, whole }] of Object.entries(sizes)) {
    console.log(named(names[of as keyof typeof sizes]) + [first, whole].flatMap(({ raw, gzip, brotli }) => [raw, gzip, brotli]).map((bytes, column) => bytes.toLocaleString('en-US').padStart(column % 3 === 0 ? 12 : 10)).join('  '));
  }
  console.log(`
first  what must be there before the first question is
whole  with the line-up, the result and English; without the dealer's catalogue`);
}

/** Each in its turn, so that what else the machine does befalls all alike. */
async function timeFirst(rate: number) {
  const all = [ours, bare, survey];
  const times = new Map(all.map((each) => [each, [] as Moment[]]));
  for (const each of all) await firstOf(each, rate);
  for (let load = 0; load < loads; load++) for (const each of all) times.get(each)!.push(await firstOf(each, rate));
  console.log(`\nFirst question, ms from the start of the navigation, ${loads} loads each, processor ${rate === 1 ? 'as it is' : `slowed down × ${rate}`}\n`);
  console.log(named('') + headed('in the DOM: median', 'p95', 'painted: median', 'p95'));
  for (const [{ name }, moments] of times) {
    console.log(named(name) + headed(...[moments.map(({ inDom }) => inDom), moments.map(({ painted }) => painted)].flatMap((each) => [quantile(each, 0.5).toFixed(1), quantile(each, 0.95).toFixed(1)])));
  }
  const painted = (of: Contender) => quantile(times.get(of)!.map((moment) => moment.painted), 0.5);
  console.log(`\nours / bare ${(painted(ours) / painted(bare)).toFixed(2)}, survey / ours ${(painted(survey) / painted(ours)).toFixed(2)}`);
  return { toBare: painted(ours) / painted(bare), toSurvey: painted(survey) / painted(ours) };
}

async function timeSteps(rate: number) {
  const steps = { ours: [] as Moment[], survey: [] as Moment[] };
  for (let walk = 0; walk < walks; walk++) {
    for (const answers of buyers) {
      steps.ours.push(...(await walkOurs(answers, rate)));
      steps.survey.push(...(await walkSurvey(answers, rate)));
    }
  }
  console.log(`\nNext question, ms from the click on Continue, ${walks} walks of each of ${buyers.length} buyers, processor ${rate === 1 ? 'as it is' : `slowed down × ${rate}`}\n`);
  console.log(named('') + headed('steps', 'in the DOM: p50', 'p95', 'painted: p50', 'p95'));
  for (const [name, moments] of [[ours.name, steps.ours], [survey.name, steps.survey]] as const) {
    const columns = [moments.map(({ inDom }) => inDom), moments.map(({ painted }) => painted)];
    console.log(named(name) + headed(String(moments.length), ...columns.flatMap((each) => [quantile(each, 0.5).toFixed(1), quantile(each, 0.95).toFixed(1)])));
  }
  // The result is no question: all of it is reckoned and told at once.
  const questions = steps.ours.filter(({ heading }) => heading !== en.result.title);
  const results = steps.ours.filter(({ heading }) => heading === en.result.title);
  console.log(`\nof ours the questions p95 ${quantile(questions.map(({ inDom }) => inDom), 0.95).toFixed(1)}, the result p95 ${quantile(results.map(({ inDom }) => inDom), 0.95).toFixed(1)} in the DOM`);
  const slowest = [...questions].sort((a, b) => b.inDom - a.inDom).slice(0, 3);
  console.log(`\nslowest questions: ${slowest.map(({ heading, inDom }) => `“${heading}” ${inDom.toFixed(1)}`).join(', ')}`);
  return quantile(questions.map(({ inDom }) => inDom), 0.95);
}

/** Where others work on the machine too, all wait in turn, and milliseconds tell of them as much as of the page. */
const tellLoad = (when: string) =>
  console.log(`\nLoad of the machine ${when}: ${loadavg()[0]!.toFixed(1)} on ${availableParallelism()} processors; where it is more than they are, go by ratios.`);

try {
  tellLoad('before');
  tellSizes();
  const [first, firstSlowed] = [await timeFirst(1), await timeFirst(slowdown)];
  const [next, nextSlowed] = [await timeSteps(1), await timeSteps(slowdown)];
  const { first: before, whole } = sizes.ours;
  tellLoad('at the end');
  console.log('\nAims\n');
  aim('first question painted, ours / bare', first.toBare, 'at most', 1.25, '×');
  aim(`the same, slowed down × ${slowdown}`, firstSlowed.toBare, 'at most', 1.25, '×');
  aim('first question painted, survey library / ours', first.toSurvey, 'at least', 2.3, '×');
  aim(`the same, slowed down × ${slowdown}`, firstSlowed.toSurvey, 'at least', 2.3, '×');
  aim('script before the first question, brotli', before.brotli / 1_000, 'at most', 31, 'kB');
  aim('script of the whole in one language, brotli', whole.brotli / 1_000, 'at most', 90, 'kB');
  aim('next question in the DOM, p95', next, 'at most', 8, 'ms');
  aim(`the same, slowed down × ${slowdown}`, nextSlowed, 'at most', 32, 'ms');
} finally {
  await browser.close();
  await server.close();
}
