import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { expect, test } from 'vitest';
import { sections } from './english-texts.ts';

const segmenter = new Intl.Segmenter('en', { granularity: 'sentence' });
const allSentencesOf = (texts: readonly string[]) => [...new Set(texts.flatMap((text) => [...segmenter.segment(text)].map(({ segment }) => segment.trim())))].filter((sentence) => wordsOf(sentence).length > 0);
/** The running text; labels and options, which would make it look easier, count only where there is nothing else. */
function sentencesOf(texts: readonly string[]) {
  const all = allSentencesOf(texts);
  const running = all.filter((sentence) => /[.?!][”’)]?$/.test(sentence));
  return running.length > 0 ? running : all;
}
const wordsOf = (sentence: string) => sentence.match(/[\p{L}\p{N}$][\p{L}\p{N}.,’'-]*/gu) ?? [];

/** Said letter by letter; ROPS is said as a word. A number counts as one syllable, as is the custom. */
const letters = /^(?:PTO|GVWR|APR|RF1|RF2)$/;
const syllablesOf = (word: string) => Math.max(1, word.split('-').reduce((sum, part) => sum + (letters.test(part) ? part.length : syllable(part)), 0));

/** Flesch-Kincaid: the school grade a text asks for, by the length of its sentences and words. */
function gradeOf(sentences: readonly string[]): number {
  const words = sentences.flatMap(wordsOf);
  return fleschKincaid({ sentence: sentences.length, word: words.length, syllable: words.reduce((sum, word) => sum + syllablesOf(word), 0) });
}

const hardest = 8;
const hardestSentence = 12;
/** Below this length the formula speaks of single words and not of a sentence. */
const fewWords = 12;
const tooHard = (texts: readonly string[]) => allSentencesOf(texts).filter((sentence) => wordsOf(sentence).length >= fewWords && gradeOf([sentence]) > hardestSentence);

test.each(sections)('$section: reads at or below grade 8', ({ section, texts }) => {
  const grade = gradeOf(sentencesOf(texts));
  console.log(`${section}: grade ${grade.toFixed(1)}, ${sentencesOf(texts).length} sentences`);
  expect(grade).toBeLessThanOrEqual(hardest);
});

test.each(sections)('$section: no sentence is hard by itself', ({ texts }) => {
  expect(tooHard(texts)).toEqual([]);
});

test('no sample is missing', () => {
  expect(sections.filter(({ texts }) => texts.length === 0)).toEqual([]);
  expect(sections.flatMap(({ texts }) => texts).filter((text) => /undefined|NaN|\[object/.test(text))).toEqual([]);
});

const insurance = [
  'Notwithstanding any provision to the contrary contained herein, indemnification shall be excluded where the policyholder has negligently omitted to notify the insurer of material alterations to the insured equipment.',
  'Consequential losses attributable to unauthorised modification of protective installations are not recoverable under this section.',
];
test('control: the prose of a policy is found hard, as a whole and by the sentence', () => {
  expect(gradeOf(sentencesOf(insurance))).toBeGreaterThan(hardest);
  expect(tooHard(insurance)).toEqual(insurance);
});

test('control: plain words in short sentences are not', () => {
  const plain = ['The bale is too heavy for this loader.', 'Ask the dealer what it can lift, and how high it can go with a load like that.'];
  expect(gradeOf(sentencesOf(plain))).toBeLessThan(hardest);
  expect(tooHard(plain)).toEqual([]);
});
