import fc from 'fast-check';
import { simpleParser, type AddressObject, type ParsedMail } from 'mailparser';
import PostalMime, { type Email } from 'postal-mime';
import { describe, expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { fromClosedLists } from '../../src/relay/mail/closed-lists.ts';
import { safeLink } from '../../src/relay/mail/safe-link.ts';
import { plainText } from '../../src/documents/plain-text.ts';
import { onOneLine } from '../../src/handoff/one-line.ts';
import { mailLanguage } from '../../src/relay/mail/languages.ts';
import type { Composed } from '../../src/relay/sender/composed.ts';
import { buyers } from '../handoff/buyers.ts';
import { aMinute, runs } from '../support/arbitraries.ts';
import { minimalCatalogue as least } from '../support/minimal-catalogue.ts';
import { demo, mailOf, page, relayAddress, sentMail, token } from './mail-scene.ts';

const minimalCatalogue = () => least() as CatalogueDocument;
const horses = buyers.find(({ name }) => name === 'horses')!.answers;

/** Kinds of text that have broken mail, pages or terminals somewhere; made by hand for this test. */
const naughty = [
  'a\r\nBcc: eve@evil.example', 'a\nBcc: eve@evil.example\n\nbody', 'a\rSubject: other', 'a%0d%0aBcc: eve@evil.example', 'a\u2028Bcc: eve@evil.example', 'a\u0085X-Evil: 1', 'a\0b',
  '=?utf-8?Q?=0D=0ABcc:_eve@evil.example?=', '=?utf-8?B?DQpCY2M6IGV2ZUBldmlsLmV4YW1wbGU=?=', '"eve" <eve@evil.example>, ann', '<eve@evil.example>', 'eve@evil.example, mallory@evil.example',
  '\u202egnp.exe', '\u2066\u2067\u200f mirrored \u2069', 'ab\u200bcd\u200dxy\ufeffz', '\u{e0041}\u{e0042} tags', 'Z\u0351\u036b\u0343\u032a\u0302\u036b\u033d\u034f\u0334\u0319\u0324\u031e\u0349\u035a\u032f\u031e\u0320\u034dA',
  'طراكتور مستعمل', 'טרקטור משומש 42', 'x'.repeat(200), 'W'.repeat(2_000), '👩‍👩‍👧‍👦🏳️‍🌈👨🏿‍🌾'.repeat(8), '\ud800 half', 'Å vs A\u030a', 'ﷺ'.repeat(20), '　全角 テスト', '½ ١٢٣',
  '<script>alert(1)</script>', '<img src=x onerror=alert(1)>', '"><a href="https://evil.example">', '</style><base href=//evil.example>', '<!--', '--><b>', ']]>', '<![CDATA[', '&lt;b&gt;', '&#x3c;b&#x3e;', '{{7*7}}', '{{#parts}}', '{{/parts}}', '${7*7}', '%s%n', '`id`',
  'javascript:alert(1)', "' OR 1=1 --", 'From evil', '>From', '.', '\r\n.\r\n', '-- ', 'undefined', 'NaN', '__proto__', 'constructor', '\\', '\t tab', ' ', 'Content-Type: text/html', '--boundary', '=3D=20=', '=',
];

const anyNaughty = fc.oneof(fc.constantFrom(...naughty), fc.array(fc.constantFrom(...naughty), { minLength: 1, maxLength: 3 }).map((parts) => parts.join('')), fc.string({ unit: 'binary', minLength: 1, maxLength: 60 }), fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 }))
  .filter((text) => text.trim() !== '');

const headersOf = {
  buyer: ['from', 'to', 'reply-to', 'subject', 'message-id', 'date', 'mime-version', 'content-type', 'auto-submitted', 'x-auto-response-suppress', 'content-language', 'list-unsubscribe', 'list-unsubscribe-post'],
  dealer: ['from', 'to', 'reply-to', 'subject', 'message-id', 'date', 'mime-version', 'content-type', 'auto-submitted', 'x-auto-response-suppress', 'content-language'],
};
type Role = keyof typeof headersOf;

const addresses = (field: AddressObject | AddressObject[] | undefined) => [field ?? []].flat().flatMap(({ value }) => value.map(({ address, group }) => address ?? JSON.stringify(group)));

interface Read { one: ParsedMail; other: Email; raw: string }
/** A mail as it goes out, read by two libraries that know nothing of each other, and held against what may be in it. */
async function read(mail: Composed, role: Role): Promise<Read> {
  const to = role === 'buyer' ? 'ann@buyer.example' : 'yard@dealer.example';
  const replies = role === 'buyer' ? 'yard@dealer.example' : 'ann@buyer.example';
  const raw = await sentMail(mail, to);
  const lines = raw.split('\r\n');
  expect(lines.filter((line) => new TextEncoder().encode(line).length > 998 || /[\r\n\0]/.test(line))).toEqual([]);
  // The header ends where the first blank line is.
  const names = raw.slice(0, raw.indexOf('\r\n\r\n')).split('\r\n').filter((line) => !/^[ \t]/.test(line)).map((line) => line.slice(0, line.indexOf(':')).toLowerCase());
  expect(names.sort()).toEqual([...headersOf[role]].sort());
  expect(lines.filter((line) => /^List-Unsubscribe/i.test(line))).toEqual(role === 'buyer' ? [`List-Unsubscribe: <${relayAddress}u/${token}>`, 'List-Unsubscribe-Post: List-Unsubscribe=One-Click'] : []);

  const [one, other] = await Promise.all([simpleParser(raw, { skipTextToHtml: true, skipImageLinks: true }), PostalMime.parse(raw)]);
  expect([addresses(one.from), addresses(one.to), addresses(one.replyTo), addresses(one.cc), addresses(one.bcc)]).toEqual([['shortlists@relay.example'], [to], [replies], [], []]);
  expect([other.from?.address, other.to?.map(({ address }) => address), other.replyTo?.map(({ address }) => address), other.cc, other.bcc]).toEqual(['shortlists@relay.example', [to], [replies], undefined, undefined]);
  expect([one.attachments.length, other.attachments.length]).toEqual([0, 0]);
  expect([one.headers.get('auto-submitted'), one.headers.get('x-auto-response-suppress')]).toEqual(['auto-generated', 'All']);
  const alike = (text: string | undefined) => text!.replace(/\s+/g, ' ').trim();
  expect(alike(one.text)).toBe(alike(other.text));
  expect(alike(one.html as string)).toBe(alike(other.html));
  expect(one.subject).toBe(other.subject);
  return { one, other, raw };
}

/** Tags of HTML with their attributes, texts aside: what a catalogue can't add to. */
const markupOf = (html: string) => [...html.replace(/<!--[\s\S]*?-->/g, '').matchAll(/<\/?([a-z][a-z0-9]*)((?:\s+[a-z:-]+(?:="[^"]*")?)*)\s*\/?>/gi)];
const known = new Set(['html', 'head', 'title', 'meta', 'style', 'body', 'div', 'table', 'tbody', 'tr', 'td', 'p', 'b', 'a', 'h1', 'h2', 'h3', 'h4']);

function isHarmless(html: string) {
  const markup = markupOf(html);
  expect(markup.map(([, tag]) => tag!.toLowerCase()).filter((tag) => !known.has(tag))).toEqual([]);
  // Every opening sign belongs to a tag of ours or a comment for one mail program.
  const left = html.replace(/<!doctype html>|<!--[\s\S]*?-->/gi, '').replace(/<style[\s\S]*?<\/style>/g, '');
  expect(left.match(/</g)!.length).toBe(markupOf(left).length);
  expect(markup.filter(([, , attributes]) => /\s(?:on\w+|src|srcdoc|srcset|action|background|ping)=/i.test(attributes!.replace(/="[^"]*"/g, '=')))).toEqual([]);
  const hrefs = markup.flatMap(([, , attributes]) => /href="([^"]*)"/.exec(attributes!)?.[1] ?? []);
  expect(hrefs.filter((href) => ![page, relayAddress, 'https://photos.example/'].some((start) => href.startsWith(start)))).toEqual([]);
}

/** What turns the direction of what stands around it, hides letters or ends a line: nothing of it gets into a mail. */
const tricks = /[\u202a-\u202e\u200e\u200f\u2028\u2029\u061c\u2066\u2067\u200b\ufeff\u{e0000}-\u{e007f}\ufffe\uffff]|(?![\t\r\n])\p{Cc}|\p{M}{5,}/u;

type Anything = Record<string, unknown>;
/** A catalogue all of whose texts for people are others. */
function saying(catalogue: CatalogueDocument, say: (place: string) => string): CatalogueDocument {
  const copy = structuredClone(catalogue) as unknown as Anything;
  const dealer = copy.dealer as Anything;
  for (const key of ['name', 'phone', 'email', 'address']) dealer[key] = say(`dealer.${key}`);
  dealer.terms = { en: { guidance: say('terms.guidance'), privacy: say('terms.privacy'), finance: say('terms.finance') } };
  for (const machine of copy.machines as Anything[]) {
    machine.name = say('machine.name');
    machine.make = say('machine.make');
    for (const loader of (machine.loaders ?? []) as Anything[]) loader.name = say('loader.name');
  }
  for (const frame of copy.frames as Anything[]) frame.name = say('frame.name');
  for (const implement of (copy.implements ?? []) as Anything[]) implement.name = say('implement.name');
  for (const unit of (copy.units ?? []) as Anything[]) Object.assign(unit, { notes: say('unit.notes'), warranty: say('unit.warranty'), previousUse: say('unit.use'), location: say('unit.location'), photo: 'https://photos.example/a.jpg' });
  return copy as unknown as CatalogueDocument;
}

describe('fault 41: the dealer’s own texts', () => {
  test.each(naughty.map((text) => [text]))('%j reads as it is and does no harm', async (text) => {
    const catalogue = saying(minimalCatalogue(), () => `Yard ${text} End`);
    const mail = mailOf(horses, { catalogue });
    const { one, other } = await read(mail, 'buyer');
    isHarmless(mail.html!);
    expect([tricks.test(one.text!.replace(/[\r\n]/g, ' ')), tricks.test(one.subject!), tricks.test(mail.html!.replace(/[\r\n]/g, ' '))]).toEqual([false, false, false]);
    const name = onOneLine(plainText(`Yard ${text} End`, 200));
    // What would be read as an encoded word (RFC 2047) isn't one any more.
    const subject = onOneLine(mailLanguage('en').own.subject(name)).replaceAll('=?', '= ?');
    expect(other.subject).toBe([...subject].length > 150 ? `${[...subject].slice(0, 149).join('')}…` : subject);
    expect(other.text).toContain('Yard');
  });
});

describe('fault 41: whatever is written', () => {
  test('in a catalogue changes no header, no recipient and no markup, in the buyer’s mail or the dealer’s', async () => {
    await fc.assert(fc.asyncProperty(fc.array(anyNaughty, { minLength: 4, maxLength: 8 }), fc.constantFrom<Role>('buyer', 'dealer'), async (texts, role) => {
      let at = 0;
      const mail = mailOf(horses, { role, catalogue: saying(minimalCatalogue(), () => `N${texts[(at += 1) % texts.length]!}`) });
      await read(mail, role);
      isHarmless(mail.html!);
      expect(tricks.test(`${mail.text}${mail.html!}`.replace(/[\r\n]/g, ' '))).toBe(false);
    }), runs(30));
  }, aMinute);

  test('as the sender’s name in the settings stays a name', async () => {
    await fc.assert(fc.asyncProperty(anyNaughty, async (senderName) => {
      await read(mailOf(horses, { role: 'confirm', dealer: { senderName, postalAddress: senderName } }), 'buyer');
    }), runs(30));
  }, aMinute);

  test('by a buyer to be called by is in the body of the dealer’s copy alone', async () => {
    await fc.assert(fc.asyncProperty(anyNaughty, anyNaughty, async (name, phone) => {
      const request = { contact: { name: `Canary ${name}`, phone: `Canary ${phone}` } };
      const copy = mailOf(horses, { role: 'dealer', request });
      const { raw, other } = await read(copy, 'dealer');
      isHarmless(copy.html!);
      expect(other.text).toContain('Canary');
      expect(raw.slice(0, raw.indexOf('\r\n\r\n'))).not.toMatch(/canary/i);
      expect(JSON.stringify(mailOf(horses, { request }))).not.toMatch(/canary/i);
    }), runs(15));
  }, aMinute);
});

const canary = 'Canary';
const anyCanary = anyNaughty.map((text) => `${canary}${text}`);
/** Answers with a canary wherever somebody can write. */
const withCanaries = fc.tuple(fc.constantFrom(...buyers.map(({ answers }) => answers)), fc.array(anyCanary, { minLength: 9, maxLength: 9 })).map(([answers, words]) => ({
  ...answers,
  tasks: [
    ...(answers.tasks ?? []).filter(({ task }) => task !== 'move-loose' && task !== 'handle-logs'),
    { task: 'move-loose', must: false, material: words[0] }, { task: 'handle-logs', must: false, species: words[1], diameter: { value: 12, unit: 'in' }, length: { value: 8, unit: 'ft' } },
    { task: words[2], must: true },
  ],
  owned: [{ id: 'canary-canary', name: words[3], kind: 'rotary-cutter', width: { value: 60, unit: 'in' }, attachmentInterface: words[4] }],
  haul: { ...answers.haul, delivery: words[5] },
  budget: { ...answers.budget, tradeIn: { kind: words[6] } },
  unsure: [words[7]],
  [`x-${words[8]}`]: words[8],
}) as unknown as AnswersDocument);

describe('nothing a stranger wrote', () => {
  test('is left by the way in, and what is from a list or a figure stays as it was', () => {
    fc.assert(fc.property(withCanaries, (answers) => {
      const kept = fromClosedLists(answers);
      expect(JSON.stringify(kept)).not.toMatch(/canary/i);
      expect([kept.land, kept.drivers, kept.storage, kept.comfort, kept.priorities]).toEqual([answers.land, answers.drivers, answers.storage, answers.comfort, answers.priorities]);
      expect(kept.owned?.[0]).toMatchObject({ kind: 'rotary-cutter', width: { value: 60, unit: 'in' } });
    }), runs(100));
    for (const { answers } of buyers) expect(fromClosedLists(answers)).toEqual(answers);
  });

  test('gets into a mail to anybody, in body, subject or header', async () => {
    await fc.assert(fc.asyncProperty(withCanaries, fc.constantFrom('buyer', 'dealer', 'confirm'), fc.constantFrom('shortlist', 'notify'), fc.constantFrom('en', 'de'), async (answers, role, kind, language) => {
      const mail = mailOf(answers, { role, request: { kind, language }, catalogue: demo });
      const { raw, other, one } = await read(mail, role === 'dealer' ? 'dealer' : 'buyer');
      for (const text of [raw, other.text, other.html, other.subject, one.text, mail.text, mail.html, mail.subject]) expect(text).not.toMatch(/canary/i);
    }), runs(12));
  }, aMinute);

  test('control: a canary that the catalogue holds is found', () => {
    expect(JSON.stringify(mailOf(horses, { catalogue: { ...demo, dealer: { ...demo.dealer, name: canary } } }))).toMatch(/canary/i);
  });
});

describe('fault 61: text that tricks the eye', () => {
  test('names alike but for their composition read alike, and a name from right to left keeps its sentence', () => {
    const named = (name: string) => mailOf(horses, { role: 'confirm', catalogue: { ...minimalCatalogue(), dealer: { ...minimalCatalogue().dealer, name } } });
    expect(named('A\u030a yard').text).toBe(named('Å yard').text);
    expect(named('טרקטור').subject).toContain('\u2068טרקטור\u2069');
  });
});

describe('fault 62: addresses a catalogue or a setting holds', () => {
  test.each(['javascript:alert(1)', 'java\tscript:alert(1)', ' https://a.example', 'data:text/html,x', '//evil.example', 'http://evil.example/', 'https://user:pw@evil.example/', `https://a.example/${'x'.repeat(2_000)}`, 'https://a.example/\nx', 'mailto:a@b.example', 'vbscript:x', ''])('%j is no link', (address) => {
    expect(safeLink(address)).toBeUndefined();
  });
  test('control: one of a page is', () => {
    expect(safeLink('https://a.example/b?c=d#e')).toBe('https://a.example/b?c=d#e');
  });
});
