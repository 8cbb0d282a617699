import type { Need } from '../needs/need.ts';
import type { Candidate, World } from './candidate.ts';
import { evaluate } from './evaluate.ts';
import { isFailedGate } from './verdict.ts';

/** Some of the needs, a bit for each. */
type Some = bigint;

const bitsIn = (some: Some): Some[] => {
  const bits: Some[] = [];
  for (let left = some, bit = 1n; left > 0n; left >>= 1n, bit <<= 1n) if ((left & 1n) === 1n) bits.push(bit);
  return bits;
};
const union = (all: readonly Some[]) => all.reduce((sum, each) => sum | each, 0n);
const isWithin = (part: Some, whole: Some) => (part & ~whole) === 0n;

/** Those that no other lies within, each once. */
const smallest = (all: readonly Some[]) =>
  all.filter((each, index) => all.every((other, at) => at === index || !isWithin(other, each) || (other === each && index < at)));

/** A smallest part of `rest` that fails together with `fixed`, by halves: few trials where the part is small. */
function leastFailing(fixed: Some, added: boolean, rest: readonly Some[], fails: (some: Some) => boolean): Some {
  if (added && fails(fixed)) return 0n;
  if (rest.length <= 1) return union(rest);
  const half = rest.length >> 1;
  const [first, second] = [rest.slice(0, half), rest.slice(half)];
  const ofSecond = leastFailing(fixed | union(first), true, second, fails);
  const ofFirst = leastFailing(fixed | ofSecond, ofSecond !== 0n, first, fails);
  return ofFirst | ofSecond;
}

/** Every smallest set that has something in common with each of some sets. */
const hitting = (sets: readonly Some[]): Some[] => sets.reduce<Some[]>(
  (sofar, set) => smallest([
    ...sofar.filter((each) => (each & set) !== 0n),
    ...sofar.filter((each) => (each & set) === 0n).flatMap((each) => bitsIn(set).map((bit) => each | bit)),
  ]),
  [0n],
);

/** What of some needs a candidate fails, whatever else is asked: those it fails alone, or the first set it fails together. */
function failingOf(candidate: Candidate, needs: readonly Need[], world: World) {
  const of = (some: Some) => needs.filter((_need, index) => ((some >> BigInt(index)) & 1n) === 1n);
  const gatesIn = (some: Some) => evaluate(candidate, of(some), world).judged.filter(isFailedGate);
  const fails = (some: Some) => gatesIn(some).length > 0;
  const alone = new Map<Some, boolean>();
  const failsAlone = (bit: Some) => {
    const known = alone.get(bit) ?? fails(bit);
    alone.set(bit, known);
    return known;
  };
  return (asked: Some): { each: Some } | { together: Some } | undefined => {
    const gates = new Set(gatesIn(asked).map(({ need }) => need.id));
    if (gates.size === 0) return undefined;
    const bits = bitsIn(asked);
    const failed = needs.flatMap(({ id }, index) => (gates.has(id) ? [1n << BigInt(index)] : []));
    const each = union(failed.filter(failsAlone));
    return each === 0n ? { together: leastFailing(0n, false, bits, fails) } : { each };
  };
}

/** Sets visited for one candidate, at the most: every part of the needs whose conflicts are found in full. */
const mostVisits = (world: World) => 2 ** world.book.value('relax.conflicts');

/**
 * The largest sets of needs that one of the candidates meets, each and no other: by Reiter's tree of what to
 * give up, candidate by candidate, cut where another has met as much.
 */
function largestMet(candidates: readonly Candidate[], needs: readonly Need[], world: World): { met: Some[]; whole: boolean } {
  const everything = (1n << BigInt(needs.length)) - 1n;
  let met: Some[] = [];
  let whole = true;
  for (const candidate of candidates) {
    const failing = failingOf(candidate, needs, world);
    const seen = new Set<Some>();
    const visit = (asked: Some) => {
      if (seen.has(asked) || met.some((each) => isWithin(asked, each))) return;
      if (seen.size >= mostVisits(world)) {
        whole = false;
        return;
      }
      seen.add(asked);
      const found = failing(asked);
      if (!found) met = [...met.filter((each) => !isWithin(each, asked)), asked];
      else if ('each' in found) visit(asked & ~found.each);
      else for (const bit of bitsIn(found.together)) visit(asked & ~bit);
    };
    visit(everything);
  }
  return { met, whole };
}

export interface Conflicts {
  /** Smallest sets of needs that no candidate meets together, by id. */
  sets: string[][];
  /** Whether those are all there are. */
  complete: boolean;
  /** Smallest sets of needs without which a candidate is no longer ruled out, by id. */
  corrections: string[][];
}

/** Of more needs than are gone through in full, one smallest conflict from each place to begin with. */
function someOf(inConflict: Some, met: readonly Some[]): Some[] {
  const fails = (some: Some) => !met.some((each) => isWithin(some, each));
  const bits = bitsIn(inConflict);
  return smallest(bits.map((_bit, from) => leastFailing(0n, false, [...bits.slice(from), ...bits.slice(0, from)], fails)));
}

/**
 * Which needs can't be met together by any candidate, exactly, and what to give up for one to be met. Only
 * musts can conflict: a wish is left undone.
 */
export function conflictsOf(candidates: readonly Candidate[], needs: readonly Need[], world: World): Conflicts {
  const musts = needs.filter(({ must }) => must);
  const { met, whole } = largestMet(candidates, musts, world);
  const everything = (1n << BigInt(musts.length)) - 1n;
  const corrections = met.map((each) => everything & ~each);
  const inConflict = union(corrections);
  const few = bitsIn(inConflict).length <= world.book.value('relax.conflicts');
  const sets = !whole ? [] : few ? hitting(corrections) : someOf(inConflict, met);
  const idsOf = (some: Some) => musts.flatMap(({ id }, index) => (((some >> BigInt(index)) & 1n) === 1n ? [id] : []));
  const inOrder = (all: readonly Some[]) =>
    [...all].sort((a, b) => bitsIn(a).length - bitsIn(b).length || (a < b ? -1 : 1)).map(idsOf);
  // Whoever meets everything leaves nothing in conflict.
  return inConflict === 0n
    ? { sets: [], complete: whole, corrections: [] }
    : { sets: inOrder(sets), complete: whole && few, corrections: inOrder(corrections) };
}
