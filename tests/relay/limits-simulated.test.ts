import { randomUUID } from 'node:crypto';
import { expect, test } from 'vitest';
import { day, minute, second } from '../../src/relay/clock.ts';
import { Refusal } from '../../src/relay/problems.ts';
import { aDealer, aRelay, origin, requestTo, type TestRelay } from './a-relay.ts';
import { Intake, type Arrival } from '../../src/relay/way/intake.ts';
import { dealerOf } from '../../src/relay/settings/dealer.ts';
import { sequence } from '../../src/units/sequence.ts';
import { newTicket } from '../../src/relay/way/ticket.ts';

/** All of it on demand, a tenth of it always. */
const scale = process.env.ALL ? 1 : 0.1;
const dealers = Array.from({ length: 50 }, (_, index) => ({ ...aDealer, id: `dealer-${index}` }));
const plain = { mail: true, dealerCopy: false, statistics: false } as const;

const intakeOf = ({ store, clock, keys }: TestRelay) => new Intake({ store, clock, keys, dealers: new Map(dealers.map((each) => [each.id, dealerOf(each)])), mailsPerDay: 10_000_000, domain: 'relay.example' });

async function tried(intake: Intake, request: object, network: string, fetchMetadata = true): Promise<'taken' | 'refused'> {
  const arrival: Arrival = { body: Buffer.from(JSON.stringify(request)), origin, idempotencyKey: randomUUID(), token: undefined, network, fetchMetadata };
  try {
    await intake.take(arrival);
    return 'taken';
  } catch (error) {
    if (error instanceof Refusal && error.code === 'limited') return 'refused';
    throw error;
  }
}

/** Most within a stretch of time, wherever it begins. */
const mostWithin = (times: readonly number[], stretch: number) => Math.max(...times.map((begin) => times.filter((time) => time >= begin && time < begin + stretch).length));

test('fault 43: a hundred thousand tries from ten thousand addresses at fifty dealers bring one victim three mails a day and five a week at most', async () => {
  const relay = await aRelay();
  const intake = intakeOf(relay);
  const chance = sequence(43);
  const tries = 100_000 * scale;
  const spellings = ['victim@mail.example', 'VICTIM@mail.example', 'vic.tim@mail.example', 'victim+1@mail.example', 'v.i.c.tim+lot@Mail.Example'];
  const mails: number[] = [];
  // Twelve days long, in the ways a script has: other spellings, other answers, with and without a ticket, like a browser and not.
  const step = 12 * day / tries;
  for (let nth = 0; nth < tries; nth += 50) {
    await Promise.all(Array.from({ length: 50 }, async (_, index) => {
      const dealer = dealers[Math.floor(chance() * dealers.length)]!.id;
      const now = relay.clock.now();
      const ticket = chance() < 0.5 ? newTicket(relay.keys.ticketSecrets(now)[0]!, { dealer, origin }, now - 10 * second, 0) : undefined;
      const request = requestTo(spellings[Math.floor(chance() * spellings.length)]!, { dealer, consent: plain, ...(ticket && { ticket }), answers: { format: 'acre-to-axle/answers/1', land: { area: { value: nth + index + 1, unit: 'acre' } } } });
      if (await tried(intake, request, `10.${Math.floor(chance() * 40)}.${Math.floor(chance() * 250)}.1`, chance() < 0.5) === 'taken') mails.push(now);
    }));
    relay.clock.pass(step * 50);
  }
  const { byState } = await relay.store.depth(relay.clock.now());
  await relay.end();
  // What is on its way or asks first is a mail; what waits for a person or an answer is none yet.
  expect(byState.queued).toBeLessThanOrEqual(mails.length);
  expect(mails.length).toBeGreaterThan(4);
  expect(mostWithin(mails, day)).toBeLessThanOrEqual(3);
  expect(mostWithin(mails, 7 * day)).toBeLessThanOrEqual(5);
}, 300_000);

test('of ten thousand honest visits at most one in a thousand is refused', async () => {
  const relay = await aRelay();
  const intake = intakeOf(relay);
  const chance = sequence(12);
  const visits = 10_000 * scale;
  let refused = 0;
  let tries = 0;
  // Fifty dealers' buyers over thirty days, in the evening as by day: 7 a day and dealer. One in twenty sits behind an address a
  // hundred share, one in ten asks a second dealer an hour later, one in fifty changes an answer and asks again after a quarter of an hour.
  const step = 30 * day * scale / visits;
  for (let nth = 0; nth < visits; nth += 1) {
    const address = `buyer-${nth}@mail.example`;
    const network = chance() < 0.05 ? `100.64.${Math.floor(chance() * 5)}.1` : `10.${nth >> 8}.${nth & 255}.1`;
    const visit = async (dealer: string, area: number) => {
      const now = relay.clock.now();
      const helper = chance() < 0.1;
      const ticket = chance() < 0.97 ? newTicket(relay.keys.ticketSecrets(now)[0]!, { dealer, origin }, now - (helper ? second : minute), 0) : undefined;
      const request = requestTo(address, { dealer, consent: plain, ...(ticket && { ticket }), ...(helper && { leftEmpty: address }), answers: { format: 'acre-to-axle/answers/1', land: { area: { value: area, unit: 'acre' } } } });
      tries += 1;
      if (await tried(intake, request, network) === 'refused') refused += 1;
    };
    const [one, other] = [dealers[nth % 50]!.id, dealers[(nth + 7) % 50]!.id];
    await visit(one, 5);
    const way = chance();
    if (way < 0.1) await visit(other, 5);
    else if (way < 0.12) {
      relay.clock.pass(15 * minute);
      await visit(one, 6);
    }
    relay.clock.pass(step);
  }
  const { byState } = await relay.store.depth(relay.clock.now());
  await relay.end();
  expect(tries).toBeGreaterThan(visits);
  expect(refused / tries).toBeLessThanOrEqual(0.001);
  // Whoever isn't refused is sent something: nobody honest is held.
  expect(byState.held).toBe(0);
}, 300_000);
