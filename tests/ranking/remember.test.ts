import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Machine, Unit } from '../../src/catalogue/catalogue.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import type { Build } from '../../src/ranking/build.ts';
import { emptyMemory, remembered } from '../../src/ranking/remember.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aMinute, anyAnswers, anyCatalogue, runs } from '../support/arbitraries.ts';

const machine = { id: 'any' } as Machine;
const withUnit = (unit: Partial<Unit>): Build => ({ machine, unit: unit as Unit });

/** A reckoning that counts how often it is made. */
function counted<T>(reckon: (build: Build) => T) {
  const memory = emptyMemory<T>({ kept: 0 });
  let times = 0;
  const of = (build: Build) => remembered(memory, build, (read) => {
    times++;
    return reckon(read);
  });
  return { of, times: () => times };
}

test('what wasn’t read doesn’t matter; what was read does, at any depth', () => {
  const { of, times } = counted(({ unit }) => unit?.fitted?.loader ?? 'unsaid');
  expect([
    of(withUnit({ id: 'a', fitted: { loader: true } })), of(withUnit({ id: 'b', fitted: { loader: true, cab: true } })), of(withUnit({ fitted: { loader: false } })),
    of(withUnit({ fitted: {} })), of(withUnit({})), of({ machine }),
  ]).toEqual([true, true, false, 'unsaid', 'unsaid', 'unsaid']);
  // The second reads as the first; each of the others differs in something that is read.
  expect(times()).toBe(5);
  of(withUnit({ fitted: { loader: false, deck: true } }));
  expect(times()).toBe(5);
});

test('asking which things there are tells more of them from fewer', () => {
  const { of, times } = counted(({ unit }) => Object.keys({ ...unit?.fitted }).length);
  expect([of(withUnit({ fitted: {} })), of(withUnit({ fitted: { cab: true } })), of(withUnit({ fitted: { cab: true, deck: true } })), of(withUnit({ fitted: { cab: true } }))]).toEqual([0, 1, 2, 1]);
  expect(times()).toBe(3);
});

test('lists are told apart by what is in them', () => {
  const { of, times } = counted(({ unit }) => unit?.attachments?.includes('forks') ?? false);
  expect([of(withUnit({ attachments: ['forks'] })), of(withUnit({ attachments: ['forks'] })), of(withUnit({ attachments: ['spear'] }))]).toEqual([true, true, false]);
  expect(times()).toBe(2);
});

test('one reckoning within another: what the inner one remembers, the outer one has read all the same', () => {
  const inner = counted(({ unit }) => unit?.seatBelt === true);
  const outer = counted((read) => (inner.of(read) ? 'belted' : 'not belted'));
  expect([outer.of(withUnit({ seatBelt: true })), outer.of(withUnit({ seatBelt: false, id: 'b' })), outer.of(withUnit({ seatBelt: true, id: 'c' }))]).toEqual(['belted', 'not belted', 'belted']);
  expect(inner.times()).toBe(2);
  // The inner one is known by now; another outer one must still see what it hangs on.
  const other = counted((read) => inner.of(read));
  expect([other.of(withUnit({ seatBelt: true })), other.of(withUnit({ seatBelt: false }))]).toEqual([true, false]);
});

test('whatever reads whatever: from memory or not, the result is the same', () => {
  const units = fc.record({
    id: fc.constantFrom('a', 'b'), loader: fc.constantFrom('x', 'y', undefined), seatBelt: fc.option(fc.boolean(), { nil: undefined }),
    fitted: fc.option(fc.record({ loader: fc.boolean(), cab: fc.boolean() }, { requiredKeys: [] }), { nil: undefined }),
    tyres: fc.option(fc.record({ type: fc.constantFrom('turf', 'industrial') }, { requiredKeys: [] }), { nil: undefined }),
  }, { requiredKeys: [] }) as fc.Arbitrary<Partial<Unit>>;
  // What is read next hangs on what was read before, as it does in a judge.
  const reckon = ({ unit, tools }: Build) => (unit?.fitted?.loader ? [unit.loader, unit.tyres?.type] : unit?.seatBelt === undefined ? Object.keys({ ...tools }) : [unit.fitted?.cab, { ...unit.tyres }]);
  fc.assert(fc.property(fc.array(units, { minLength: 1, maxLength: 30 }), (all) => {
    const { of } = counted(reckon);
    for (const unit of all) expect(of(withUnit(unit))).toEqual(reckon(withUnit(unit)));
  }), runs(300));
});

test('whatever was asked before of a catalogue, a shortlist has the very bytes it has without', () => {
  fc.assert(fc.property(anyCatalogue, fc.array(anyAnswers, { minLength: 2, maxLength: 4 }), (document, several) => {
    const catalogue = catalogueOf(document);
    for (const answers of several) {
      expect(JSON.stringify(shortlist(document, answers, [], catalogue)) === JSON.stringify(shortlist(document, answers))).toBe(true);
    }
  }), runs(25));
}, aMinute);
