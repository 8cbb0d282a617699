import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aMinute, anyAnswers, anyCatalogue, runs } from '../support/arbitraries.ts';
import { catalogueForTests, lb, lineUp, soundUnit, usd, withLoader, withMachine, withUnits } from '../support/catalogue-for-tests.ts';
import { dropping } from '../support/dropping.ts';
import { mustDo, saying, verdicts } from '../support/reckon.ts';

const entries = (catalogue: CatalogueDocument, answers: AnswersDocument) => {
  const { shortlist: stands, askDealer } = shortlist(catalogue, answers);
  return [...stands, ...askDealer];
};
const entryOf = (machine: string, catalogue: CatalogueDocument, answers: AnswersDocument) => entries(catalogue, answers).find((each) => each.machine === machine)!;

test('whatever stands or is to be asked about has something for it, and something against it or unknown', () => {
  fc.assert(fc.property(anyAnswers, (answers) => {
    for (const { machine, reasons } of entries(catalogueForTests(), answers)) {
      expect(reasons.filter(({ kind }) => kind === 'for').length, `for ${machine}`).toBeGreaterThan(0);
      expect(reasons.filter(({ kind }) => kind === 'against' || kind === 'unknown').length, `against ${machine}`).toBeGreaterThan(0);
    }
  }), runs(80));
}, aMinute);

test('of a machine with gaps there is as much to tell', () => {
  fc.assert(fc.property(anyCatalogue, anyAnswers, (catalogue, answers) => {
    for (const { machine, reasons } of entries(catalogue, answers)) {
      expect(reasons.filter(({ kind }) => kind === 'for').length, `for ${machine}`).toBeGreaterThan(0);
      expect(reasons.filter(({ kind }) => kind === 'against' || kind === 'unknown').length, `against ${machine}`).toBeGreaterThan(0);
    }
  }), runs(80));
}, aMinute);

test.each([false, true])('a plain machine of unknown price has something for it, by a limit that is firm: %s', (firm) => {
  const plain = withMachine(lineUp(), 'wide-mid-standard', () => ({ typicalPrices: undefined }));
  const { reasons } = entryOf('wide-mid-standard', plain, saying({ budget: { limit: usd(20_000), firm } }));
  expect(reasons.filter(({ kind }) => kind === 'for').length).toBeGreaterThan(0);
});

test('whatever is to be asked about says because of which gate, and whatever is ruled out too', () => {
  fc.assert(fc.property(anyCatalogue, anyAnswers, (catalogue, answers) => {
    const { needs, shortlist: stands, askDealer, ruledOut } = shortlist(catalogue, answers);
    const gates = needs.flatMap(({ id, must, safety }) => (must || safety ? [id] : []));
    for (const { machine, because } of stands) expect(because, machine).toEqual([]);
    for (const { machine, because } of [...askDealer, ...ruledOut]) {
      expect(because.length, machine).toBeGreaterThan(0);
      expect(because.filter(({ need }) => !gates.includes(need)), machine).toEqual([]);
    }
    for (const { machine, because } of askDealer) for (const { missing = [] } of because) expect(missing.length, machine).toBeGreaterThan(0);
  }), runs(80));
}, aMinute);

test('a figure that fails its gate lies on the wrong side of what is wanted', () => {
  let seen = 0;
  fc.assert(fc.property(anyCatalogue, anyAnswers, (catalogue, answers) => {
    for (const { machine, because } of shortlist(catalogue, answers).ruledOut) {
      for (const { need, has, wants, bound } of because) {
        if (has === undefined || wants === undefined) continue;
        seen += 1;
        if (bound === 'at-least') expect(has, `${machine} ${need}`).toBeLessThan(wants);
        else expect(has, `${machine} ${need}`).toBeGreaterThan(wants);
      }
    }
  }), runs(80));
  expect(seen).toBeGreaterThan(100);
}, aMinute);

test('take away the only cause that is named, and the verdict turns', () => {
  let turned = 0;
  fc.assert(fc.property(anyCatalogue, anyAnswers, (catalogue, answers) => {
    for (const { machine, because } of shortlist(catalogue, answers).ruledOut) {
      const fewer = because.length === 1 ? dropping(answers, because[0]!.need) : undefined;
      if (!fewer) continue;
      expect(verdicts(shortlist(catalogue, fewer))[machine], `${machine} ${because[0]!.need}`).not.toBe('ruled-out');
      turned += 1;
    }
  }), runs(60));
  expect(turned).toBeGreaterThan(30);
}, aMinute);

test('take away both of two causes, and only then the verdict turns', () => {
  const answers = { ...mustDo({ task: 'lift-bales', weight: lb(800) }, { task: 'mow-lawn', deck: 'belly' }) };
  const causes = shortlist(lineUp(), answers).ruledOut.find(({ machine }) => machine === 'mid-economy')!.because.map(({ need }) => need);
  expect(causes).toHaveLength(2);
  for (const cause of causes) expect(verdicts(shortlist(lineUp(), dropping(answers, cause)!))['mid-economy']).toBe('ruled-out');
  expect(verdicts(shortlist(lineUp(), causes.reduce((fewer, cause) => dropping(fewer, cause)!, answers)))['mid-economy']).toBe('stands');
});

test('where the ROPS is the cause, a certified one turns the verdict', () => {
  const bare = withMachine(lineUp(), 'mid-deluxe', () => ({ rops: { kind: 'none' } }));
  expect(shortlist(bare, saying()).ruledOut).toMatchObject([{ machine: 'mid-deluxe', because: [{ need: 'operator.rops' }] }]);
  expect(verdicts(shortlist(lineUp(), saying()))['mid-deluxe']).toBe('stands');
});

test('the criterion said to help most does: without its weight the score falls by the most', () => {
  fc.assert(fc.property(anyAnswers, (answers) => {
    for (const { reasons, contributions, machine } of entries(lineUp(), answers)) {
      const strong = reasons.find(({ id }) => /^criterion\..*\.strong$/.test(id));
      const most = Math.max(...Object.values(contributions).map(({ points }) => points));
      if (strong) expect(contributions[strong.criterion!]!.points, machine).toBeCloseTo(most, 5);
    }
  }), runs(40));
}, aMinute);

test('no criterion is said both to help a machine most and to cost it most', () => {
  fc.assert(fc.property(anyAnswers, (answers) => {
    for (const { reasons, machine } of entries(catalogueForTests(), answers)) {
      const said = reasons.flatMap(({ criterion }) => criterion ?? []);
      expect(new Set(said).size, `${machine} ${said.join()}`).toBe(said.length);
    }
  }), runs(40));
}, aMinute);

test('the decisive reasons come first, and open safety before all', () => {
  fc.assert(fc.property(anyCatalogue, anyAnswers, (catalogue, answers) => {
    const { needs, askDealer } = shortlist(catalogue, answers);
    const safety = new Set(needs.flatMap(({ id, safety: is }) => (is ? [id] : [])));
    for (const { reasons, because } of askDealer) {
      reasons.slice(1).forEach(({ weight }, index) => expect(weight).toBeLessThanOrEqual(reasons[index]!.weight));
      if (because.some(({ need }) => safety.has(need))) expect(safety.has(reasons[0]!.need ?? '')).toBe(true);
    }
  }), runs(80));
}, aMinute);

const wish = saying({ tasks: [{ task: 'lift-bales', weight: lb(300), must: false }] });

test('a machine without a loader isn’t praised for how it stands with a bale on it', () => {
  const without = withMachine(lineUp(), 'mid-deluxe', () => ({ loaders: [] }));
  const forIt = (catalogue: CatalogueDocument) => entryOf('mid-deluxe', catalogue, wish).reasons.filter(({ kind }) => kind === 'for').map(({ id }) => id);
  expect(forIt(lineUp()), 'control: with a loader').toContain('loader.rear-axle.met');
  expect(forIt(without)).not.toContain('loader.rear-axle.met');
});

test('with one rating alone the lift is said to be estimated', () => {
  const one = withLoader(lineUp(), 'mid-deluxe', ({ ratings }) => ({ ratings: ratings.slice(0, 1) }));
  const unknowns = (catalogue: CatalogueDocument) => entryOf('mid-deluxe', catalogue, wish).reasons.filter(({ kind }) => kind === 'unknown').map(({ id }) => id);
  expect(unknowns(one)).toContain('figure.estimated');
  expect(unknowns(lineUp()), 'control: with both').not.toContain('figure.estimated');
});

test.each([
  ['lienOpen', true, 'unit.lien-open', 'against'], ['imported', true, 'unit.imported', 'caution'],
  ['ptoShield', false, 'unit.pto-shield-missing', 'caution'], ['meterVerified', false, 'unit.meter-unverified', 'unknown'], ['status', 'held', 'unit.held', 'against'],
  ['serviceRecord', true, 'unit.service-record', 'for'], ['serviceRecord', undefined, 'unit.service-record-unknown', 'unknown'],
] as const)('a unit of which %s is %s says so', (field, value, id, kind) => {
  const { serviceRecord: _record, ...plain } = soundUnit('the-unit', 'mid-deluxe');
  const told = (more: object) => entries(withUnits(lineUp(), { ...plain, ...more }), saying()).flatMap(({ units }) => units).flatMap(({ reasons }) => reasons);
  expect(told({ serviceRecord: false, ...(value === undefined ? { serviceRecord: undefined } : { [field]: value }) })).toContainEqual(expect.objectContaining({ id, kind }));
  expect(told({ serviceRecord: false }).map((reason) => reason.id), 'control').not.toContain(id);
});

test('a machine that goes by its typical price says so, one that goes by a unit doesn’t', () => {
  const ids = (catalogue: CatalogueDocument) => entryOf('mid-deluxe', catalogue, saying()).reasons.map(({ id }) => id);
  expect(ids(lineUp())).toContain('lot.typical-price');
  expect(ids(withUnits(lineUp(), soundUnit('the-unit', 'mid-deluxe', { price: usd(22_000) })))).not.toContain('lot.typical-price');
});
