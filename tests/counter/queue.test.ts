import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { longestWait, waitAfter } from '../../src/counter/queue/back-off.ts';
import { isOlder } from '../../src/counter/queue/is-older.ts';
import { initialsOf, isInitials, type Waiting } from '../../src/counter/queue/record.ts';
import { isOverdue } from '../../src/counter/queue/status.ts';
import { readWaitingFile, waitingFormat, writeWaitingFile } from '../../src/counter/queue/waiting-file.ts';
import { readSealed } from '../../src/request/read-request.ts';
import { newRelayKey, seal } from '../../src/request/seal.ts';
import { aRequest } from '../request/a-request.ts';

const id = '5f0c9f0e-5a3b-4c1d-9a86-2f4a1f0f7e01';
const { key } = await newRelayKey('k1');
const waiting: Waiting = { id, v: 1, createdAt: 1_770_000_000_000, dealer: 'demo-lot', sealed: await seal(aRequest, key, id), tries: 2, nextAt: 0, state: 'queued', label: 'A. O.' };
const fileOf = (...records: unknown[]) => readWaitingFile(writeWaitingFile(records));
const placesOf = (...records: unknown[]) => fileOf(...records).faults.map(({ place }) => place);
const chance = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });

describe('waiting before the next try', () => {
  test('grows, is spread, and never longer than seven and a half minutes by itself', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 60 }), chance, (tries, random) => {
      const [least, most] = [waitAfter(tries, undefined, 0), waitAfter(tries, undefined, 0.999_999)];
      const wait = waitAfter(tries, undefined, random);
      expect(wait).toBeGreaterThanOrEqual(1_000);
      expect(wait).toBeLessThanOrEqual(450_000);
      expect(most / least).toBeGreaterThan(2.9);
      expect(waitAfter(tries + 1, undefined, random)).toBeGreaterThanOrEqual(wait);
    }));
  });

  test('what the relay asked for is never undercut, nor believed beyond a day', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 999_999 }), fc.integer({ min: 1, max: 60 }), chance, (after, tries, random) => {
      const wait = waitAfter(tries, after, random);
      expect(wait).toBeGreaterThanOrEqual(Math.min(after * 1_000, longestWait));
      expect(wait).toBeLessThanOrEqual(longestWait);
    }));
  });
});

describe('a label', () => {
  test.each(['A. O.', 'Z', 'J.-P. M.', 'Ł. Ž.', 'a o m b'])('“%s” is initials', (text) => expect(isInitials(text)).toBe(true));
  test.each(['Ann', 'A. Miller', '', '.', 'A. B. C. D. E.', '555', 'A. @'])('“%s” isn’t', (text) => expect(isInitials(text)).toBe(false));

  test.each([['Ann O’Neill-Müller', 'A. O. M.'], ['łukasz', 'Ł.'], ['a b c d e f', 'A. B. C. D.'], ['42', '']])('initials of %s', (name, initials) => expect(initialsOf(name)).toBe(initials));

  test('initials of any name are initials, or nothing', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme' }), (name) => initialsOf(name) === '' || isInitials(initialsOf(name))));
  });
});

test.each([
  ['nothing waits', { count: 0, oldest: undefined, needsStaff: 0 }, false],
  ['twenty wait', { count: 20, oldest: 0, needsStaff: 0 }, false],
  ['twenty-one wait', { count: 21, oldest: 0, needsStaff: 0 }, true],
  ['one waits for more than a day', { count: 1, oldest: -1, needsStaff: 0 }, true],
  ['one needs staff', { count: 1, oldest: 0, needsStaff: 1 }, true],
])('%s: overdue %o', (_what, counts, overdue) => {
  expect(isOverdue({ ...counts, persisted: true, trouble: undefined }, 86_400_000)).toBe(overdue);
});

describe('the page a relay wants at least', () => {
  const number = fc.integer({ min: 0, max: 99_999 });

  test('is compared number by number, as Semantic Versioning 2.0.0 (clause 11) orders them', () => {
    // The order that clause gives as its example.
    const ordered = ['1.0.0', '2.0.0', '2.1.0', '2.1.1'];
    for (const [place, own] of ordered.entries()) expect(ordered.map((least) => isOlder(own, least))).toEqual(ordered.map((_, other) => place < other));
    expect(isOlder('0.9.0', '0.10.0')).toBe(true);
    fc.assert(fc.property(fc.tuple(number, number, number), fc.tuple(number, number, number), (one, other) => {
      const [before, after] = [one.join('.'), other.join('.')];
      expect([isOlder(before, after), isOlder(after, before)].filter(Boolean)).toHaveLength(before === after ? 0 : 1);
    }));
  });

  test('counts for nothing where it can’t be read, nor to a page without a version', () => {
    fc.assert(fc.property(fc.anything(), (least) => { if (typeof least !== 'string') expect(isOlder('0.1.0', least)).toBe(false); }));
    for (const least of ['', '9', '9.9', 'v9.9.9', '9.9.9-next', '9.9.9.9', '-9.9.9']) expect(isOlder('0.1.0', least)).toBe(false);
    expect(isOlder('unbuilt', '9.9.9')).toBe(false);
  });
});

describe('a file of what waits', () => {
  test('comes back as it was written', () => {
    const other = { ...waiting, id: id.replace('5', '6'), state: 'needs-staff', code: 'seal-key' } as const;
    expect(fileOf(waiting, other)).toEqual({ records: [waiting, other], faults: [] });
  });

  test.each<[string, unknown, string]>([
    ['no UUID', { ...waiting, id: 'five' }, 'records[1].id'],
    ['a later version', { ...waiting, v: 2, more: 1 }, 'records[1].v'],
    ['a key nobody knows', { ...waiting, address: 'ann@buyer.example' }, 'records[1].address'],
    ['a name for a label', { ...waiting, label: 'Ann' }, 'records[1].label'],
    ['another dealer outside than inside', { ...waiting, dealer: 'other-lot' }, 'records[1].dealer'],
    ['a broken box', { ...waiting, sealed: { ...waiting.sealed, box: 'a b' } }, 'records[1].sealed.box'],
    ['no box', { ...waiting, sealed: undefined }, 'records[1].sealed'],
    ['no record', 7, 'records[1]'],
    ['a time that is none', { ...waiting, createdAt: -1 }, 'records[1].createdAt'],
  ])('%s is told by its place, and costs no other record', (_what, record, place) => {
    expect(placesOf(waiting, record)).toEqual([place]);
    expect(fileOf(waiting, record).records).toEqual([waiting]);
  });

  test.each([
    ['no JSON', '{', ''],
    ['something else', '[]', ''],
    ['another format', '{"format":"acre-to-axle/answers/1"}', 'format'],
    ['no list', JSON.stringify({ format: waitingFormat, records: {} }), 'records'],
    ['a key too many', JSON.stringify({ format: waitingFormat, records: [], more: 1 }), 'more'],
  ])('%s is none', (_what, text, place) => {
    expect(readWaitingFile(text)).toEqual({ records: [], faults: [expect.objectContaining({ place })] });
  });

  test('whatever is in it, reading never throws, and what was read can be written and read again', () => {
    const part = fc.oneof(fc.jsonValue(), fc.constant(waiting.sealed), fc.constant(waiting.id));
    const record = fc.oneof(fc.jsonValue(), fc.tuple(fc.constantFrom(...Object.keys(waiting)), part).map(([name, value]) => ({ ...waiting, [name]: value })));
    fc.assert(fc.property(fc.array(record, { maxLength: 4 }), (records) => {
      const read = fileOf(...records);
      expect(fileOf(...read.records)).toEqual({ records: read.records, faults: [] });
    }));
    fc.assert(fc.property(fc.string(), (text) => { readWaitingFile(text); }));
  });

  test('the reader agrees with the schema of what is sealed, which a relay reads by', () => {
    const altered = fc.tuple(fc.constantFrom(...Object.keys(waiting.sealed), 'more'), fc.oneof(fc.string(), fc.constantFrom('demo-lot', 'k2', 'QUJD', 'a+b', '', undefined, 1, null), fc.stringMatching(/^[\w.-]{1,70}$/)));
    fc.assert(fc.property(altered, ([name, value]) => {
      const box = { ...waiting.sealed, [name]: value } as Record<string, unknown>;
      if (value === undefined) delete box[name];
      const { faults } = fileOf({ ...waiting, dealer: box.dealer, sealed: box });
      const inBox = faults.some(({ place }) => place.startsWith('records[0].sealed'));
      expect(inBox).toBe(readSealed(box).value === undefined);
    }), { numRuns: 500 });
  });
});
