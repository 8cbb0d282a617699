import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { en } from '../../src/cli/rulebook/words/en.ts';
import { escaped, html } from '../../src/cli/rulebook/markup.ts';
import { figureRules, ruleIds, rules } from '../../src/trade/book.ts';
import { changedCatalogue, demoCatalogue, runWith } from './fake-io.ts';

const pageWith = async (catalogue?: string) => {
  const files: Record<string, string> = catalogue === undefined ? {} : { 'lot.json': catalogue };
  const { out } = await runWith(files, 'rulebook', '--format', 'html', ...(catalogue === undefined ? [] : ['--catalogue', 'lot.json']));
  return out.join('\n');
};
const page = await pageWith();
const markup = page.replaceAll(/<style>.*?<\/style>|<script>.*?<\/script>/gs, '');
const decode = (text: string) => text.replaceAll(/<[^>]*>/g, '').replaceAll('&#39;', "'").replaceAll('&quot;', '"').replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');
const articlesIn = (text: string) => new Map([...text.matchAll(/<article id="([^"]+)"([^>]*)>(.*?)<\/article>/gs)].map(([, id, attributes, inside]) => [id!, { attributes: attributes!, text: decode(inside!), inside: inside! }]));
const articles = articlesIn(page);

test('every rule stands there once, under its id', () => {
  expect([...articles.keys()].sort()).toEqual([...ruleIds]);
  expect(page.match(/<article/g)).toHaveLength(ruleIds.length);
});

test.each(ruleIds)('%s shows statement, value or formula, kind, source, trust and use', (id) => {
  const rule = rules[id];
  const { text, inside, attributes } = articles.get(id)!;
  expect(text).toContain(rule.statement);
  expect(text).toContain(en.kinds[rule.kind]);
  expect(inside).toContain(`href="#${id}"`);
  if (rule.kind === 'formula') {
    expect(text).toContain(rule.formula);
    expect(inside.match(/<math/g)).toHaveLength(rule.formula.split(';').length);
  } else {
    expect(text.replaceAll(',', '')).toContain(`Value${rule.value}`);
    if (rule.valid[0] !== rule.valid[1]) expect(text).toContain('Range');
  }
  const { source } = rule;
  if (source.basis === 'published' || source.basis === 'memory') {
    expect(text).toContain(source.title);
    expect(text).toContain(source.where ?? '');
  }
  const weak = { 'published': source.basis === 'published' && source.read === 'second-hand', 'memory': true, 'common-practice': true, 'derived': false }[source.basis];
  expect(/class="tag weak"/.test(inside)).toBe(weak);
  expect(attributes).toContain(`data-kind="${rule.kind}"`);
  expect(text).toMatch(/Used in\S/);
});

test('every theme has a heading, an anchor and a link; every link within the page leads somewhere', () => {
  const themes = new Set(ruleIds.map((id) => id.split('.')[0]!));
  expect(Object.keys(en.themes).sort()).toEqual([...themes].sort());
  const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const theme of themes) expect(page).toContain(`<li><a href="#${theme}">`);
  expect([...markup.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id).filter((id) => !ids.includes(id))).toEqual([]);
  expect(markup).not.toMatch(/undefined|NaN|\[object/);
});

test('it asks for nothing, and its policy allows its one style and its one script alone', () => {
  const hash = (name: string) => {
    const found = [...page.matchAll(new RegExp(`<${name}>(.*?)</${name}>`, 'gs'))];
    expect(found).toHaveLength(1);
    return `'sha256-${createHash('sha256').update(found[0]![1]!).digest('base64')}'`;
  };
  const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(page)![1]!;
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain(`style-src ${hash('style')}`);
  expect(policy).toContain(`script-src ${hash('script')}`);
  expect(policy).not.toContain('unsafe');
  expect(page).not.toMatch(/\s(style|on[a-z]+)=/);
  expect([...page.matchAll(/\b(?:src|href|action|url)\s*[=(]\s*["']?([^"'\s>)]+)/g)].map(([, to]) => to).filter((to) => !to!.startsWith('#'))).toEqual(['data:,']);
});

test('with a catalogue the dealer’s figure stands beside the book’s own', async () => {
  const own = articlesIn(await pageWith(demoCatalogue));
  const dealers = Object.entries((JSON.parse(demoCatalogue) as { rules: Record<string, number | { value: number; unit: string }> }).rules);
  expect(dealers.length).toBeGreaterThan(1);
  for (const [id, value] of dealers) {
    const { text } = own.get(id)!;
    expect(text).toContain(`Value${figureRules[id as keyof typeof figureRules].value}`);
    expect(text).toContain(`This dealer’s figure${typeof value === 'number' ? value : `${value.value}\u00a0${value.unit}`}`);
  }
  expect([...own].filter(([, { text }]) => text.includes('This dealer’s figure')).map(([id]) => id).sort()).toEqual(dealers.map(([id]) => id).sort());
});

/** The tags of a page with their attributes, all that makes it what it is but the text. */
const skeleton = (text: string) => text.replaceAll(/<style>.*?<\/style>|<script>.*?<\/script>/gs, '').match(/<[^>]*>/g)!.map((tag) => tag.replaceAll(/"[^"]*"/g, '""'));
const nasty = ['</style><script>alert(1)</script>', '"><img src=x onerror=alert(1)>', "' onfocus='alert(1)", '&lt;b&gt;', '<!--', ']]>', '\u202egnp.exe', '{shown}', '$&', '`${1}`'];

test('whatever a dealer writes, the page has the same tags and says what he wrote', async () => {
  const written = (some: string) => changedCatalogue((catalogue) => {
    catalogue.dealer.name = some;
    catalogue.rules = { 'mow.per-year': { value: 9, unit: some }, [some]: 3 };
  });
  const plain = skeleton(await pageWith(written('Plain')));
  for (const each of nasty) {
    const hostile = await pageWith(written(each));
    expect(skeleton(hostile)).toEqual(plain);
    expect(/<title>(.*)<\/title>/.exec(hostile)![1]).toBe(escaped(`Rule book of ${each}`));
  }
  // The control: put in as it is, it would show.
  expect(skeleton(page.replace('<title>', `<title>${nasty[1]}`))).not.toEqual(skeleton(page));
});

test('text put into HTML comes out as it went in, and adds no tag', () => {
  fc.assert(fc.property(fc.string({ unit: 'grapheme' }), (text) => {
    const { text: made } = html`<p title="${text}">${text}</p>`;
    const [, title, inside] = /^<p title="([^"<>]*)">([^"'<>]*)<\/p>$/.exec(made)!;
    expect([decode(title!), decode(inside!)]).toEqual([text, text]);
  }));
  expect(escaped('a\u0000b\u001bc\u202ed')).toBe('a\ufffdb\ufffdc\ufffdd');
});
