import type { Need } from '../needs/need.ts';
import { failsAlone, helps, mayBeHelped } from './alone.ts';
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

/** What is asked: the musts, of which some are, and the wishes beside them, which are there in any case. */
interface Asked {
  musts: readonly Need[];
  wishes: readonly Need[];
  world: World;
}

/** What of the musts a candidate fails alone, and what of the others together. */
function failingOf(candidate: Candidate, { musts, wishes, world }: Asked) {
  const of = (some: Some) => musts.filter((_need, index) => ((some >> BigInt(index)) & 1n) === 1n);
  const gatesIn = (needs: readonly Need[]) => evaluate(candidate, [...needs, ...wishes], world).judged.filter(isFailedGate).map(({ need }) => need);
  const helpers = musts.filter(helps);
  const fails = (some: Some): boolean => {
    const needs = of(some);
    if (needs.some((need) => failsAlone(candidate, need, world))) return true;
    const gates = gatesIn(needs);
    if (gates.length === 0) return false;
    const more = helpers.filter((need) => !needs.includes(need));
    // What is put on for another need may help, though that need isn't among these.
    return more.length === 0 || !gates.some(mayBeHelped) || gatesIn([...needs, ...more]).some((need) => needs.includes(need));
  };
  const alone = union(musts.map((need, index) => (failsAlone(candidate, need, world) ? 1n << BigInt(index) : 0n)));
  return {
    alone,
    /** The first of what is asked that it fails together; undefined where it meets all of it. */
    together: (asked: Some) => (gatesIn(of(asked)).length === 0 ? undefined : leastFailing(0n, false, bitsIn(asked), fails)),
  };
}

/** Sets visited for one candidate, at the most: every part of the needs whose conflicts are found in full. */
const mostVisits = (world: World) => 1 << world.book.value('relax.conflicts');

/**
 * The largest sets of needs that one of the candidates meets, each and no other: by Reiter's tree of what to
 * give up, candidate by candidate, cut where another has met as much.
 */
function largestMet(candidates: readonly Candidate[], asked: Asked): { met: Some[]; whole: boolean } {
  const everything = (1n << BigInt(asked.musts.length)) - 1n;
  let met: Some[] = [];
  let whole = true;
  // Those that fail least by themselves first: the others seldom meet anything that these don't.
  const all = candidates.map((candidate) => failingOf(candidate, asked)).sort((a, b) => bitsIn(a.alone).length - bitsIn(b.alone).length);
  for (const { alone, together } of all) {
    const seen = new Set<Some>();
    const visit = (some: Some) => {
      if (seen.has(some) || met.some((each) => isWithin(some, each))) return;
      if (seen.size >= mostVisits(asked.world)) {
        whole = false;
        return;
      }
      seen.add(some);
      const conflict = together(some);
      if (conflict === undefined) met = [...met.filter((each) => !isWithin(each, some)), some];
      else for (const bit of bitsIn(conflict)) visit(some & ~bit);
    };
    visit(everything & ~alone);
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
 * musts can conflict, each as it is judged among the wishes: a wish itself is left undone.
 */
export function conflictsOf(candidates: readonly Candidate[], needs: readonly Need[], world: World): Conflicts {
  const musts = needs.filter(({ must }) => must);
  const { met, whole } = largestMet(candidates, { musts, wishes: needs.filter(({ must }) => !must), world });
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
