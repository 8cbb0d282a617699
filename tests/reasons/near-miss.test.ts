/** A bound that is no must and is missed by a little is marked as a near miss, and said to be one. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { readerFor } from '../../src/reasons/asking-voice.ts';
import { namesIn, sayReason } from '../../src/reasons/say.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aMinute, anyAnswers, runs } from '../support/arbitraries.ts';
import { catalogueForTests, inches, lineUp, soundUnit, usd, withLoader, withUnits } from '../support/catalogue-for-tests.ts';
import { everyWords } from '../support/languages.ts';
import { saying } from '../support/reckon.ts';

const only = (machine: string): CatalogueDocument => ({ ...lineUp(), machines: lineUp().machines.filter(({ id }) => id === machine) });

const reasonOn = (need: string, answers: AnswersDocument, catalogue: CatalogueDocument) =>
  shortlist(catalogue, answers).shortlist[0]!.reasons.find((reason) => reason.need === need && reason.id.endsWith('.failed'));

/** The machine as one unit at a price, for a buyer whose limit isn't firm. */
const priced = (price: number, firm = false) =>
  reasonOn('budget.limit', saying({ budget: { limit: usd(20_000), firm } }), withUnits(only('mid-deluxe'), soundUnit('one', 'mid-deluxe', { price: usd(price) })));

test('a price a tenth over a limit that isn’t firm is a near miss, and a dollar more is none', () => {
  expect(priced(22_000)!.about).toMatchObject({ near: 'near-miss.share' });
  expect(priced(22_001)!.about?.near).toBeUndefined();
  expect(priced(20_000), 'control: within the limit nothing is missed').toBeUndefined();
});

test('a wish for a height missed by a little is near, a must is never', () => {
  const wish = (height: number, must = false) => reasonOn('lift-pallets.height', saying({ tasks: [{ task: 'lift-pallets', height: inches(height), must }] }),
    withLoader(only('large-economy'), 'large-economy', () => ({ fullHeight: inches(99) })));
  expect(wish(110)!.about).toMatchObject({ near: 'near-miss.share', task: 'lift-pallets' });
  expect(wish(111)!.about?.near).toBeUndefined();
  const must = shortlist(withLoader(only('large-economy'), 'large-economy', () => ({ fullHeight: inches(99) })), saying({ tasks: [{ task: 'lift-pallets', height: inches(110), must: true }] }));
  expect(must.shortlist).toEqual([]);
});

test('a dealer’s own share counts', () => {
  const catalogue = { ...withUnits(only('mid-deluxe'), soundUnit('one', 'mid-deluxe', { price: usd(22_000) })), rules: { 'near-miss.share': 0.05 } };
  expect(reasonOn('budget.limit', saying({ budget: { limit: usd(20_000) } }), catalogue)!.about?.near).toBeUndefined();
});

test('near is said in words, in each language', () => {
  for (const words of everyWords) {
    const voice = { words, reader: readerFor(words, 'us', 'en-US', 'USD'), nameOf: namesIn(catalogueForTests(), readerFor(words, 'us', 'en-US', 'USD')) };
    const near = priced(22_000)!;
    const { near: _near, ...about } = near.about!;
    expect(sayReason(near, voice)).not.toBe(sayReason({ ...near, about }, voice));
  }
});

test('only a machine that stands misses nearly, never by more than the share, and never a must or safety', () => {
  let checked = 0;
  fc.assert(fc.property(anyAnswers, fc.integer({ min: 10_000, max: 26_000 }), (said, limit) => {
    const answers: AnswersDocument = { ...said, ...(said.tasks && { tasks: said.tasks.map((task) => ({ ...task, must: false })) }), budget: { limit: usd(limit), firm: false } };
    const result = shortlist(catalogueForTests(), answers);
    const needs = new Map(result.needs.map((need) => [need.id, need]));
    const units = [...result.shortlist, ...result.askDealer, ...result.ruledOut].flatMap((entry) => entry.units);
    const told = [
      ...result.shortlist.map(({ reasons }) => ({ verdict: 'stands', reasons })), ...result.askDealer.map(({ reasons }) => ({ verdict: 'ask', reasons })), ...units,
    ];
    for (const { verdict, reasons } of told) {
      for (const { need, figures, about, kind } of reasons.filter((reason) => reason.about?.near)) {
        expect([verdict, kind, about!.near]).toEqual(['stands', 'against', 'near-miss.share']);
        expect(needs.get(need!)).toMatchObject({ must: false, safety: false });
        expect(Math.abs(figures.has!.value - figures.wants!.value) / figures.wants!.value).toBeLessThanOrEqual(0.1 + 1e-9);
        checked += 1;
      }
    }
  }), runs(60));
  expect(checked).toBeGreaterThan(3);
}, aMinute);
