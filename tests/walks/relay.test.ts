import { execFile, spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { simpleParser, type ParsedMail } from 'mailparser';
import { SMTPServer } from 'smtp-server';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { AcreToAxle } from '../../src/widget/element.ts';
import { certificate } from '../relay/certificate.ts';
import { openDemo, type Demo } from './browser.ts';
import { wizardOn } from './buyer.ts';

// The whole way, nothing of it stood in for: a buyer in a browser, the relay as it is built and started, a mail server.

const file = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const answers = JSON.parse(readFileSync(file('demo/answers/first-acre.json'), 'utf8')) as AnswersDocument;

interface Caught {
  from: string;
  to: string[];
  mail: ParsedMail;
  raw: string;
}

const folder = mkdtempSync(join(tmpdir(), 'relay-walk-'));
const caught: Caught[] = [];
const heard: string[] = [];
let demo: Demo;
let relay: ChildProcess;
let relayAddress: string;
/** As a web server in front of the relay has it; here what leads there goes to the relay itself. */
const publicAddress = 'https://mail.hollowmere.example/';

const day = 24 * 60 * 60 * 1000;
const own = certificate('localhost', { from: new Date(Date.now() - day), until: new Date(Date.now() + day) });
const smtp = new SMTPServer({
  authOptional: true,
  ...own,
  onData(stream, { envelope }, done) {
    const parts: Buffer[] = [];
    stream.on('data', (part: Buffer) => parts.push(part));
    stream.on('end', async () => {
      const raw = Buffer.concat(parts);
      caught.push({ from: envelope.mailFrom ? envelope.mailFrom.address : '', to: envelope.rcptTo.map(({ address }) => address), mail: await simpleParser(raw), raw: raw.toString('latin1') });
      done();
    });
  },
});

const freePort = () => new Promise<number>((resolve) => {
  const server = createServer().listen(0, '127.0.0.1', () => {
    const { port } = server.address() as { port: number };
    server.close(() => resolve(port));
  });
});

const mailTo = async (address: string): Promise<Caught> => {
  await expect.poll(() => caught.some(({ to }) => to.includes(address)), { timeout: 20_000 }).toBe(true);
  return caught.find(({ to }) => to.includes(address))!;
};

beforeAll(async () => {
  demo = await openDemo();
  await new Promise<void>((ready) => { smtp.listen(0, 'localhost', ready); });
  const { port } = smtp.server.address() as { port: number };
  relayAddress = `http://127.0.0.1:${await freePort()}/`;
  const settings = JSON.parse(readFileSync(file('demo/relay/settings.example.json'), 'utf8')) as { dealers: Record<string, unknown>[] };
  const [dealer] = settings.dealers;
  settings.dealers = [{ ...dealer, catalogue: file('demo/catalogue.json'), origins: [new URL(demo.address).origin], page: demo.address }];
  writeFileSync(join(folder, 'ca.pem'), own.cert);
  writeFileSync(join(folder, 'settings.json'), JSON.stringify(settings));
  relay = spawn(process.execPath, [file('dist/cli/acre-to-axle.js'), 'relay', '--settings', join(folder, 'settings.json')], {
    env: { ...process.env, ACRE_DATA: join(folder, 'data'), ACRE_LISTEN: new URL(relayAddress).host, ACRE_SMTP: `smtp://localhost:${port}`, NODE_EXTRA_CA_CERTS: join(folder, 'ca.pem'), ACRE_ADDRESS: publicAddress, ACRE_SENDER: 'shortlist@mail.hollowmere.example' },
  });
  await new Promise<void>((settled) => {
    const hear = (part: Buffer) => {
      heard.push(part.toString());
      if (heard.join('').includes('listens at')) settled();
    };
    relay.stdout!.on('data', hear);
    relay.stderr!.on('data', hear);
    relay.once('exit', () => settled());
  });
  expect(relay.exitCode, heard.join('')).toBeNull();
});

afterAll(async () => {
  if (relay?.exitCode === null) {
    const ended = new Promise((exit) => { relay.once('exit', exit); });
    relay.kill('SIGTERM');
    await ended;
  }
  await demo?.close();
  await new Promise<void>((closed) => { smtp.close(closed); });
  rmSync(folder, { recursive: true, force: true });
});

async function ask(address: string, { name, counted = false }: { name?: string; counted?: boolean } = {}) {
  const { page, complaints } = await demo.open();
  const wizard = wizardOn(page);
  await wizard.evaluate(async (element, [said, at]) => {
    const widget = element as AcreToAxle;
    widget.relay = at;
    await widget.ready;
    widget.answers = said;
  }, [answers, relayAddress] as const);
  await wizard.locator('[part="see-result"]').click();
  await wizard.locator('[part="by-mail"]').click();
  await wizard.getByLabel('Your mail address').fill(address);
  if (name) {
    await wizard.getByText('have a copy').click();
    await wizard.getByLabel('Your name').fill(name);
  }
  if (counted) await wizard.getByText('count my answers').click();
  await wizard.locator('[part="send-mail"]').click();
  await wizard.getByText('on its way').waitFor();
  return { page, wizard, complaints };
}

test('a buyer asks for his shortlist, gets it, and comes back by its link to the same answers', async () => {
  const { wizard, complaints } = await ask('ann@buyer.example', { name: 'Ann Example' });
  const shortlist = await wizard.evaluate((element) => (element as AcreToAxle).shortlist!);
  const { mail, to, raw } = await mailTo('ann@buyer.example');
  expect(to).toEqual(['ann@buyer.example']);
  expect(mail.headers.get('auto-submitted')).toBe('auto-generated');
  expect(raw).toMatch(/^List-Unsubscribe: <https:[^\r\n]+>\r\n/m);
  expect(raw).toMatch(/^List-Unsubscribe-Post: List-Unsubscribe=One-Click\r\n/m);
  // Each machine told is in both parts of the mail; the buyer's name is in none.
  const lot = JSON.parse(readFileSync(file('demo/catalogue.json'), 'utf8')) as { machines: { id: string; name: string }[] };
  const names = shortlist.shortlist.slice(0, 2).map(({ machine }) => lot.machines.find(({ id }) => id === machine)!.name);
  expect(names.length).toBeGreaterThan(0);
  for (const name of names) for (const part of [mail.text!, mail.html as string]) expect(part).toContain(name);
  expect(`${mail.text}${mail.html}${mail.subject}`).not.toContain('Ann Example');
  const [link] = /http:\/\/127\.0\.0\.1:\d+\/[^\s"<>]*#a1=[\w-]+/.exec(mail.text!) ?? [];
  expect(link).toBeDefined();
  const back = await demo.visit(new URL(link!).hash);
  await wizardOn(back.page).locator('[part="opened"]').waitFor();
  expect(await wizardOn(back.page).evaluate((element) => (element as AcreToAxle).answers.tasks)).toEqual(answers.tasks);
  expect(complaints).toEqual([]);
});

test('the dealer has his copy, answers to the buyer, and alone reads the name', async () => {
  const { mail } = await mailTo('yard@hollowmere.example');
  expect(mail.replyTo?.value.map(({ address }) => address)).toEqual(['ann@buyer.example']);
  expect(mail.text).toContain('Ann Example');
  expect(mail.subject).not.toContain('Ann');
});

test('whoever stops mail gets no more, and is answered alike', async () => {
  const { raw } = await mailTo('ann@buyer.example');
  const stop = /^List-Unsubscribe: <(https:[^\r\n]+)>/m.exec(raw)![1]!.replace(publicAddress, relayAddress);
  expect((await fetch(stop)).status).toBe(200);
  const stopped = await fetch(stop, { method: 'POST', headers: { 'content-type': 'application/x-www-form-urlencoded' }, body: 'List-Unsubscribe=One-Click' });
  expect(stopped.status).toBe(200);
  const before = caught.length;
  // Another shortlist, for the same one asked for again so soon would be the same request.
  const { page } = await demo.open();
  const again = () => page.evaluate(async ([at, said]) => (await fetch(`${at}v1/shortlists`, {
    method: 'POST', headers: { 'content-type': 'application/json', 'Idempotency-Key': crypto.randomUUID() },
    body: JSON.stringify({ format: 'acre-to-axle/request/1', kind: 'shortlist', dealer: 'hollowmere', answers: { ...said, priorities: ['comfort'] }, address: 'ann@buyer.example', consent: { mail: true, dealerCopy: false, statistics: false }, language: 'en', units: 'us', seen: { catalogue: { id: 'hollowmere' }, rules: { version: '1' } } }),
  })).status, [relayAddress, answers] as const);
  // A relay on a machine that is busy with other things asks to come again.
  await expect.poll(again, { timeout: 30_000, interval: 1_000 }).not.toBe(503);
  expect([202, 429]).toContain(await again());
  await ask('bob@buyer.example', { counted: true });
  await mailTo('bob@buyer.example');
  expect(caught.slice(before).flatMap(({ to }) => to)).toEqual(['bob@buyer.example']);
});

test('what buyers agreed to is counted from the relay that runs, without who they were', async () => {
  const { stdout } = await promisify(execFile)(process.execPath, [file('dist/cli/acre-to-axle.js'), 'demand', '--catalogue', file('demo/catalogue.json'), '--requests', join(folder, 'data'), '--format', 'json'], { env: { ...process.env, ACRE_SETTINGS: join(folder, 'settings.json') } });
  expect(JSON.parse(stdout)).toMatchObject({ requests: 1, counted: 1, unreadable: 0 });
  expect(stdout).not.toContain('bob');
});

test('nothing personal is in what it prints', () => {
  expect(heard.join('')).toContain('listening');
  for (const word of ['ann@', 'bob@', 'Ann Example', 'buyer.example']) expect(heard.join('')).not.toContain(word);
});
