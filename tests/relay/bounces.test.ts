import { afterEach, beforeEach, expect, test } from 'vitest';
import { readReport, weightOf } from '../../src/relay/bounces/read-report.ts';
import { takeBounce } from '../../src/relay/bounces/take-bounce.ts';
import { day } from '../../src/relay/clock.ts';
import { recipientOf } from '../../src/relay/hashes.ts';
import { aDealer, aRelay, post, requestTo, type TestRelay } from './a-relay.ts';

/** In the form of RFC 3464, appendix E.1, with addresses of ours. */
const report = (fields: readonly string[], nth = 0) => [
  'Date: Thu, 7 Jul 1994 17:16:05 -0400', 'From: Mail Delivery Subsystem <MAILER-DAEMON@mail.example>', `Message-Id: <199407072116.RAA14128${nth}@mail.example>`, 'To: <b+token@relay.example>', 'MIME-Version: 1.0',
  'Content-Type: multipart/report; report-type=delivery-status;', '      boundary="RAA14128.773615765/mail.example"', 'Subject: Returned mail: Cannot send message', '',
  '--RAA14128.773615765/mail.example', '', 'The original message was received at Sat, 2 Jul 1994 17:10:28 -0400', '',
  '--RAA14128.773615765/mail.example', 'content-type: message/delivery-status', '', 'Reporting-MTA: dns; mail.example', '', ...fields, '',
  '--RAA14128.773615765/mail.example', 'content-type: message/rfc822', '', '[original message goes here]', '', '--RAA14128.773615765/mail.example--', '',
].join('\r\n');
const about = (address: string, status: string) => [`Original-Recipient: rfc822;${address}`, `Final-Recipient: rfc822;${address}`, 'Action: failed', `Status: ${status}`, 'Diagnostic-Code: smtp; 550 5.1.1 no such', ' user here'];

let relay: TestRelay;
beforeEach(async () => {
  relay = await aRelay();
  await post(relay, requestTo('ann@buyer.example', { consent: { mail: true, dealerCopy: false, statistics: false } }));
  for (const claim of await relay.store.claim(5, relay.clock.now(), 3)) await relay.store.settle(claim, { state: 'sent', reply: '250' }, relay.clock.now());
});
afterEach(() => relay.end());
const isStopped = (dealer = aDealer.id) => relay.store.isStopped(recipientOf(relay.keys.addresses, 'ann@buyer.example'), dealer, relay.clock.now());

test('a report is read as RFC 3464 writes it, folded lines and several recipients too', () => {
  expect(readReport(report([...about('ann@buyer.example', '5.1.1'), '', 'Final-Recipient: RFC822; <bob@buyer.example>', 'Action: delayed', 'Status: 4.4.7 (expired)']))).toEqual([
    { address: 'ann@buyer.example', status: '5.1.1', action: 'failed' }, { address: 'bob@buyer.example', status: '4.4.7', action: 'delayed' },
  ]);
});

// What the numbers mean: RFC 3463, sections 3.2 to 3.8; 5.1.10: RFC 7505, section 4.2.
test.each([['5.1.1', 'hard'], ['5.1.2', 'hard'], ['5.1.6', 'hard'], ['5.1.10', 'hard'], ['5.2.2', 'soft'], ['4.4.7', 'soft'], ['5.7.1', 'ours'], ['5.7.26', 'ours'], ['2.1.5', 'none'], [undefined, 'soft']])('%s is %s', (status, weight) => {
  expect(weightOf({ address: 'a@b.example', status, action: 'failed' })).toBe(weight);
});

test('fault 21: an address that isn’t there is sent nothing more by that dealer; the same report again changes nothing', async () => {
  const mail = report(about('ann@buyer.example', '5.1.1'));
  expect(await takeBounce(mail, relay)).toEqual(['stopped']);
  expect([await isStopped(), await isStopped('other')]).toEqual([true, false]);
  expect(await takeBounce(mail, relay)).toEqual(['seen-before']);
});

test('what comes back for good is told to the dealer who was let have a copy, once, for the last request', async () => {
  for (const address of ['bob@buyer.example', 'bob@buyer.example']) {
    relay.clock.pass(20 * 60_000);
    await post(relay, requestTo(address, { consent: { mail: true, dealerCopy: true, statistics: false } }));
    for (const claim of await relay.store.claim(5, relay.clock.now(), 3)) await relay.store.settle(claim, { state: 'sent', reply: '250' }, relay.clock.now());
  }
  expect(await takeBounce(report(about('bob@buyer.example', '5.1.1')), relay)).toEqual(['stopped']);
  expect(await takeBounce(report(about('bob@buyer.example', '5.1.1'), 1), relay)).toEqual(['stopped']);
  expect(await relay.store.claim(5, relay.clock.now(), 3)).toEqual([expect.objectContaining({ role: 'dealer', isWord: true, messageId: expect.stringMatching(/^<[\w-]+@relay\.example>$/) })]);
});

test('fault 21: one about somebody nothing was sent to is forged, and one of twenty megabytes or within another ends nobody’s day', async () => {
  expect(await takeBounce(report(about('victim@mail.example', '5.1.1')), relay)).toEqual(['not-sent-by-us']);
  expect(await takeBounce(`${'x'.repeat(20 * 1024 * 1024)}\r\n${report(about('ann@buyer.example', '5.1.1'))}`, relay)).toEqual(['no-report']);
  expect(await takeBounce(report([...about('ann@buyer.example', '5.1.1'), ...Array.from({ length: 5_000 }, () => '\r\nFinal-Recipient: rfc822; x@y.example')], 2), relay)).toContain('not-sent-by-us');
  const within = report(['Final-Recipient: rfc822; nobody'], 3).replace('[original message goes here]', report(about('ann@buyer.example', '5.1.1')));
  expect(await takeBounce(within, relay)).toEqual(['no-report']);
});

test('what was refused for what we are is not laid to the person', async () => {
  expect(await takeBounce(report(about('ann@buyer.example', '5.7.26')), relay)).toEqual(['our-fault']);
  expect(await isStopped()).toBe(false);
});

test('three that failed for a passing reason within a week let the address rest for thirty days; over a longer time they don’t', async () => {
  const full = (nth: number) => takeBounce(report(about('ann@buyer.example', '5.2.2'), nth), relay);
  expect([await full(1), await full(2)]).toEqual([['passing'], ['passing']]);
  relay.clock.pass(8 * day);
  expect([await full(3), await full(4), await isStopped()]).toEqual([['passing'], ['passing'], false]);
  expect([await full(5), await isStopped()]).toEqual([['rests'], true]);
  relay.clock.pass(31 * day);
  expect(await isStopped()).toBe(false);
});

test('fault 22: a thousand notes that somebody is out of his office are answered by nothing', async () => {
  const before = await relay.store.depth(relay.clock.now());
  for (let nth = 0; nth < 1_000; nth += 1) {
    expect(await takeBounce(`From: ann@buyer.example\r\nTo: <b+token@relay.example>\r\nAuto-Submitted: auto-replied\r\nSubject: Out of office ${nth}\r\n\r\nI am away until Monday.\r\n`, relay)).toEqual(['no-report']);
  }
  expect(await relay.store.depth(relay.clock.now())).toEqual(before);
  expect(await isStopped()).toBe(false);
});
