import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { day, hour, minute } from '../../src/relay/clock.ts';
import { mailboxOf, personOf, recipientOf } from '../../src/relay/hashes.ts';
import { usualLimits } from '../../src/relay/settings/dealer.ts';
import { clientOf, networkOf, plainAddress, proxiesOf } from '../../src/relay/way/client.ts';
import { takesOf, vagueAfter } from '../../src/relay/way/limits.ts';
import { Recent } from '../../src/relay/way/recent.ts';
import { Buckets } from '../../src/relay/way/buckets.ts';
import { fakeClock } from './a-relay.ts';

const secret = new Uint8Array(32);
const takes = takesOf({ dealer: 'd', limits: usualLimits, mailbox: 'm', sender: { client: 'c' }, mails: 1, quota: 1_000 });
const bucket = (begin: string) => takes.find((take) => take.bucket.startsWith(begin))!;

/** Most that can be taken from a bucket in a stretch of time, by the law of such buckets: most + ⌊time × rate⌋. */
const mostIn = (begin: string, time: number) => {
  const { most, fills } = bucket(begin);
  return Math.floor(most + time * most / fills);
};

test('one mailbox gets at most three in any day and five in any week', () => {
  expect([mostIn('recipient:', day), mostIn('recipient:', 7 * day)]).toEqual([3, 5]);
});

test('the limits are those that are published', () => {
  expect(bucket('recipient-at:')).toMatchObject({ most: 1, fills: 10 * minute });
  expect(bucket('client-soon:')).toMatchObject({ most: 5, fills: 10 * minute });
  expect(bucket('client-day:')).toMatchObject({ most: 30, fills: day });
  expect(bucket('dealer-hour:')).toMatchObject({ most: 60, fills: hour });
  expect(bucket('dealer-day:')).toMatchObject({ most: 500, fills: day });
  expect(bucket('relay-day')).toMatchObject({ most: 800, fills: day });
});

test('when to try again tells no limit: whole minutes, none of them short', () => {
  expect([1, 59_999, 61_000, 30 * day].map(vagueAfter)).toEqual([60, 60, 120, 3_600]);
});

describe('one person', () => {
  test('is one however he types his address', () => {
    expect(new Set(['Ann.Lee@Buyer.example', 'ann.lee+tractors@buyer.example', 'ANN.LEE+@BUYER.EXAMPLE'].map(personOf))).toEqual(new Set(['ann.lee@buyer.example']));
    expect(personOf('+lot@buyer.example')).toBe('+lot@buyer.example');
  });

  test('shares limits with the dots of his address, and the stop list with nobody', () => {
    expect(mailboxOf(secret, 'a.n.n@buyer.example')).toBe(mailboxOf(secret, 'ann+x@buyer.example'));
    expect(recipientOf(secret, 'a.nn@buyer.example')).not.toBe(recipientOf(secret, 'ann@buyer.example'));
  });
});

describe('one client', () => {
  test.each([
    ['192.0.2.7', '192.0.2.7'], ['::ffff:192.0.2.7', '192.0.2.7'], ['2001:db8:1:2:3:4:5:6', '2001:db8:1:2::/64'], ['2001:db8::1', '2001:db8:0:0::/64'], ['2001:0db8:0001:0002:ffff::', '2001:db8:1:2::/64'], ['::1', '0:0:0:0::/64'], ['fe80::1%eth0', 'fe80:0:0:0::/64'],
  ])('%s is of %s', (address, network) => expect(networkOf(plainAddress(address)!)).toBe(network));

  test('is the last one no proxy of ours vouches for, whatever else is written', () => {
    const proxies = proxiesOf(['10.0.0.0/8', 'fd00::/8', '192.0.2.1']);
    expect(clientOf('203.0.113.5', '198.51.100.1', proxies)).toBe('203.0.113.5');
    expect(clientOf('10.0.0.1', '198.51.100.1, 198.51.100.2', proxies)).toBe('198.51.100.2');
    expect(clientOf('10.0.0.1', '198.51.100.1, 10.2.2.2, fd00::1', proxies)).toBe('198.51.100.1');
    expect(clientOf('10.0.0.1', 'evil, 198.51.100.1', proxies)).toBe('198.51.100.1');
    expect(clientOf('10.0.0.1', 'evil', proxies)).toBe('10.0.0.1');
    expect(clientOf('10.0.0.1', undefined, proxies)).toBe('10.0.0.1');
    expect(clientOf('::ffff:10.0.0.1', '198.51.100.9', proxies)).toBe('198.51.100.9');
  });

  test('is never what a stranger wrote, unless a proxy of ours heard it', () => {
    fc.assert(fc.property(fc.string(), fc.ipV4(), (written, peer) => {
      expect(clientOf(peer, written, proxiesOf([]))).toBe(peer);
    }));
  });
});

test('buckets in memory fill up steadily, and there are never more than so many', () => {
  const clock = fakeClock();
  const buckets = new Buckets(clock, 2, 10 * minute, 3);
  expect([buckets.take('a'), buckets.take('a'), buckets.take('a')]).toEqual([true, true, false]);
  clock.pass(5 * minute);
  expect([buckets.take('a'), buckets.take('a')]).toEqual([true, false]);
  for (const key of ['b', 'c', 'd']) buckets.take(key);
  expect(buckets.take('a')).toBe(true);
});

test('who met whom is forgotten after a day', () => {
  const met = new Recent(2, 3);
  const now = Date.UTC(2026, 10, 20);
  expect([met.add('k', 'a', now), met.add('k', 'a', now), met.add('k', 'b', now)]).toEqual([1, 1, 2]);
  expect(met.count('k', now + day)).toBe(0);
  for (const key of ['x', 'y']) met.add(key, 'a', now);
  expect(met.count('k', now)).toBe(0);
});
