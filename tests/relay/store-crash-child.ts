/** A store and a sender that do a little work on a disk that is watched, and mark what they said and to whom. */
import { appendFileSync, existsSync, rmSync, writeFileSync } from 'node:fs';
import { clock } from '../../src/relay/clock.ts';
import { createSender } from '../../src/relay/sender/sender.ts';
import { dealerOf } from '../../src/relay/settings/dealer.ts';
import { openSqlite } from '../../src/relay/store/sqlite/sqlite-store.ts';
import type { Claim } from '../../src/relay/store/store.ts';
import { newRequest } from './store-requests.ts';

const [file, task, count] = process.argv.slice(2) as [string, 'work' | 'space' | 'sync', string];
const mark = (what: string) => appendFileSync(`${file}-marks`, `${what}\n`);
const fail = process.env.ACRE_DISK_FAIL;

let broken: string | undefined;
const store = openSqlite({ file, ballast: 0, onBroken: (error) => { broken = error.name; } });
const accept = (name: string) => store.accept(newRequest({ name, address: `${name}@buyer.example` }), [{ bucket: name, most: 3, fills: 1_000 }], clock.now(), clock.now());
const said = async (what: Promise<unknown>) => what.then(String, (error: unknown) => (error as Error).name);

async function work(): Promise<void> {
  let left = Number(count);
  const sender = createSender({
    clock, log: { debug: () => {}, info: () => {}, warn: () => {}, error: () => {} }, metrics: { settled: () => {}, paused: () => {}, busy: () => {} },
    settings: { dealers: new Map([['demo-lot', dealerOf({ id: 'demo-lot', catalogue: 'c', origins: ['https://dealer.example'], mail: 'a@dealer.example', senderName: 'D', postalAddress: 'P' })]]), sender: 's@relay.example', bounces: 'relay.example' },
    compose: async () => ({ fromName: 'D', subject: 'S', text: 'T' }),
    transport: { send: async ({ envelope }) => { mark(`out ${envelope.to.split('@')[0]}`); return { kind: 'sent', reply: '250' }; }, abort: () => {}, close: async () => {} },
    store: { ...store, async settle(claim, outcome, now) {
      const settled = await store.settle(claim, outcome, now);
      mark(`${outcome.state} ${(claim as Claim).request}`);
      left -= 1;
      if (left === 0) finish();
      return settled;
    } },
  });
  let finish = () => {};
  const finished = new Promise<void>((resolve) => { finish = resolve; });
  await sender.start();
  for (let index = 0; index < Number(count); index++) {
    if (await accept(`r${index}`) === 'stored') mark(`told r${index}`);
    sender.wake();
  }
  await finished;
  await sender.stop();
}

/** Makes the disk fail, and good again. */
async function fails(): Promise<void> {
  mark(await said(accept('before')));
  writeFileSync(fail!, task);
  mark(await said(accept('during')));
  if (existsSync(fail!)) rmSync(fail!);
  mark(await said(accept('after')));
  mark(`broken ${broken}`);
}

await (task === 'work' ? work() : fails());
process.exit(0);
