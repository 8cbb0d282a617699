/// <reference types="mocha" />
import { assert } from 'chai';
import { Database } from '../../src/counter/queue/database.ts';
import { DraftStore } from '../../src/counter/queue/draft-store.ts';
import { StaffLock } from '../../src/counter/queue/staff-lock.ts';
import { aRequest } from '../request/a-request.ts';
import { HandClock, nameOfOwn } from './queue-kit.ts';

const pin = '314159';
const minute = 60_000;
const draft = { name: 'Canaryname', answers: aRequest.answers };

async function device({ hasPin = true } = {}) {
  const clock = new HandClock();
  const database = new Database(clock, { name: nameOfOwn() });
  const lock = new StaffLock(database, clock, { iterations: 1_000 });
  if (hasPin) await lock.setUp(pin);
  return { clock, database, lock, drafts: new DraftStore(database, lock, clock) };
}
const rows = ({ database }: Awaited<ReturnType<typeof device>>) => database.run(async (opened) => (await opened.getAllKeys('kept')).filter((key) => key.startsWith('draft')));

describe('what stood on the screen of a page that went away', () => {
  it('comes back as it was with the PIN alone, once', async () => {
    const kept = await device();
    assert.isTrue(await kept.drafts.keep('one', draft));
    assert.deepEqual(await kept.drafts.left(), [{ id: 'one', until: kept.clock.time + 5 * minute }]);
    assert.isUndefined(await kept.drafts.take('one'));
    await kept.lock.unlock(pin);
    assert.deepEqual(await kept.drafts.take('one'), draft);
    assert.isUndefined(await kept.drafts.take('one'));
    assert.deepEqual(await rows(kept), []);
  });

  it('is never there to be read, and not at all where there is no PIN', async () => {
    const kept = await device();
    await kept.drafts.keep('one', draft);
    const dump = JSON.stringify(await kept.database.run((opened) => opened.getAll('kept')), (_key, value: unknown) => (value instanceof Uint8Array ? String.fromCharCode(...value) : value));
    for (const word of ['Canary', 'mow-lawn', pin]) assert.notInclude(dump, word);
    const bare = await device({ hasPin: false });
    assert.isFalse(await bare.drafts.keep('one', draft));
    assert.deepEqual(await rows(bare), []);
  });

  it('is gone after five minutes, asked for or not, and after a clock was moved', async () => {
    for (const move of [5 * minute, -5 * minute, 365 * 1_440 * minute]) {
      const kept = await device();
      await kept.drafts.keep('one', draft);
      await kept.lock.unlock(pin);
      kept.clock.time += move;
      assert.isUndefined(await kept.drafts.take('one'));
      assert.deepEqual(await rows(kept), [], String(move));
    }
    const kept = await device();
    await kept.drafts.keep('one', draft);
    await kept.lock.unlock(pin);
    kept.clock.move(5 * minute - 1);
    assert.deepEqual(await kept.drafts.take('one'), draft);
  });

  it('is one a window: another’s is told apart, and each is dropped alone; what can’t be read goes', async () => {
    const kept = await device();
    await kept.drafts.keep('one', draft);
    await kept.drafts.keep('two', { ...draft, name: 'Other' });
    await kept.database.run((opened) => opened.put('kept', { v: 1, at: 'x' }, 'draft three'));
    assert.deepEqual((await kept.drafts.left()).map(({ id }) => id), ['one', 'two']);
    await kept.drafts.drop('one');
    assert.deepEqual(await rows(kept), ['draft two']);
    // Nothing else that is kept under a name is touched.
    assert.isDefined(await kept.lock.publicKey());
  });

  it('opens with no other window’s seal', async () => {
    const kept = await device();
    await kept.drafts.keep('one', draft);
    await kept.database.run(async (opened) => { await opened.put('kept', await opened.get('kept', 'draft one'), 'draft two'); });
    await kept.lock.unlock(pin);
    assert.isUndefined(await kept.drafts.take('two'));
    assert.deepEqual(await kept.drafts.take('one'), draft);
  });
});
