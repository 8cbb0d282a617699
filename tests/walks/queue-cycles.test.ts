import fc from 'fast-check';
import { createHash } from 'node:crypto';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { crash, openDevice, serveQueuePage, type Device } from '../counter/queue-browser.ts';
import { StubRelay, type Answer } from '../support/stub-relay.ts';

// Cycles of a bad day: windows reloaded, killed and doubled, storage full, the relay away, busy or broken off. Whatever
// was confirmed is taken by the relay once. CYCLES=10000 for as many as the aim names; SEED for others.

const cycles = Number(process.env.CYCLES ?? 30);
const seed = Number(process.env.SEED ?? 1);

/** What happens while intakes are being put in. */
const events = ['none', 'reload', 'kill', 'close', 'second window', 'full', 'away', 'back', 'rotate', 'restart'] as const;
const cycle = fc.record({
  /** In which of the windows each is put in. */
  puts: fc.array(fc.nat(1), { minLength: 1, maxLength: 3 }),
  event: fc.oneof(
    { weight: 6, arbitrary: fc.constantFrom('none', 'reload', 'second window', 'away', 'back', 'back', 'full', 'rotate', 'close') },
    { weight: 4, arbitrary: fc.constant('kill') },
    { weight: 1, arbitrary: fc.constant('restart') },
  ) as fc.Arbitrary<(typeof events)[number]>,
  window: fc.nat(1),
  answers: fc.array(fc.constantFrom<Answer>('accept', 'accept', 'accept', 'lose-answer', 'cut', 'other-id', { refused: 'unavailable' }, { status: 500 }), { minLength: 1, maxLength: 5 }),
});
const day = fc.sample(cycle, { seed, numRuns: cycles });
/** A UUID of version 4 for each intake, the same in every run. */
const idOf = (number: number) => createHash('sha256').update(`${seed} ${number}`).digest('hex').replace(/^(.{8})(.{4}).(.{3}).(.{3})(.{12}).*$/, '$1-$2-4$3-8$4-$5');

let served: Awaited<ReturnType<typeof serveQueuePage>>;
let device: Device;
let relay: StubRelay;
beforeAll(async () => { [served, device, relay] = await Promise.all([serveQueuePage(), openDevice(), StubRelay.start()]); });
afterAll(async () => {
  await device.close();
  await served.close();
  await relay.goAway();
});

async function windowOf(): Promise<Page> {
  const page = await device.context.newPage();
  await page.goto(`http://till.localhost:${served.port}`);
  return begun(page);
}

async function begun(page: Page): Promise<Page> {
  await page.waitForFunction(() => 'counter' in globalThis);
  await page.evaluate((address) => counter.open(address, { leaps: true }), relay.address);
  expect(await page.evaluate(() => counter.start())).toBe('started');
  return page;
}

test(`${cycles} cycles of kills, reloads, two windows and faults of the way: nothing confirmed is lost, nothing is taken twice`, async () => {
  let windows = [await windowOf()];
  expect(await windows[0]!.evaluate(() => counter.setUp())).toBe(true);
  const session = async (quotaSize?: number) => {
    const control = await device.context.newCDPSession(device.context.pages()[0]!);
    await control.send('Storage.overrideQuotaForOrigin', { origin: `http://till.localhost:${served.port}`, ...(quotaSize !== undefined && { quotaSize }) });
    await control.detach();
  };
  const [put, confirmed] = [new Set<string>(), new Set<string>()];
  let isAway = false;
  let kills = 0;

  /** Puts one in; what isn't saved is tried again by the page as long as it lives. */
  const putIn = async (page: Page) => {
    const [id, address] = [idOf(put.size), `buyer-${put.size}@buyer.example`];
    put.add(id);
    try {
      const outcome = await page.evaluate(([each, to]) => counter.put(each, 'ann', to), [id, address] as const);
      const kind = outcome.kind === 'not-saved' ? await page.evaluate((waiting) => counter.putAgain(waiting), outcome.waiting).then((again) => again.kind) : outcome.kind;
      if (kind === 'saved') confirmed.add(id);
    } catch (trouble) {
      // Its window is gone: it was never confirmed.
      expect(String(trouble)).toMatch(/crash|closed|destroyed|navigation/i);
    }
  };

  const happen: Record<(typeof events)[number], (at: number) => Promise<void>> = {
    none: async () => undefined,
    async reload(at) { await begun(await windows[at]!.reload().then(() => windows[at]!)); },
    async kill(at) {
      kills += 1;
      await crash(windows.splice(at, 1)[0]!);
    },
    async close(at) { await windows.splice(at, 1)[0]!.close(); },
    async 'second window'() { if (windows.length < 2) windows.push(await windowOf()); },
    async full() {
      await session(1);
      await session();
    },
    async away() {
      if (!isAway) await relay.goAway();
      isAway = true;
    },
    async back() {
      if (isAway) await relay.comeBack();
      isAway = false;
    },
    async rotate() { await relay.rotate(); },
    async restart() {
      await device.restart();
      windows = [];
    },
  };

  for (const { puts, event, window, answers } of day) {
    relay.answer = ({ number }) => answers[number % answers.length]!;
    const putting = puts.map((at) => putIn(windows[at % windows.length]!));
    await happen[event](window % windows.length);
    await Promise.all(putting);
    if (windows.length === 0) windows = [await windowOf()];
  }

  await happen.back(0);
  relay.answer = () => 'accept';
  const last = await windowOf();
  await last.evaluate(() => counter.sendNow());
  await last.evaluate(() => counter.drained());
  expect(await last.evaluate(() => counter.list())).toEqual([]);

  const taken = relay.ledger.map(({ id }) => id);
  expect([...confirmed].filter((id) => !taken.includes(id))).toEqual([]);
  expect(taken.filter((id) => !put.has(id))).toEqual([]);
  // By what is in it, whatever key it came with.
  expect(new Set(relay.ledger.map(({ request }) => request.address)).size).toBe(taken.length);
  expect(kills).toBeGreaterThan(cycles / 10);
  expect(confirmed.size).toBeGreaterThan(cycles / 2);
}, 60_000 + cycles * 2_000);
