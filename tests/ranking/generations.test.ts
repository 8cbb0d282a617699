import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answersOf } from '../../src/answers/answers.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import type { CatalogueDocument, MachineDocument, UnitDocument } from '../../src/catalogue/schema.ts';
import { considered } from '../../src/lot/considered.ts';
import { compare } from '../../src/reasons/compare.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aMinute, anyAnswers, runs } from '../support/arbitraries.ts';
import { lb, inches, soundUnit } from '../support/catalogue-for-tests.ts';
import { mustDo, saying, unitOf, unitsIn } from '../support/reckon.ts';
import { onTheEdge, twoGenerations } from '../support/two-generations.ts';

// Common practice, no source: a maker changes a tractor at a serial number, often within a model year, and which
// attachments it takes, a backhoe first of all, goes by the number on its plate and not by when it was sold.
const noBackhoe: Partial<MachineDocument> = { backhoe: { availability: 'none' } };
const digs = mustDo({ task: 'dig', depth: inches(60) });

test.each([
  ['sold in the year the later one came', onTheEdge(), 'ask'],
  ['sold a year after', onTheEdge({ year: 2016 }), 'ask'],
  ['of a year nobody said the kind of', onTheEdge({ yearKind: undefined! }), 'ask'],
  ['the same, its serial number read', onTheEdge({ yearKind: 'serial' }), 'stands'],
  ['of the later one’s own first model year', onTheEdge({ yearKind: 'model' }), 'stands'],
  ['sold three years after', onTheEdge({ year: 2018 }), 'stands'],
] as const)('the earlier generation takes no backhoe, and a unit %s must have one', (_, unit, verdict) => {
  const found = unitOf(JSON.parse(JSON.stringify(unit)) as UnitDocument, digs, twoGenerations(noBackhoe));
  expect(found.verdict).toBe(verdict);
  expect(found.because).toEqual(verdict === 'ask' ? [expect.objectContaining({ need: 'dig.backhoe', missing: ['units.generation'] })] : []);
});

test('where both generations do the job the edge is told and asks for nothing; where neither does it rules out', () => {
  const alike = unitOf(onTheEdge(), digs, twoGenerations({}));
  expect([alike.verdict, alike.reasons.some(({ id }) => id === 'unit.generation-edge')]).toEqual(['stands', true]);
  expect(unitOf(onTheEdge(), mustDo({ task: 'dig', depth: inches(400) }), twoGenerations({})).verdict).toBe('ruled-out');
});

test('what the row it is listed in can’t do, the other may: then it is asked about and not ruled out', () => {
  const earlier = onTheEdge({ machine: 'mid-deluxe-earlier', year: 2014 });
  expect(unitOf(earlier, digs, twoGenerations(noBackhoe)).verdict).toBe('ask');
  expect(unitOf({ ...earlier, yearKind: 'model' }, digs, twoGenerations(noBackhoe)).verdict, 'control: by its model year').toBe('ruled-out');
});

// Common practice, no source: the change comes within a model year, so that year by itself settles nothing.
test('in a model year that both generations share only the serial number settles it', () => {
  const catalogue = twoGenerations(noBackhoe, { to: 2015 });
  expect(readCatalogue(catalogue).faults).toEqual([]);
  expect(['model', 'serial'].map((yearKind) => unitOf(onTheEdge({ yearKind: yearKind as 'model' }), digs, catalogue).verdict)).toEqual(['ask', 'stands']);
  expect(unitOf(onTheEdge({ year: 2016, yearKind: 'model' }), digs, catalogue).verdict, 'control: a year later').toBe('stands');
});

test('a lift that the earlier one hasn’t got is asked about; which loader is on it need not be of its row', () => {
  const catalogue = twoGenerations({ hitch: { category: '1', lift610: lb(900) } });
  const carries = mustDo({ task: 'carry-implement', weight: lb(1200), distance: inches(24) });
  const unit = onTheEdge({ loader: catalogue.machines.find(({ id }) => id === 'mid-deluxe')!.loaders![0]!.id });
  const { verdict, because } = unitOf(unit, carries, catalogue);
  expect([verdict, because.map(({ need }) => need)]).toEqual(['ask', ['carry-implement.lift']]);
});

test('a wish the generations differ in is unknown, and the unit stands', () => {
  const wished = saying({ tasks: [{ task: 'dig', depth: inches(60) }] });
  const { verdict, reasons } = unitOf(onTheEdge(), wished, twoGenerations(noBackhoe));
  expect([verdict, reasons.find(({ need }) => need === 'dig.backhoe')?.missing]).toEqual(['stands', ['units.generation']]);
});

test('a price limit that one generation keeps and the other breaks with what must be added', () => {
  const dear: Partial<MachineDocument> = { backhoe: { availability: 'field-kit', price: { value: 30_000, currency: 'USD' }, labourHours: 6, digDepth: inches(90), mass: lb(900) } };
  const answers: AnswersDocument = { ...digs, budget: { limit: { value: 40_000, currency: 'USD' }, firm: true } };
  expect(unitOf(onTheEdge(), answers, twoGenerations(dear)).because.map(({ need }) => need)).toEqual(['budget.limit']);
});

test('the other units of its machine, and the machine itself, are as they are without it', () => {
  const other = soundUnit('another', 'mid-deluxe', { year: 2020, transmission: 'hydrostatic' });
  const entryOf = (...units: UnitDocument[]) => unitsIn(shortlist(twoGenerations(noBackhoe, { units }), digs)).find(({ unit }) => unit === 'another');
  expect(entryOf(other, onTheEdge())).toEqual(entryOf(other));
  const alone = shortlist(twoGenerations(noBackhoe, { units: [onTheEdge()] }), digs);
  expect(alone.shortlist.map(({ machine }) => machine), 'a machine is judged in general').toContain('mid-deluxe');
});

test('compared with another, a unit is judged as it is in the shortlist', () => {
  const catalogue = twoGenerations(noBackhoe, { units: [onTheEdge(), soundUnit('another', 'mid-deluxe', { year: 2020, transmission: 'hydrostatic' })] });
  const { gates, above } = compare(catalogue, digs, 'on-the-edge', 'another');
  expect([above, gates.map(({ need, favours, of }) => [need, favours, of.map(({ outcome }) => outcome)])]).toEqual(['another', [['dig.backhoe', 'another', ['unknown', 'met']]]]);
});

/** Earlier generations that differ in what many buyers ask for. */
const earlierOnes: readonly Partial<MachineDocument>[] = [
  noBackhoe, { hitch: { category: '1', lift610: lb(700) } }, { mass: lb(5500) }, { loaders: [] }, { engine: {} },
  { decks: [], midPto: { availability: 'none' } }, { centreOfMassHeight: undefined! }, { cabs: [] }, {},
];

const judgedOf = (catalogue: CatalogueDocument, answers: AnswersDocument, machine: string, more: Partial<UnitDocument>) => {
  const inSi = catalogueOf(JSON.parse(JSON.stringify({ ...catalogue, units: [onTheEdge({ machine, ...more })] })) as CatalogueDocument);
  return considered(inSi, answersOf(answers)).evaluationOf({ machine: inSi.machines.find(({ id }) => id === machine)!, unit: inSi.units![0]! });
};

test('whatever is asked: each need comes out as both generations, read off the plate, have it; else unknown', () => {
  let differ = 0;
  fc.assert(fc.property(anyAnswers, fc.constantFrom(...earlierOnes), (answers, earlier) => {
    const catalogue = twoGenerations(earlier);
    const open = judgedOf(catalogue, answers, 'mid-deluxe', {});
    const [later, before] = [judgedOf(catalogue, answers, 'mid-deluxe', { yearKind: 'serial' }), judgedOf(catalogue, answers, 'mid-deluxe-earlier', { year: 2014, yearKind: 'serial' })];
    const leftOut = [...(later.build.leftOut ?? []), ...(before.build.leftOut ?? [])];
    open.judged.forEach(({ need, verdict }, index) => {
      const [a, b] = [later.judged[index]!.verdict.outcome, before.judged[index]!.verdict.outcome];
      if (leftOut.includes(need.id)) return;
      if (a !== b) differ += 1;
      expect(verdict.outcome, need.id).toBe(a === b ? a : 'unknown');
    });
    const musts = open.judged.filter(({ need }) => need.must || need.safety);
    expect(open.standing).toBe(
      musts.some(({ need, verdict }) => need.must && verdict.outcome === 'failed') ? 'ruled-out' : musts.some(({ verdict }) => verdict.outcome === 'unknown') ? 'ask' : 'stands');
  }), runs(120));
  expect(differ, 'generations that never differ test nothing').toBeGreaterThan(20);
}, aMinute);

test('whatever was asked before, a lot with units on an edge gives the very bytes it gives without', () => {
  const lot = fc.record({ earlier: fc.constantFrom(...earlierOnes), units: fc.uniqueArray(fc.record({
    id: fc.constantFrom('a', 'b', 'c', 'd'), year: fc.integer({ min: 2014, max: 2017 }), yearKind: fc.constantFrom('sale', 'serial', 'model', 'build'),
    machine: fc.constantFrom('mid-deluxe', 'mid-deluxe-earlier'), price: fc.integer({ min: 8000, max: 30_000 }).map((value) => ({ value, currency: 'USD' })),
  }), { selector: ({ id }) => id, maxLength: 4 }) });
  fc.assert(fc.property(lot, fc.array(anyAnswers, { minLength: 2, maxLength: 3 }), ({ earlier, units }, several) => {
    const document = JSON.parse(JSON.stringify(twoGenerations(earlier, { to: 2015, units: units.map((more) => onTheEdge(more as Partial<UnitDocument>)) }))) as CatalogueDocument;
    const catalogue = catalogueOf(document);
    for (const answers of several) expect(JSON.stringify(shortlist(document, answers, [], catalogue)) === JSON.stringify(shortlist(document, answers))).toBe(true);
  }), runs(25));
}, aMinute);
