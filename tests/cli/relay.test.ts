import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { settingsFormat } from '../../src/relay/settings/dealer.ts';
import { runWith } from './fake-io.ts';

const folder = mkdtempSync(join(tmpdir(), 'acre-cli-relay-'));
const settings = join(folder, 'settings.json');
beforeAll(() => {
  writeFileSync(settings, JSON.stringify({ format: settingsFormat, dealers: [{ id: 'hollowmere', catalogue: 'catalogue.json', origins: ['https://hollowmere.example'], mail: 'yard@hollowmere.example', senderName: 'Hollowmere', postalAddress: '41 Quarry Lane' }] }));
  vi.stubEnv('ACRE_DATA', join(folder, 'data'));
});
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true, force: true });
});
const relay = (...typed: string[]) => runWith({ 'bounce.eml': 'Subject: away\r\n\r\nI am away.\r\n' }, 'relay', '--settings', settings, ...typed);

test.each([
  [['chek'], 'unknown task "chek", expected check, held, undelivered, again'], [['again'], 'relay again needs all | MAIL… behind it'], [['held', 'x'], 'relay held doesn’t know what to do with "x"'], [['export'], 'needs ADDRESS'],
])('%j is a wrong command', async (typed, said) => {
  const { code, err } = await relay(...typed);
  expect([code, err[0]]).toEqual([2, expect.stringContaining(said)]);
});

test('a file or an address that isn’t one is a fault in a line', async () => {
  expect(await relay('bounce', 'nowhere.eml')).toMatchObject({ code: 1, err: ['nowhere.eml: the file can’t be read (ENOENT)'] });
  expect(await relay('erase', 'ann@buyer.example, bob@buyer.example')).toMatchObject({ code: 1, err: [expect.stringContaining('expected one address')] });
});

test('tasks are done on the store where no relay runs', async () => {
  expect(await relay('check')).toMatchObject({ code: 0, out: ['all right, 1 dealer'] });
  expect(await relay('held')).toMatchObject({ code: 0, out: [] });
  expect(await relay('stop', 'ann@buyer.example')).toMatchObject({ code: 0 });
  expect((await relay('export', 'ann@buyer.example')).out.join('')).toContain('"why": "stop"');
  expect(await relay('bounce', 'bounce.eml')).toMatchObject({ code: 0, out: ['no-report'] });
  expect(await relay('again', 'all')).toMatchObject({ code: 0, out: ['0 mails queued again'] });
  expect((await relay('token', 'hollowmere')).out).toEqual([expect.stringMatching(/^[\w-]{43}$/)]);
  expect(await relay('rotate')).toMatchObject({ code: 0 });
});
