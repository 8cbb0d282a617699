/** Every language of the lot says every text, none of them in English, and none with a hole in it. */
import { describe, expect, test } from 'vitest';
import { considered } from '../../src/lot/considered.ts';
import { askingContext } from '../../src/lot/asking/context.ts';
import { sayAsking } from '../../src/lot/asking/say.ts';
import { inspectionOf } from '../../src/lot/inspection/inspection.ts';
import { sayInspection } from '../../src/lot/inspection/say.ts';
import { compareOwning } from '../../src/lot/owning/compare.ts';
import { chartWordsOf, sayComparison } from '../../src/lot/owning/say.ts';
import { quotation } from '../../src/lot/quotation/quotation.ts';
import { sayQuotation } from '../../src/lot/quotation/say.ts';
import { de } from '../../src/lot/words/de.ts';
import { en } from '../../src/lot/words/en.ts';
import { es } from '../../src/lot/words/es.ts';
import { fr } from '../../src/lot/words/fr.ts';
import type { LotWords } from '../../src/lot/words/words.ts';
import { everyLanguage } from '../support/languages.ts';
import { before, candidateIn, dealing, lifting } from './buyers.ts';
import { metres } from './metres.ts';
import { voiceOf } from './voice.ts';

const lots: Record<string, LotWords> = { en, de, es, fr };
const holes = /undefined|NaN|Infinity|null|\[object|\$\{|\{ | {2}|^\s*$|\s[.,]| [;:]|\(\s*\)|^\s|\s$/;

/** Every text of a value: a function is asked with words in its holes, as many as it takes, and with none. */
function* textsOf(value: unknown, at = ''): Generator<[string, string]> {
  if (typeof value === 'string') yield [at, value];
  else if (typeof value === 'function') {
    const said = new Proxy({}, { get: () => 'XX' });
    const isWhy = at.includes('.whys.');
    const call = value as (...given: unknown[]) => string;
    yield [at, isWhy ? call(said) : call(...Array.from({ length: 6 }, () => 'XX'))];
  } else if (typeof value === 'object' && value !== null) for (const [key, inner] of Object.entries(value)) yield* textsOf(inner, `${at}.${key}`);
}

describe.each(Object.entries(lots))('%s', (tag, lot) => {
  const own = [...textsOf(lot)];
  test('has no hole in any text', () => {
    expect(own.length).toBeGreaterThan(180);
    expect(own.filter(([, text]) => holes.test(text))).toEqual([]);
  });

  test('takes up all it is given', () => {
    const count = (text: string) => text.split('XX').length - 1;
    const english = new Map(textsOf(en));
    // A language may say a thing twice; it never leaves one out.
    expect(own.filter(([at, text]) => count(text) < Math.min(1, count(english.get(at)!)))).toEqual([]);
  });

  test('tells a buyer the whole of it', () => {
    const words = everyLanguage.find((each) => each.tag === tag)!.words;
    const document = dealing();
    const { catalogue, answers, evaluationOf, world, needs } = before(document, lifting(700));
    const speaking = { voice: voiceOf(document, words, `${tag}-${{ en: 'US', de: 'DE', es: 'MX', fr: 'FR' }[tag]}`), lot };
    const candidates = ['old-faithful', 'by-the-gate'].map((unit) => candidateIn(catalogue, unit));
    const comparison = compareOwning({ catalogue, answers, candidates, finance: document.dealer.finance![0]! });
    const said = [
      sayComparison(comparison, speaking), chartWordsOf(comparison, speaking).description, sayAsking(askingContext(catalogue, candidates[0]!.unit!), speaking),
      sayQuotation(quotation({ evaluation: evaluationOf(candidates[0]!), world, asOf: document.asOf, delivered: true, distance: metres('12 mi'), tradeIn: { kind: 'x' } }), speaking),
      sayInspection(inspectionOf(candidates[0]!.unit!, candidates[0]!.machine, needs, considered(catalogue, answers).world), speaking),
    ];
    const texts = [...textsOf(said)];
    expect(texts.length).toBeGreaterThan(150);
    expect(texts.filter(([at, text]) => !(text === '' && at.endsWith('.amount')) && holes.test(text))).toEqual([]);
  });
});

test.each(Object.entries(lots).filter(([tag]) => tag !== 'en'))('%s leaves nothing in English', (_tag, lot) => {
  const english = new Map(textsOf(en));
  const alike = [...textsOf(lot)].filter(([at, text]) => text === english.get(at) && /[a-z]{4}/.test(text)).map(([at]) => at);
  expect(alike).toEqual(alike.filter((at) => at.endsWith('.total')));
});

test('control: a hole would be found', () => expect(['a  b', 'a .', 'undefined', ''].every((text) => holes.test(text))).toBe(true));

// The high marks of French stand behind a no-break space.
test('French sets its high marks as French does', () => {
  expect([...textsOf(fr)].filter(([, text]) => /[^\u00a0\u202f0-9][;!?]| :/.test(text) || /[^\u00a0\s0-9X]:/.test(text)).map(([at, text]) => `${at}: ${text}`)).toEqual([]);
});
