import { expect, test } from 'vitest';
import { nearest } from '../../src/documents/nearest.ts';

const tiers = ['economy', 'standard', 'deluxe'];

test.each([
  ['delux', tiers, 'deluxe'],
  ['Standrad', tiers, 'standard'],
  ['ECONOMY', tiers, 'economy'],
  ['aardvark-grey', tiers, undefined],
  ['delux', [], undefined],
  // Equally near: the first by code unit, so that the order of the list doesn't matter.
  ['dack', ['rack', 'deck', 'duck'], 'deck'],
])('"%s" among %j is meant as %s', (wrong, known, meant) => expect(nearest(wrong, known)).toBe(meant));
