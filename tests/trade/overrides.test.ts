import { expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { minimalCatalogue, withAt } from '../support/minimal-catalogue.ts';

const lawn: AnswersDocument = {
  format: 'acre-to-axle/answers/1', land: { mown: { value: 5, unit: 'acre' } }, tasks: [{ task: 'mow-lawn', must: true, hours: { value: 3, unit: 'h' } }],
};
const fitted = { availability: 'fitted' };
const mower = withAt(
  withAt(minimalCatalogue(), ['machines', 0, 'decks'], [{ id: 'deck', ...fitted, width: { value: 60, unit: 'in' } }]),
  ['machines', 0, 'midPto'], fitted,
);
const reckonedWith = (speed: number | { value: number; unit: string }) =>
  shortlist(withAt(mower, ['rules'], { 'mow.speed': speed }) as CatalogueDocument, lawn);
/** The figures of a shortlist, rounded so that the unit a figure was said in makes no difference. */
const inRoundFigures = (document: unknown): unknown =>
  JSON.parse(JSON.stringify(document, (_key, value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(9)) : value)));

test('a dealer who says 5 mph, or as much in km/h, is understood as one who says 5 of the rule\'s own unit', () => {
  const bare = inRoundFigures(reckonedWith(5));
  expect(inRoundFigures(reckonedWith({ value: 5, unit: 'mph' }))).toEqual(bare);
  expect(inRoundFigures(reckonedWith({ value: 8.04672, unit: 'km/h' }))).toEqual(bare);
});

test('control: a dealer who says 3 gets another reckoning', () => {
  expect(inRoundFigures(reckonedWith(3))).not.toEqual(inRoundFigures(reckonedWith(5)));
});
