/** What is said of changes and ways out: whole sentences, and bounds told to the safe side. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { changesTold, sayChange, sayConflict, sayWay } from '../../src/reasons/say-ways-out.ts';
import { readerFor } from '../../src/reasons/asking-voice.ts';
import { namesIn, type Voice } from '../../src/reasons/say.ts';
import type { Shortlist } from '../../src/reasons/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { en } from '../../src/reasons/words/en.ts';
import { aMinute, anyAnswers, catalogueWithGaps, runs } from '../support/arbitraries.ts';
import { catalogueForTests, inches, lineUp } from '../support/catalogue-for-tests.ts';
import { everyWords } from '../support/languages.ts';
import { saying } from '../support/reckon.ts';

const voiceFor = (catalogue: CatalogueDocument, units: 'us' | 'metric', words = en): Voice => {
  const reader = readerFor(words, units, catalogue.dealer.locale, catalogue.dealer.currency);
  return { words, reader, nameOf: namesIn(catalogue, reader) };
};

const sentencesOf = (result: Shortlist, voice: Voice) => [
  ...result.changes.map((change) => sayChange(change, voice)),
  ...result.waysOut.flatMap((entry) => { const { way, hire } = sayWay(entry, result, voice); return [way, ...hire]; }),
  ...result.conflicts.sets.map((set) => sayConflict(set, voice)),
];
const hole = /undefined|NaN|Infinity|null|\[object| {2}|^\s*$|\s[.,]| [;:]|\(\s*\)|^\s|\s$/;

test('no change, way out or conflict is told with a hole in it, in either system of units, in any language', () => {
  let said = 0;
  fc.assert(fc.property(catalogueWithGaps, anyAnswers, fc.constantFrom('us', 'metric'), fc.constantFrom(...everyWords), (catalogue, answers, units, words) => {
    const sentences = sentencesOf(shortlist(catalogue, answers), voiceFor(catalogue, units, words));
    expect(sentences.filter((sentence) => hole.test(sentence))).toEqual([]);
    said += sentences.length;
  }), { ...runs(40), interruptAfterTimeLimit: aMinute / 2 });
  expect(said).toBeGreaterThan(10);
}, aMinute);

type Change = Shortlist['changes'][number];
const gate = (to: number): Change => ({ need: 'land.gate', stands: ['mid-deluxe'], asks: [], relaxed: { is: 'at-most', from: 1.6, to, unit: 'm' } });
const load = (to: number): Change => ({ need: 'lift-pallets.weight', stands: ['mid-deluxe'], asks: [], relaxed: { is: 'at-least', from: 500, to, unit: 'kg' } });
const told = (change: Change, units: 'us' | 'metric') => sayChange(change, voiceFor(catalogueForTests(), units)).replaceAll('\u00a0', ' ');

test('a gate is told to the inch or centimetre above, a load to ten pounds or five kilograms below', () => {
  expect(told(gate(1.729), 'us')).toContain('69 in');
  expect(told(gate(1.721), 'metric')).toContain('173 cm');
  expect(told(gate(1.73), 'metric'), 'what is round stays').toContain('173 cm');
  expect(told(load(362.8), 'us')).toContain('790 lb');
  expect(told(load(364.9), 'metric')).toContain('360 kg');
});

test('a need dropped is not told where moving its bound brings back as much', () => {
  const result = shortlist({ ...lineUp(), machines: lineUp().machines.filter(({ id }) => id === 'large-economy') }, saying({ land: { gate: inches(70) } }));
  expect(result.changes).toHaveLength(2);
  expect(changesTold(result).map(({ relaxed }) => relaxed !== undefined)).toEqual([true]);
});
