import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Compose, Composing } from '../../src/relay/sender/composed.ts';
import { composeInThread } from '../../src/relay/sender/mail-threads.ts';
import { aRequest } from '../request/a-request.ts';

const folder = mkdtempSync(join(tmpdir(), 'thread-'));
let compose: Compose;
const long = 50_000;
const program = join(folder, 'thread.mjs');
beforeAll(async () => {
  await build({ entryPoints: ['tests/relay/sender-thread-fixture.ts'], outfile: program, bundle: true, platform: 'node', format: 'esm' });
  compose = composeInThread(pathToFileURL(program), 'https://relay.example/', long);
});
afterAll(() => rmSync(folder, { recursive: true }));

const mailFor = (what: string): Composing => ({
  role: 'buyer', isWord: false, document: { ...aRequest, address: `${what}@buyer.example` }, dealer: { id: 'd', mail: 'a@b.example', senderName: 'D', postalAddress: 'P' }, catalogue: undefined, asSeen: false, token: 't',
});
const well = (what: string) => ({ fromName: 'buyer', subject: 'https://relay.example/', text: what });

test('mails are made in another thread, each answered with its own', async () => {
  const made = await Promise.all(['a', 'b', 'c'].map((what) => compose(mailFor(what))));
  expect(made).toEqual(['a', 'b', 'c'].map(well));
});

test.each([['throws', 'can’t'], ['ends', 'ended'], ['eats', 'memory']])('fault 34: one that %s is told of, and the others are made', async (what, told) => {
  const [bad, good] = await Promise.allSettled([compose(mailFor(what)), compose(mailFor('after'))]);
  expect(bad).toMatchObject({ status: 'rejected', reason: { message: expect.stringContaining(told) } });
  expect(good).toEqual({ status: 'fulfilled', value: well('after') });
}, 60_000);

test('fault 34: one that never ends is ended, and the others are made', async () => {
  const impatient = composeInThread(pathToFileURL(program), 'https://relay.example/', 300);
  await impatient(mailFor('before'));
  await expect(impatient(mailFor('hangs'))).rejects.toThrow('too long');
  expect(await compose(mailFor('after'))).toEqual(well('after'));
}, 60_000);
