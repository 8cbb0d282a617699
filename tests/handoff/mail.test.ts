import fc from 'fast-check';
import PostalMime from 'postal-mime';
import { describe, expect, test } from 'vitest';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { letterOf, type Letter } from '../../src/handoff/letter/letter.ts';
import { readHandedOn } from '../../src/handoff/link.ts';
import { eml, type Posting } from '../../src/handoff/mail/eml.ts';
import { isAddress } from '../../src/documents/mail-address.ts';
import { longestMailto, mailto } from '../../src/handoff/mail/mailto.ts';
import { onOneLine } from '../../src/handoff/one-line.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { aMinute, runs } from '../support/arbitraries.ts';
import { everyLanguage } from '../support/languages.ts';
import { buyers } from './buyers.ts';
import { demo, tellingOf } from './telling.ts';

const tags = everyLanguage.map(({ tag }) => tag);
const horses = buyers.find(({ name }) => name === 'horses')!.answers;
const ofHorses = shortlist(demo(), horses);

/** Lines as RFC 5322 and MIME want them: ASCII, CRLF, at most 998 signs, and 78 where they may be chosen. */
function wellFormed(message: string) {
  expect(message).toMatch(/^[\r\n -~]*$/);
  expect(message.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  expect(message.split('\r\n').filter((line) => line.length > 78)).toEqual([]);
}

const headersOf = (message: string) => message.slice(0, message.indexOf('\r\n\r\n')).replace(/\r\n /g, ' ').split('\r\n').map((line) => line.slice(0, line.indexOf(':')));
const ours = ['From', 'To', 'Subject', 'Date', 'X-Unsent', 'MIME-Version', 'Content-Type', 'Content-Language', 'Content-Transfer-Encoding'];

/** A letter as the mail program shows it: blanks at the ends of lines and blank lines at the end aside. */
const shown = (text: string) => text.replaceAll('\r\n', '\n').replace(/\n+$/, '').split('\n').map((line) => line.trimEnd());

const read = (message: string) => PostalMime.parse(message);
async function readsBack(letter: Letter, posting: Posting = {}) {
  const message = eml(letter, posting);
  wellFormed(message);
  expect(headersOf(message).every((name) => ours.includes(name))).toBe(true);
  expect(new Set(headersOf(message)).size).toBe(headersOf(message).length);
  const mail = await read(message);
  expect(shown(mail.text!)).toEqual(letter.lines);
  expect([mail.attachments.length, mail.html, mail.cc, mail.bcc]).toEqual([0, undefined, undefined, undefined]);
  return mail;
}

describe('the file of a mail, read by another library', () => {
  test.each(tags)('is the letter in %s, as a draft to nobody yet', async (tag) => {
    const letter = letterOf(tellingOf(demo(), horses, tag, ofHorses));
    const mail = await readsBack(letter, { language: tag });
    expect(mail.subject).toBe(letter.subject);
    expect([mail.to, mail.from, mail.date]).toEqual([undefined, undefined, undefined]);
    expect(mail.headers.filter(({ key }) => ['x-unsent', 'content-language'].includes(key)).map(({ value }) => value)).toEqual(['1', tag]);
  });

  test('is for whom it is said to be for, from whom, of the day handed in', async () => {
    const letter = letterOf(tellingOf(demo(), horses, 'en', ofHorses));
    const mail = await readsBack(letter, {
      to: { address: 'ann@buyer.example', name: 'Åsa O’Néill, "Ann" <x@y.example>' }, from: { address: 'yard@dealer.example', name: 'Yard' }, date: new Date(Date.UTC(2026, 4, 12, 10, 0, 7)).toUTCString(),
    });
    expect(mail.to).toEqual([{ address: 'ann@buyer.example', name: 'Åsa O’Néill, "Ann" <x@y.example>' }]);
    expect(mail.from).toEqual({ address: 'yard@dealer.example', name: 'Yard' });
    expect(mail.date).toBe('2026-05-12T10:00:07.000Z');
  });

  const hostile = ['Ann\r\nBcc: all@victim.example', 'Ann\nSubject: other\n\nbody', 'A\u2028B\u2029C\u0085D\u0000E', '=?utf-8?Q?=0D=0ABcc:_x@y.example?=', '> quoted', 'From here', '.', '-- ', '\ud800 half', '\u202eturned', 'x'.repeat(3000), 'ß'.repeat(400), '🚜'.repeat(200)].map((name) => ({ name, begins: JSON.stringify(name.slice(0, 30)) }));

  test.each(hostile)('whatever a catalogue holds: $begins', async ({ name }) => {
    const catalogue = demo();
    const altered: CatalogueDocument = {
      ...catalogue, dealer: { ...catalogue.dealer, name, phone: name, terms: { en: { guidance: `${name} ${name}` } } }, machines: catalogue.machines.map((machine) => ({ ...machine, name })),
    };
    const letter = letterOf(tellingOf(altered, horses, 'en', ofHorses));
    const mail = await readsBack(letter, { to: { address: 'ann@buyer.example', name } });
    expect(mail.subject).toBe(letter.subject);
    expect(mail.to?.map(({ address }) => address)).toEqual(['ann@buyer.example']);
  });

  test('any text at all, in lines, subject and name', async () => {
    const text = fc.array(fc.oneof({ weight: 8, arbitrary: fc.integer({ min: 0, max: 0x24f }) }, fc.integer({ min: 0, max: 0x10ffff }), fc.constantFrom(13, 10, 32, 61, 62)), { maxLength: 90 })
      .map((points) => onOneLine(String.fromCodePoint(...points)));
    await fc.assert(fc.asyncProperty(fc.array(text, { minLength: 1, maxLength: 5 }), text, async (written, subject) => {
      // A mail program takes blank lines at the end for nothing, and what is no letter for none.
      const lines = [...written.map((line) => line.replaceAll('\ufeff', '')), 'end'];
      const mail = await readsBack({ subject, lines });
      expect(onOneLine(mail.subject ?? '')).toBe(subject);
    }), runs(250));
  }, aMinute);

  test('holds no address that isn’t plainly one, and no header handed in as a date or a language', () => {
    const letter = { subject: 's', lines: ['x'] };
    for (const address of ['', 'ann', 'a@b', 'a@b.example, c@d.example', 'a@b.example\r\nBcc: c@d.example', '<a@b.example>', '"a b"@c.example', 'a@[127.0.0.1]', 'a..b@c.example', '.a@c.example', `${'a'.repeat(65)}@c.example`, 'ä@c.example']) {
      expect(isAddress(address)).toBe(false);
      expect(headersOf(eml(letter, { to: { address } }))).not.toContain('To');
    }
    expect(headersOf(eml(letter, { date: 'today\r\nBcc: a@b.example', language: 'en\r\nBcc: a@b.example' }))).toEqual(['Subject', 'X-Unsent', 'MIME-Version', 'Content-Type', 'Content-Transfer-Encoding']);
    for (const address of ['ann@buyer.example', "o'neill+lot@a-b.example", 'a.b_c@x.y.example']) expect(isAddress(address)).toBe(true);
  });
});

/** A mail's parts from its link, as RFC 6068 has them. */
function partsOf(href: string) {
  const [, to, query] = /^mailto:([^?]*)\?(.*)$/.exec(href)!;
  const fields = query!.split('&').map((field) => field.split('=').map(decodeURIComponent) as [string, string]);
  expect(fields.map(([name]) => name)).toEqual(['subject', 'body']);
  return { to: decodeURIComponent(to!), subject: fields[0]![1], body: fields[1]![1] };
}

describe('the link to a mail', () => {
  const results = buyers.map((buyer) => ({ ...buyer, result: shortlist(demo(), buyer.answers) }));
  const found = tags.flatMap((tag) => results.map(({ name, answers, result }) => ({ tag, name, telling: tellingOf(demo(), answers, tag, result) })));

  test.each(found)('has room for the buyer $name in $tag, and says that it is short; no term is left out', ({ telling }) => {
    const made = mailto(telling, 'ann@buyer.example');
    if (made === 'no-room') throw new Error('no room');
    expect(made.href.length).toBeLessThanOrEqual(longestMailto);
    const { to, subject, body } = partsOf(made.href);
    const lines = body.split('\r\n');
    expect([to, subject]).toEqual(['ann@buyer.example', telling.own.subject(telling.catalogue.dealer.name)]);
    expect(lines.includes(telling.own.shortened.withLink)).toBe(made.isShortened);
    const { catalogue: { dealer }, voice: { words } } = telling;
    expect(lines).toContain((dealer.terms?.[words.language]?.guidance ?? words.guidance).replaceAll('’', "'"));
    expect(lines.at(-1)).toBe(telling.link);
    expect('answers' in readHandedOn(body.slice(body.indexOf('https:')))).toBe(true);
  });

  test('tells the whole where it has room for it', () => {
    const catalogue = demo();
    const { words } = everyLanguage[0]!;
    const bare = tellingOf({ ...catalogue, machines: [], units: [] }, horses, 'en', { ...tellingOf(catalogue, horses, 'en', ofHorses).shortlist, shortlist: [], askDealer: [], ruledOut: [], cautions: [], conflicts: { sets: [], complete: true }, waysOut: [] });
    const made = mailto(bare);
    expect(made).toMatchObject({ isShortened: false });
    expect(made !== 'no-room' && partsOf(made.href).body.split('\r\n')).toContain(words.result.none);
  });

  test('is none where the dealer’s terms alone leave no room: they are never cut', () => {
    const catalogue = demo();
    expect(mailto(tellingOf({ ...catalogue, dealer: { ...catalogue.dealer, terms: { en: { guidance: 'All of this counts. '.repeat(150) } } } }, horses, 'en', ofHorses))).toBe('no-room');
  });

  test('has no further field, recipient or line, whatever is handed in', () => {
    const catalogue = demo();
    const name = '&bcc=a@b.example?cc=c#d\r\nBcc: x@y.example"\'><script>';
    const made = mailto(tellingOf({ ...catalogue, dealer: { ...catalogue.dealer, name } }, horses, 'en', ofHorses), 'a@b.example?bcc=c@d.example');
    if (made === 'no-room') throw new Error('no room');
    expect(made.href).toMatch(/^mailto:\?subject=[\w.!~*()%-]+&body=[\w.!~*()%-]+$/);
    expect(partsOf(made.href).subject).toContain('&bcc=a@b.example?cc=c#d Bcc: x@y.example"\'><script>');
  });
});
