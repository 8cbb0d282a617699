import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { createServer } from 'node:net';
import { simpleParser } from 'mailparser';
import { SMTPServer, type SMTPServerOptions } from 'smtp-server';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { messageOf } from '../../src/relay/sender/message.ts';
import { smtpTransport } from '../../src/relay/sender/smtp/smtp-transport.ts';
import type { SmtpOptions } from '../../src/relay/sender/smtp/connection.ts';
import type { OutgoingMail, Transport } from '../../src/relay/sender/transport.ts';
import { certificate } from './certificate.ts';
import { FakeSmtp, type Doing, type Step } from './fake-smtp.ts';
import { noon } from './store-requests.ts';

/** Short, for nobody here needs longer; what has to time out does so on the spot. */
const waits = { connect: 20_000, greeting: 20_000, command: 20_000, text: 20_000, dot: 20_000 };
const soon = 60;

const mailTo = (to: string, text = 'A line.\n.\n..two\n'): Promise<OutgoingMail> => messageOf(
  { fromName: 'A Dealer', replyTo: 'sales@dealer.example', subject: 'Ihre Auswahl: Kompakttraktoren für Hänge – über 5°', text, html: '<p>ä</p>', headers: { 'List-Unsubscribe': `<https://relay.example/u/${'x'.repeat(100)}>` } },
  { to, sender: 'shortlist@relay.example', bounces: 'bounce.relay.example', messageId: '<0b1c.2@relay.example>', token: 'To-ken_1', date: noon },
);

let fake: FakeSmtp;
let transport: Transport;
const plain = (more: Partial<SmtpOptions> = {}) => smtpTransport({ host: '127.0.0.1', port: fake.port, tls: false, plain: true, waits, ...more });
beforeEach(async () => {
  fake = await FakeSmtp.listening();
  transport = plain();
});
afterEach(async () => {
  await transport.close();
  await fake.close();
});

const does = (step: Step, doing: Doing) => { fake.script = (at) => (at === step ? doing : undefined); };
const send = async (to = 'ann@buyer.example') => transport.send(await mailTo(to));

describe('what goes out', () => {
  test('arrives whole, to one recipient, and a parser of others’ reads it as it was meant', async () => {
    expect(await send()).toEqual({ kind: 'sent', reply: '250 2.0.0 taken' });
    const [received] = fake.ledger;
    expect(received).toMatchObject({ from: 'b+To-ken_1@bounce.relay.example', to: ['ann@buyer.example'], messageId: '<0b1c.2@relay.example>', taken: true });
    const read = await simpleParser(received!.raw);
    expect(read.from?.value).toEqual([{ name: 'A Dealer', address: 'shortlist@relay.example' }]);
    expect(read.subject).toBe('Ihre Auswahl: Kompakttraktoren für Hänge – über 5°');
    expect(read.text?.replace(/\s+$/, '')).toBe('A line.\n.\n..two');
    expect(read.date?.getTime()).toBe(noon);
    expect(read.replyTo?.value[0]?.address).toBe('sales@dealer.example');
    // RFC 5322, section 2.1.1; and the long field stands on one line.
    for (const line of received!.raw.split('\r\n')) expect(line.length).toBeLessThanOrEqual(998);
    expect(received!.raw).toMatch(/^List-Unsubscribe: <https:\/\/relay\.example\/u\/x{100}>\r$/m);
    // Nothing that a server without 8BITMIME couldn't take (RFC 5321, section 2.4).
    expect(received!.raw).toMatch(/^[\p{ASCII}]*$/u);
  });

  test('one connection serves mail after mail, and no more than so many', async () => {
    for (let index = 0; index < 25; index++) expect((await send()).kind).toBe('sent');
    expect(fake.connections).toBe(2);
  });

  test('a connection that ended while it lay there costs nothing', async () => {
    fake.script = (step, _said, connection) => (step === 'dot' && connection === 1 ? { say: '250 taken', next: 'drop' } : undefined);
    await send();
    await once(fake, 'gone');
    expect((await send()).kind).toBe('sent');
    expect(fake.ledger).toHaveLength(2);
  });

  test('a text that is no single address isn’t sent to anybody', async () => {
    for (const to of ['a@x.example, b@y.example', '"a"@x.example', 'a@x.example\r\nRCPT TO:<b@y.example>', 'Ann <a@x.example>', '']) await expect(mailTo(to)).rejects.toThrow('no address');
  });

  test('without TLS nothing leaves this machine', async () => {
    const elsewhere = smtpTransport({ host: 'mail.example', port: 25, tls: false, plain: true });
    expect(await elsewhere.send(await mailTo('ann@buyer.example'))).toMatchObject({ kind: 'later' });
  });
});

describe('what goes wrong', () => {
  test('fault 9: bytes are swallowed: it ends by our own deadline, and is unsure only after the dot', async () => {
    for (const step of ['greeting', 'ehlo', 'mail', 'data'] as const) {
      transport = plain({ waits: { ...waits, connect: soon, greeting: soon, command: soon } });
      does(step, 'hang');
      expect([step, (await send()).kind]).toEqual([step, 'later']);
      await transport.close();
    }
    transport = plain({ waits: { ...waits, dot: soon } });
    does('dot', 'hang');
    expect(await send()).toEqual({ kind: 'unsure', reason: 'no answer' });
  });

  test('fault 10: a server that isn’t there', async () => {
    const nobody = createServer().listen(0, '127.0.0.1');
    await once(nobody, 'listening');
    const { port } = nobody.address() as AddressInfo;
    nobody.close();
    await once(nobody, 'close');
    transport = plain({ port });
    expect(await send()).toEqual({ kind: 'later', reason: 'not reached', unreached: true, slower: false });
  });

  test('fault 11: a greeting that takes its time is waited for, so long and no longer', async () => {
    let greet = () => {};
    const later = new Promise<void>((resolve) => { greet = resolve; });
    does('greeting', { wait: later, say: '220 at last' });
    const sending = send();
    await new Promise((resolve) => setImmediate(resolve));
    expect(fake.ledger).toEqual([]);
    greet();
    expect((await sending).kind).toBe('sent');
    transport = plain({ waits: { ...waits, connect: soon, greeting: soon } });
    does('greeting', 'hang');
    expect(await send()).toMatchObject({ kind: 'later', unreached: true });
  });

  test.each([
    ['greeting', '421 busy'], ['greeting', '450 no'], ['mail', '421 4.3.2 closing'], ['mail', '451 4.3.0 no'], ['rcpt', '450 4.2.1 later'], ['rcpt', '452 4.5.3 too many'],
    ['data', '421 bye'], ['data', '451 later'], ['dot', '421 4.7.0 slower'], ['dot', '450 no'], ['dot', '451 4.7.1 greylisted'], ['dot', '452 4.3.1 full'],
  ] as const)('fault 12: %s %s is for later, and says whether to go slower', async (step, reply) => {
    does(step, reply);
    expect(await send()).toMatchObject({ kind: 'later', slower: /^421|4\.7/.test(reply), unreached: step === 'greeting' });
  });

  test('fault 13: nobody of that name', async () => {
    for (const detail of ['5.1.1', '5.1.2', '5.1.6']) {
      does('rcpt', `550 ${detail} no such user <ann@buyer.example>`);
      const verdict = await send();
      expect(verdict).toMatchObject({ kind: 'refused', noSuchAddress: true, ours: false });
      expect(JSON.stringify(verdict)).not.toContain('ann@');
    }
    does('rcpt', '550 no');
    expect(await send()).toMatchObject({ kind: 'refused', noSuchAddress: false, ours: false });
    does('rcpt', '552 5.2.2 mailbox full');
    expect(await send()).toMatchObject({ kind: 'refused', noSuchAddress: false });
  });

  test.each([['mail', '552 5.3.4 too big'], ['dot', '554 5.7.1 policy'], ['dot', '550 5.7.26 not authenticated'], ['rcpt', '554 5.7.1 relaying denied']] as const)('fault 14: %s %s is ours', async (step, reply) => {
    does(step, reply);
    expect(await send()).toMatchObject({ kind: 'refused', noSuchAddress: false, ours: true });
  });

  test('fault 14: who refuses us before he knows for whom, refuses us all', async () => {
    for (const [step, reply] of [['mail', '550 5.7.1 sender not allowed'], ['mail', '530 5.7.0 must issue STARTTLS'], ['greeting', '554 no service'], ['rcpt', '530 authentication required']] as const) {
      does(step, reply);
      expect([reply, (await send()).kind]).toEqual([reply, 'closed']);
    }
  });

  test('fault 16: the connection dies between the last dot and the answer', async () => {
    for (const how of ['drop', 'reset'] as const) {
      does('dot', how);
      expect(await send()).toEqual({ kind: 'unsure', reason: 'no answer' });
    }
    expect(fake.ledger).toHaveLength(2);
    // The dot is not out while DATA isn't answered.
    for (const how of ['drop', 'reset'] as const) {
      does('data', how);
      expect(await send()).toMatchObject({ kind: 'later', unreached: true });
    }
    expect(fake.ledger).toHaveLength(2);
  });

  test('fault 16: broken off in the middle of the text it is for later', async () => {
    const long = await mailTo('ann@buyer.example', 'A long line of text.\n'.repeat(400_000));
    fake.script = (step) => (step === 'data' ? { say: '354 go on', next: 'drop' } : undefined);
    fake.once('text', () => transport.abort());
    expect((await transport.send(long)).kind).toBe('later');
    expect(fake.ledger).toEqual([]);
  });

  test('fault 17: taken, then reset, is taken', async () => {
    does('dot', { say: '250 2.0.0 taken', next: 'reset' });
    expect((await send()).kind).toBe('sent');
    does('dot', { say: '250 2.0.0 taken', next: '250 2.0.0 taken again' });
    expect((await send()).kind).toBe('sent');
    fake.script = () => undefined;
    expect((await send()).kind).toBe('sent');
    expect(fake.ledger).toHaveLength(3);
  });

  const badUtf8 = Buffer.from([0x32, 0x35, 0x30, 0x20, 0xff, 0xfe, 0xc3, 0x28, 0x0d, 0x0a]);
  test.each([
    ['greeting', ['22', '0 fake', '\r', '\n']], ['greeting', ['220-one\r\n220-two\r\n220 ', 'three\r\n']], ['ehlo', [`250-fake\r\n250-${'X'.repeat(990)}\r\n250 8BITMIME\r\n`]],
    ['mail', [badUtf8]], ['dot', ['2', '5', '0', ' ', 'ok', '\r\n']], ['dot', ['250-2.0.0 a\r\n', '250-2.0.0 b\r\n250 2.0.0 c\r\n']], ['dot', [badUtf8]],
  ] as const)('fault 18: a reply to %s in odd pieces is read', async (step, pieces) => {
    does(step, { pieces: [...pieces] });
    expect((await send()).kind).toBe('sent');
  });

  test.each([
    ['greeting', 'hello there\r\n', 'later'], ['greeting', '\u0000\u0000\u0000\r\n', 'later'], ['mail', 'what?\r\n', 'later'], ['data', '999 no code\r\n', 'later'],
    ['dot', 'thanks\r\n', 'unsure'], ['dot', '354 more?\r\n', 'unsure'], ['dot', `250-${'x'.repeat(70_000)}\r\n250-`, 'unsure'],
  ] as const)('fault 18: %s answered with %j leaves the process alive', async (step, reply, kind) => {
    transport = plain({ waits: { ...waits, ...(step === 'dot' ? { dot: soon } : { greeting: soon, connect: soon, command: soon }) } });
    does(step, { pieces: [reply] });
    expect((await send()).kind).toBe(kind);
    await transport.close();
    fake.script = () => undefined;
    transport = plain();
    expect((await send()).kind).toBe('sent');
  });

  test('fault 20: a server that takes 1,000 bytes refuses what is longer before it is sent', async () => {
    does('ehlo', '250-fake.example\r\n250 SIZE 1000');
    expect(await transport.send(await mailTo('ann@buyer.example', 'x'.repeat(2_000)))).toMatchObject({ kind: 'refused', reason: 'too large', noSuchAddress: false, ours: true });
    expect(fake.ledger).toEqual([]);
    does('ehlo', '250-fake.example\r\n250 SIZE 100000');
    expect((await send()).kind).toBe('sent');
  });
});

describe('on a server that keeps to the standards', () => {
  const yesterday = new Date(Date.now() - 86_400_000);
  const valid = { from: yesterday, until: new Date(Date.now() + 86_400_000) };
  let server: SMTPServer;
  let taken: string[];
  const listening = async (options: SMTPServerOptions) => {
    taken = [];
    server = new SMTPServer({
      logger: false, disableReverseLookup: true, authOptional: true,
      onData(stream, _session, done) {
        const pieces: Buffer[] = [];
        stream.on('data', (piece: Buffer) => pieces.push(piece)).on('end', () => {
          taken.push(Buffer.concat(pieces).toString());
          done();
        });
      },
      ...options,
    });
    server.on('error', () => undefined);
    server.listen(0, '127.0.0.1');
    await once(server.server, 'listening');
    return (server.server.address() as AddressInfo).port;
  };
  const to = (port: number, more: Partial<SmtpOptions> = {}) => smtpTransport({ host: 'localhost', port, tls: false, waits, ...more });
  afterEach(() => new Promise<void>((resolve) => server.close(() => resolve())));

  test('mail goes out by STARTTLS and by TLS from the first byte, logged in', async () => {
    const own = certificate('localhost', valid);
    for (const secure of [false, true]) {
      const port = await listening({ ...own, secure, authOptional: false, onAuth: ({ username, password }, _session, done) => (username === 'us' && password === 'pass' ? done(null, { user: 1 }) : done(new Error('no'))) });
      transport = to(port, { tls: secure, ca: own.cert, user: 'us', password: 'pass' });
      expect((await send()).kind).toBe('sent');
      expect((await simpleParser(taken[0]!)).messageId).toBe('<0b1c.2@relay.example>');
      await transport.close();
      if (!secure) await new Promise<void>((resolve) => server.close(() => resolve()));
    }
  });

  test('fault 15: a wrong password closes the way out and refuses no mail', async () => {
    const own = certificate('localhost', valid);
    const port = await listening({ ...own, authOptional: false, onAuth: (_auth, _session, done) => done(new Error('Invalid')) });
    transport = to(port, { ca: own.cert, user: 'us', password: 'wrong' });
    expect(await send()).toMatchObject({ kind: 'closed', reason: 'login' });
    expect(taken).toEqual([]);
  });

  test('fault 19: no STARTTLS, no mail', async () => {
    const port = await listening({ hideSTARTTLS: true, disabledCommands: ['STARTTLS', 'AUTH'] });
    transport = to(port);
    expect(await send()).toMatchObject({ kind: 'closed', reason: 'no safe connection' });
    expect(taken).toEqual([]);
  });

  test.each([
    ['one that nobody vouches for', 'localhost', valid, false],
    ['one of another name', 'elsewhere.example', valid, true],
    ['one that has run out', 'localhost', { from: new Date(0), until: yesterday }, true],
  ])('fault 19: a certificate, %s, gets no mail', async (_what, name, times, known) => {
    const own = certificate(name, times);
    for (const secure of [false, true]) {
      const port = await listening({ ...own, secure });
      transport = to(port, { tls: secure, ...(known && { ca: own.cert }) });
      expect(await send()).toMatchObject({ kind: 'closed', reason: 'no safe connection' });
      expect(taken).toEqual([]);
      await transport.close();
      if (!secure) await new Promise<void>((resolve) => server.close(() => resolve()));
    }
  });
});
