import { expect, test } from 'vitest';
import { readRequest, readSealed } from '../../src/request/read-request.ts';
import { aRequest } from './a-request.ts';

const places = (document: unknown) => readRequest(document).faults.map(({ place }) => place);
const nested = (levels: number): unknown => (levels === 0 ? 'x' : { a: nested(levels - 1) });

test('a whole request is read as it is', () => {
  expect(readRequest(aRequest)).toEqual({ value: aRequest, faults: [], unknownKeys: [] });
});

test.each([
  ['no consent to mail', { consent: { mail: false, dealerCopy: true, statistics: false } }, 'consent.mail'],
  ['two addresses', { address: 'a@x.example, b@y.example' }, 'address'],
  ['a line more behind an address', { address: 'a@x.example\r\nBcc: b@y.example' }, 'address'],
  ['an address too long to be passed on', { address: `${'a'.repeat(64)}@${'b'.repeat(60)}.${'c'.repeat(60)}.${'d'.repeat(60)}.${'e'.repeat(20)}.example` }, 'address'],
  ['a name that is an address of a page', { contact: { name: 'Go to cheap.example now' } }, 'contact.name'],
  ['a name with a line in it', { contact: { name: 'Ann\r\nBcc: x' } }, 'contact.name'],
  ['a name that turns round what follows', { contact: { name: 'Ann \u202Eelpmaxe' } }, 'contact.name'],
  ['a phone that is words', { contact: { phone: 'call me' } }, 'contact.phone'],
  ['a time that isn’t one to choose', { contact: { goodTime: 'at night' } }, 'contact.goodTime'],
  ['a key of its own', { subject: 'Buy' }, 'subject'],
  ['a key of its own deep within', { answers: { ...aRequest.answers, land: { slope: 'flat', note: 'Buy' } } }, 'answers.land.note'],
  ['a task that isn’t one', { answers: { ...aRequest.answers, tasks: [{ task: 'sell' }] } }, 'answers.tasks[0].task'],
  ['a dealer who is a path', { dealer: '../other' }, 'dealer'],
])('%s is a fault, and told where', (_what, change, place) => {
  const { value, faults } = readRequest({ ...aRequest, ...change });
  expect(value).toBeUndefined();
  expect(faults.map((each) => each.place)).toContain(place);
});

test.each([
  ['levels', { ...aRequest, answers: nested(9) }],
  ['levels by the hundred thousand', { ...aRequest, answers: nested(5_000) }],
  ['entries', { ...aRequest, answers: { ...aRequest.answers, tasks: Array.from({ length: 51 }, () => ({ task: 'dig' })) } }],
  ['entries by the million', { ...aRequest, answers: { ...aRequest.answers, tasks: Array.from({ length: 1_000_000 }, () => 0) } }],
  ['keys', Object.fromEntries(Array.from({ length: 201 }, (_, index) => [`k${index}`, index]))],
  ['signs', { ...aRequest, language: 'e'.repeat(501) }],
  ['half signs', { ...aRequest, language: '\uD800' }],
])('too many %s are one fault, before anything else is looked at', (_what, document) => {
  expect(places(document)).toHaveLength(1);
});

test('what is no document at all is a fault', () => {
  for (const document of [undefined, null, 1, 'x', [], {}]) expect(readRequest(document).faults.length).toBeGreaterThan(0);
});

test('a sealed request with more around it is a fault', () => {
  const box = { format: 'acre-to-axle/sealed/1', key: 'k1', dealer: 'demo-lot', enc: 'AA', box: 'AA' };
  expect(readSealed(box).value).toEqual(box);
  expect(readSealed({ ...box, address: 'a@x.example' }).faults).toHaveLength(1);
});
