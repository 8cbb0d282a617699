import type { Proof } from './case.ts';
import { leftIn, type Left } from './left.ts';

/**
 * Where one machine is left at the most, and one of its units, what matters most has nothing to put in order. With
 * none left it is asked all the same: the ways out that are told then name prices by it.
 */
export const oneLeft: Proof = function* oneLeft(of) {
  const left: Left[] = [];
  for (const each of leftIn(of)) {
    if (each) left.push(each);
    if (left.length > 1) return undefined;
    yield;
  }
  const [only] = left;
  return only && only.free.length <= 1 ? [only.machine.id] : undefined;
};
