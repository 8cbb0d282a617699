import { describe, expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { letterOf } from '../../src/handoff/letter/letter.ts';
import { readHandedOn } from '../../src/handoff/link.ts';
import { sayConflict, sayWay } from '../../src/reasons/say-ways-out.ts';
import { sayCaution } from '../../src/reasons/say.ts';
import { sayTerms } from '../../src/reasons/say-terms.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { composeBuyerMail, mostHtml } from '../../src/relay/mail/compose-mails.ts';
import { inputOf } from '../../src/relay/mail/compose.ts';
import { mailLanguage, mailLanguages } from '../../src/relay/mail/languages.ts';
import { whole } from '../../src/relay/mail/plan/extent.ts';
import { dayIn } from '../../src/units/day.ts';
import { showAmount } from '../../src/units/show.ts';
import { buyers } from '../handoff/buyers.ts';
import { tellingOf } from '../handoff/telling.ts';
import { lineUp } from '../support/catalogue-for-tests.ts';
import { everyLanguage } from '../support/languages.ts';
import { mustDo } from '../support/reckon.ts';
import { composing, demo, mailOf, page, relayAddress, token } from './mail-scene.ts';

const tags = everyLanguage.map(({ tag }) => tag);
const horses = buyers.find(({ name }) => name === 'horses')!.answers;
/** Nothing of the line-up lifts that. */
const tooMuch = mustDo({ task: 'lift-pallets', weight: { value: 6000, unit: 'lb' }, height: { value: 4, unit: 'ft' } });

const plain = (text: string) => text.replace(/\s+/g, ' ').trim();
/** A text as a reader of `format=flowed` sets it: what was broken at a blank is one line again. */
const unflowed = (text: string) => text.replaceAll('\r\n', '\n').replace(/ \n/g, ' ').split('\n').map(plain);
/** What somebody reads of HTML: no tags, no styles, no comments. */
const readOf = (html: string) => plain(html.replace(/<!--[\s\S]*?-->|<style[\s\S]*?<\/style>|<[^>]*>/g, ' ')
  .replace(/&nbsp;/g, ' ').replace(/&lt;/g, '<').replace(/&gt;/g, '>').replace(/&quot;/g, '"').replace(/&#39;/g, '’').replace(/&amp;/g, '&')).replaceAll('\'', '’');
const hrefsOf = (html: string) => [...html.matchAll(/href="([^"]*)"/g)].map(([, href]) => href!.replaceAll('&amp;', '&'));
const octets = (text: string) => new TextEncoder().encode(text).length;

test('each language of the tool has its words here', () => {
  expect(Object.keys(mailLanguages).sort()).toEqual([...tags].sort());
  for (const tag of tags) expect(mailLanguage(tag).mail.language).toBe(tag);
  expect([mailLanguage('de-AT').mail.language, mailLanguage('xx').mail.language, mailLanguage('constructor').mail.language]).toEqual(['de', 'en', 'en']);
});

describe.each(tags)('the buyer’s mail in %s', (tag) => {
  const mail = mailOf(horses, { request: { language: tag } });
  const lines = unflowed(mail.text);
  const read = readOf(mail.html!);

  test('holds all that the letter to be taken along holds', () => {
    const { link: _link, ...telling } = tellingOf(demo, horses, tag);
    const letter = letterOf(telling, { machines: Infinity, reasons: whole.reasons, drawbacks: Infinity, details: true });
    // The letter is upper case where a mail has headings of its own.
    const wanted = letter.lines.map(plain).filter((line) => line !== '' && !line.endsWith(':'));
    const has = new Set(lines.map((line) => line.toUpperCase()));
    const cutShort = plain(telling.own.shortened.alone).toUpperCase();
    expect(wanted.length).toBeGreaterThan(80);
    expect(wanted.map((line) => line.toUpperCase()).filter((line) => !has.has(line) && line !== cutShort && !line.includes(demo.dealer.phone!) && !/^\d+ |^\S+ \S+( \S+)?$/.test(line))).toEqual([]);
  });

  test('says the same as text and as HTML, and every machine has something for it and something against it or not known', () => {
    const linkLines = lines.filter((line) => line.includes('https://'));
    const missing = lines.filter((line) => line !== '' && line !== '--' && !linkLines.includes(line) && !read.toUpperCase().includes(line.replaceAll('\'', '’').toUpperCase()));
    expect(missing).toEqual([]);
    const machines = mail.html!.split('<h3').slice(1);
    expect(machines.length).toBeGreaterThan(3);
    for (const machine of machines) {
      expect(readOf(machine)).toMatch(/ \+ \S/);
      expect(readOf(machine)).toMatch(/ [–?!] \S/);
    }
  });

  test('says of when its list is, why it comes, how to stop it, what it isn’t, and where the dealer is', () => {
    const { words, mail: own } = mailLanguage(tag);
    for (const said of [
      words.result.asOf(dayIn(`${tag}-US`, demo.asOf)), own.asked(demo.dealer.name), own.footer.why(demo.dealer.name), own.footer.stop, own.footer.notAsked,
      sayTerms(demo.dealer, words), '41 Quarry Lane, Hollowmere',
    ]) expect([lines.join('\n'), read].filter((text) => !plain(text).replaceAll('\'', '’').includes(plain(said).replaceAll('\'', '’'))), said).toEqual([]);
    expect(hrefsOf(mail.html!)).toEqual(expect.arrayContaining([`${relayAddress}u/${token}`, `${relayAddress}n/${token}`]));
  });

  test('leads back to the page with the same answers', () => {
    const back = hrefsOf(mail.html!).find((href) => href.startsWith(page))!;
    expect(readHandedOn(back)).toEqual({ answers: horses });
    expect(lines).toContain(back);
  });

  test('is headed by words of the language, and by what isn’t cleared', () => {
    expect(mail.subject).toBe(mailLanguage(tag).own.subject(demo.dealer.name));
    const { words } = mailLanguage(tag);
    const unsaid = mailOf({ ...horses, land: { ...horses.land, slope: { value: 20, unit: 'deg' } } } as AnswersDocument, { request: { language: tag } });
    const at = unsaid.html!.indexOf(words.result.notClearedHeading);
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(unsaid.html!.indexOf('<h3'));
  });
});

describe('the buyer’s mail', () => {
  /** The longest of the four. */
  const wordiest = 'fr';

  test('fits what readers of mail show whole, for every scripted buyer', () => {
    for (const { answers } of buyers) {
      const { html, text } = mailOf(answers, { request: { language: wordiest } });
      expect(octets(html!)).toBeLessThan(mostHtml);
      expect(text).not.toContain(mailLanguage(wordiest).mail.shortened);
    }
  }, 30_000);

  test('with more to tell than fits tells less and says so; the terms, the cautions and the way to stop it stay', () => {
    const input = inputOf(composing(horses), relayAddress);
    const times = <T>(list: readonly T[], count: number) => Array.from({ length: count }, () => list).flat();
    for (const count of [20, 400]) {
      const long = { ...input, shortlist: { ...input.shortlist, shortlist: times(input.shortlist.shortlist, count), ruledOut: times(input.shortlist.ruledOut, count) } };
      const { html, text } = composeBuyerMail(long);
      expect(octets(html!)).toBeLessThanOrEqual(mostHtml);
      const { words, mail: own } = mailLanguage('en');
      for (const said of [own.shortened, own.footer.stop, plain(sayTerms(demo.dealer, words)), ...input.shortlist.cautions.map((caution) => sayCaution(caution, input.voice))]) {
        expect(unflowed(text).join('\n')).toContain(plain(said));
      }
    }
  }, 30_000);

  test('where nothing fits tells what conflicts and the ways out', () => {
    const result = shortlist(lineUp(), tooMuch);
    const { voice } = tellingOf(lineUp(), tooMuch, 'en', result);
    expect([result.shortlist.length, result.askDealer.length]).toEqual([0, 0]);
    const { text, html } = mailOf(tooMuch, { catalogue: lineUp() });
    const said = [voice.words.result.none, ...result.conflicts.sets.map((set) => sayConflict(set, voice)), ...result.waysOut.map((way) => sayWay(way, result, voice).way)];
    expect(said.length).toBeGreaterThan(2);
    expect(said.filter((each) => !unflowed(text).join('\n').includes(plain(each)) || !readOf(html!).includes(plain(each).replaceAll('\'', '’')))).toEqual([]);
  });

  test('reckoned with another list or other rules than the buyer saw says so', () => {
    const { mail: own } = mailLanguage('en');
    const now = dayIn('en-US', demo.asOf);
    const seen = { catalogue: { id: demo.id, version: 'v-older' }, rules: { version: 'older' } };
    const other = unflowed(mailOf(horses, { asSeen: false, request: { seen } }).text).join('\n');
    expect(other).toContain(own.otherList(now, undefined));
    expect(other).toContain(own.otherRules);
    const dated = { ...seen, catalogue: { ...seen.catalogue, asOf: '2026-05-01' } };
    expect(unflowed(mailOf(horses, { asSeen: false, request: { seen: dated } }).text).join('\n')).toContain(own.otherList(now, dayIn('en-US', '2026-05-01')));
    const same = unflowed(mailOf(horses).text).join('\n');
    expect([same.includes(own.otherList(now, undefined)), same.includes(own.otherRules)]).toEqual([false, false]);
    expect(own.otherList(now, 'May 1, 2026')).toMatch(/November 20, 2026.*May 1, 2026/);
  });

  test('without a page has no way back, and without TLS no button of the provider’s', () => {
    expect(hrefsOf(mailOf(horses, { dealer: { page: 'javascript:alert(1)' } }).html!).filter((href) => !href.startsWith(relayAddress))).toEqual([]);
    expect(mailOf(horses).headers).toMatchObject({ 'List-Unsubscribe': `<${relayAddress}u/${token}>`, 'List-Unsubscribe-Post': 'List-Unsubscribe=One-Click' });
  });

  test('fetches nothing, and runs nothing', () => {
    const { html } = mailOf(horses);
    expect(html).not.toMatch(/<(?:img|link|script|iframe|object|form|input|svg|video|base)\b|\bsrc=|url\(|@import|\son\w+=|javascript:/i);
    expect(html).toMatch(/<meta name="color-scheme" content="light dark">/);
  });

  test('has photos as links of units, by TLS alone', () => {
    const withPhoto = (photo: string): CatalogueDocument => ({ ...demo, units: demo.units!.map((unit) => ({ ...unit, photo })) });
    const linked = (photo: string) => hrefsOf(mailOf(horses, { catalogue: withPhoto(photo) }).html!).filter((href) => !href.startsWith(relayAddress) && !href.startsWith(page));
    expect(new Set(linked('https://photos.example/a.jpg?b=1&c="x"'))).toEqual(new Set(['https://photos.example/a.jpg?b=1&c=%22x%22']));
    expect(linked('https://user:pw@photos.example/a.jpg')).toEqual([]);
    expect(linked('https://photos.example/a\tb.jpg')).toEqual([]);
  });
});

describe('what follows a wish for word when one comes', () => {
  test('is a short mail to the buyer, and one to the dealer with what the work demands', () => {
    const notify = { kind: 'notify' } as const;
    const { mail: own } = mailLanguage('en');
    const buyers = mailOf(horses, { request: notify });
    expect(buyers.subject).toBe(own.subjects.notify(demo.dealer.name));
    expect(octets(buyers.html!)).toBeLessThan(octets(mailOf(horses).html!) / 2);
    expect(unflowed(buyers.text)).toContain(own.notify.says(demo.dealer.name));
    expect(buyers.headers).toHaveProperty('List-Unsubscribe');
    const dealers = mailOf(horses, { request: notify, role: 'dealer' });
    expect([dealers.subject, dealers.replyTo]).toEqual([own.subjects.dealerNotify(demo.dealer.name), 'ann@buyer.example']);
    expect(unflowed(dealers.text)).toContain(own.dealer.says.notify);
  });
});

describe('the dealer’s copy', () => {
  const copy = mailOf(horses, { role: 'dealer', request: { language: 'fr', units: 'metric' } });

  test('has the buyer’s contact in its body and nowhere else, in text and HTML', () => {
    for (const body of [copy.text, readOf(copy.html!)]) for (const said of ['Ann Buyer', '555-555-0199', 'ann@buyer.example', 'evening', 'français']) expect(body).toContain(said);
    expect(JSON.stringify({ ...copy, text: '', html: '', replyTo: '' })).not.toMatch(/Ann|0199|buyer\.example/);
    expect(copy.replyTo).toBe('ann@buyer.example');
    expect(copy.headers).not.toHaveProperty('List-Unsubscribe');
  });

  test('is in the dealer’s language and units, with each demand and its bound', () => {
    const { needs } = shortlist(demo, horses);
    const { demands } = mailLanguage('en').mail;
    const { voice: { words, reader } } = tellingOf(demo, horses, 'en');
    const bounded = needs.filter(({ bound, capability }) => bound && capability !== 'slope.tip-angle');
    expect(new Set(bounded.map(({ bound }) => bound!.is)).size).toBe(2);
    const text = unflowed(copy.text).join('\n');
    for (const { id, bound } of bounded) expect(text).toContain(plain(`– ${words.needs[id]}: ${demands[bound!.is === 'at-least' ? 'atLeast' : 'atMost'](showAmount(bound!.value, bound!.unit, reader))}`));
  });

  test('of who gave neither name nor number says so, and shows none where the buyer agreed to none', () => {
    const { mail: { dealer: said } } = mailLanguage('en');
    const without = mailOf(horses, { role: 'dealer', request: { consent: { mail: true, dealerCopy: false, statistics: false } } });
    expect(without.text).not.toMatch(/Ann Buyer|0199/);
    expect(without.text).toContain(said.noContact);
  });
});

describe.each(tags)('word to the dealer that a mail can’t be delivered, in %s', (tag) => {
  const { mail: { dealer: said, subjects } } = mailLanguage(tag);
  const own = { ...demo, dealer: { ...demo.dealer, locale: `${tag}-US` } };

  test('says so, whom to call and what he asked for, by the same text as HTML, and nothing of the result', () => {
    const mail = mailOf(horses, { role: 'dealer', isWord: true, catalogue: own });
    expect(mail.subject).toBe(subjects.undelivered(demo.dealer.name));
    for (const text of [unflowed(mail.text).join('\n'), readOf(mail.html!)]) {
      for (const each of [said.undelivered.says, 'Ann Buyer', '555-555-0199', 'ann@buyer.example', said.goodTimes.evening]) expect(plain(text).replaceAll('\'', '’')).toContain(plain(each).replaceAll('\'', '’'));
      for (const machine of own.machines) expect(text).not.toContain(machine.name);
    }
    // An answer would get no further than the mail did.
    expect(mail.replyTo).toBeUndefined();
    expect(hrefsOf(mail.html!)).toEqual([]);
    expect(mail.headers).toMatchObject({ 'Auto-Submitted': 'auto-generated', 'Content-Language': tag });
    expect(JSON.stringify([mail.subject, mail.fromName, mail.headers])).not.toMatch(/Ann|0199|buyer\.example/);
  });
});

test('a tag of a language that can be none of any is as good as English', () => {
  expect(mailOf(horses, { role: 'dealer', request: { language: 'en-00-00-00' } }).text).toContain('English');
  expect(mailOf(horses, { request: { language: 'zz-00-00-00' } }).headers).toMatchObject({ 'Content-Language': 'en' });
});

test('who is asked first gets one button, no result, and nothing of the dealer’s but his name and address', () => {
  const { html, subject, text } = mailOf(horses, { role: 'confirm' });
  const { mail: own } = mailLanguage('en');
  expect(subject).toBe(own.subjects.confirm(demo.dealer.name));
  expect(hrefsOf(html!)).toEqual([`${relayAddress}c/${token}`, `${relayAddress}u/${token}`, `${relayAddress}n/${token}`]);
  expect(octets(html!)).toBeLessThan(12_000);
  expect(text).not.toContain('$');
});

test('lines of text are at most 78 signs, but for addresses', () => {
  for (const role of ['buyer', 'dealer', 'confirm'] as const) {
    expect(mailOf(horses, { role }).text.split('\r\n').filter((line) => line.length > 78 && !line.includes('https://'))).toEqual([]);
  }
});
