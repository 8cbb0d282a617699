import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayIn } from '../../src/units/day.ts';
import { shorter } from '../../src/handoff/letter/extent.ts';
import { letterOf } from '../../src/handoff/letter/letter.ts';
import { readHandedOn } from '../../src/handoff/link.ts';
import { sayRefusal, type Refusal } from '../../src/handoff/refusal.ts';
import { sayPackagePrice } from '../../src/reasons/say-package-price.ts';
import { sayCaution, sayReason } from '../../src/reasons/say.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { runs } from '../support/arbitraries.ts';
import { lineUp } from '../support/catalogue-for-tests.ts';
import { everyLanguage } from '../support/languages.ts';
import { mustDo } from '../support/reckon.ts';
import { buyers } from './buyers.ts';
import { demo, ownWords, tellingOf } from './telling.ts';

const horses = buyers.find(({ name }) => name === 'horses')!.answers;
const ofHorses = shortlist(demo(), horses);
const tags = everyLanguage.map(({ tag }) => tag);

test('each language of the tool has its words here', () => {
  expect(Object.keys(ownWords).sort()).toEqual([...tags].sort());
  for (const tag of tags) expect(ownWords[tag]!.language).toBe(tag);
});

test.each(tags)('a letter in %s holds machines, prices with their day, reasons, drawbacks, units, cautions, terms and the link', (tag) => {
  const telling = tellingOf(demo(), horses, tag, ofHorses);
  const { shortlist: { shortlist: standing, askDealer, ruledOut, cautions }, catalogue, voice, link } = telling;
  const { lines } = letterOf(telling);
  const text = lines.join('\n');
  const units = (catalogue.units ?? []).filter((unit) => [...standing, ...askDealer].some((entry) => entry.units.some((each) => each.unit === unit.id)));
  // What the letter sets on one line is compared as one, blanks alike.
  const plain = (said: string) => said.replace(/\s+/g, ' ');
  const wanted = [
    ...[...standing, ...askDealer].flatMap((entry) => [`${entry.rank}. ${voice.nameOf(entry.machine)}`, sayPackagePrice(entry.package, voice)]),
    ...[...standing, ...askDealer].flatMap(({ reasons }) => reasons.filter(({ id, kind }) => kind === 'against' && !id.startsWith('addition.')).map((reason) => sayReason(reason, voice))),
    ...standing.map(({ reasons }) => sayReason(reasons.find(({ kind }) => kind === 'for')!, voice)),
    ...ruledOut.map(({ machine }) => voice.nameOf(machine)),
    ...cautions.map((caution) => sayCaution(caution, voice)),
    ...units.flatMap(({ id, priceDate }) => [id, ...(priceDate ? [dayIn(voice.reader.locale, priceDate)] : [])]),
    catalogue.dealer.name, catalogue.dealer.terms?.[tag]?.guidance ?? voice.words.guidance, dayIn(voice.reader.locale, catalogue.asOf),
  ];
  expect(standing.length).toBeGreaterThan(2);
  expect(units.length).toBeGreaterThan(5);
  expect(wanted.filter((said) => !plain(text).includes(plain(said)))).toEqual([]);
  expect(lines.at(-1)).toBe(link);
  expect(readHandedOn(lines.at(-1)!)).toEqual({ answers: horses });
});

test('where nothing fits the ways out are told, and why not each machine', () => {
  const telling = tellingOf(lineUp(), mustDo({ task: 'lift-pallets', weight: { value: 6000, unit: 'lb' }, height: { value: 4, unit: 'ft' } }));
  const { shortlist: { shortlist: standing, askDealer, waysOut, ruledOut }, voice: { words, nameOf } } = telling;
  expect([standing.length, askDealer.length]).toEqual([0, 0]);
  expect(waysOut.length).toBeGreaterThan(0);
  const { lines } = letterOf(telling);
  expect(lines).toContain(words.result.none);
  expect(lines).toContain(words.waysOut.heading.toUpperCase());
  for (const { machine } of ruledOut) expect(lines.filter((line) => line.startsWith(`– ${nameOf(machine)}: `))).toHaveLength(1);
});

test.each(tags)('however short in %s, a letter keeps that it is short, what isn’t cleared, cautions, terms and the link', (tag) => {
  const unsure = buyers.find(({ name }) => name === 'unsure')!.answers;
  const telling = tellingOf(demo(), unsure, tag);
  const { catalogue, voice: { words }, own, link, shortlist: { notCleared } } = telling;
  expect(notCleared.length).toBeGreaterThan(1);
  const lengths = shorter.map((extent) => {
    const { lines } = letterOf(telling, extent);
    for (const kept of [own.shortened.withLink, `! ${own.cautionsInShort}`, catalogue.dealer.terms?.[tag]?.guidance ?? words.guidance, link!]) expect(lines).toContain(kept);
    expect(lines.filter((line) => line.startsWith(`! ${words.result.notClearedHeading}`))).toHaveLength(1);
    return lines.join('\n').length;
  });
  expect(lengths[0]).toBeLessThan(letterOf(telling).lines.join('\n').length);
  expect(lengths.at(-1)).toBeLessThan(lengths[0]!);
  const alone = letterOf({ ...telling, link: undefined }, shorter[0]!).lines;
  expect(alone).toContain(own.shortened.alone);
});

test('a day is written as another calendar has it', () => {
  fc.assert(fc.property(fc.date({ min: new Date('1900-01-01'), max: new Date('2200-12-31'), noInvalidDate: true }), fc.constantFrom('en-US', 'de-US', 'fr-FR'), (date, locale) =>
    dayIn(locale, date.toISOString().slice(0, 10)) === new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' }).format(date)), runs(300));
  expect(dayIn('en-US', 'in spring')).toBe('in spring');
});

describe.each(tags)('in %s', (tag) => {
  test('each refusal says what, why and what to do; a strange sign is shown, and where it stands', () => {
    const codes: Refusal['code'][] = ['nothing', 'not-ours', 'too-long', 'damaged', 'newer', 'not-understood'];
    const all = [...codes.map((code) => ({ code }) as Refusal), { code: 'sign', sign: 'U', group: 3 } as const].map((refusal) => sayRefusal(refusal, ownWords[tag]!));
    for (const said of all) for (const each of [said.what, said.why, said.mend]) expect(each).toMatch(/^.{8,}[.]$/);
    expect(new Set(all.map(({ why }) => why)).size).toBe(all.length);
    expect(all.at(-1)!.why).toMatch(/U.*3/);
  });
});
