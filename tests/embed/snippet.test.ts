import { DOMParser } from '@xmldom/xmldom';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { policyFor, snippet, type Embedding } from '../../src/embed/snippet.ts';

const embedding = (over: Partial<Embedding> = {}): Embedding => ({
  script: 'https://scripts.example/acre-to-axle/1.0.0/acre-to-axle.de.js', integrity: 'sha384-abc', attributes: { catalogue: '/catalogue.json' }, fallback: [{ text: 'Call us' }], ...over,
});

/** The snippet as another parser reads it: every attribute is quoted and every element ended, so that one of XML can. */
function parsed(html: string) {
  const document = new DOMParser().parseFromString(`<page>${html}</page>`, 'text/xml');
  const all = (name: string) => [...document.getElementsByTagName(name)];
  return { script: all('script')[0]!, tag: all('acre-to-axle')[0]!, paragraphs: all('p'), links: all('a'), elements: all('*').length };
}

// What a text of XML can hold at all: attributes turn a line's end into a blank, and it has no control characters.
const text = fc.string({ unit: 'grapheme', minLength: 1 }).filter((each) => /^[\x20-\x7e\u00a0-\ud7ff]+$/.test(each));

test('a module script with its hash, checked across hosts, and the tag with what stands in it without script', () => {
  const { script, tag, paragraphs, links } = parsed(snippet(embedding({ fallback: [{ text: 'Call us' }, { text: 'Our lot', href: '/lot' }] })));
  expect(['type', 'src', 'integrity', 'crossorigin'].map((name) => script.getAttribute(name))).toEqual(['module', embedding().script, 'sha384-abc', 'anonymous']);
  expect(tag.getAttribute('catalogue')).toBe('/catalogue.json');
  expect([paragraphs.map((each) => each.textContent), links.map((each) => each.getAttribute('href'))]).toEqual([['Call us', 'Our lot'], ['/lot']]);
});

test('without a hash neither the hash nor what asks for it; an attribute without a value is left out', () => {
  const html = snippet(embedding({ integrity: undefined, attributes: { catalogue: '/c.json', units: undefined } }));
  expect(html).not.toMatch(/integrity|crossorigin|units/);
});

test('whatever a dealer types stays text', () => {
  fc.assert(fc.property(text, text, text, (value, said, href) => {
    const { tag, paragraphs, links, elements } = parsed(snippet(embedding({ attributes: { catalogue: value }, fallback: [{ text: said, href }] })));
    expect([tag.getAttribute('catalogue'), paragraphs[0]!.textContent, links[0]!.getAttribute('href'), elements]).toEqual([value, said, href, 5]);
  }));
});

test('a catalogue in the tag reads back the same, and nothing it says ends or hides the script it stands in', () => {
  // WHATWG HTML, 4.12.1.3: what begins with <!-- or <script or </script changes how the rest is read.
  const hostile = fc.oneof(fc.string(), fc.constantFrom('</script><img src=x onerror=alert(1)>', '<!--<script>', '-->', '</SCRIPT >'));
  fc.assert(fc.property(hostile, (name) => {
    const html = snippet(embedding({ attributes: {}, catalogue: JSON.stringify({ name }) }));
    const [, inside = ''] = /<script type="application\/json">(.*?)<\/script>/s.exec(html) ?? [];
    expect(inside).not.toContain('<');
    expect(JSON.parse(inside)).toEqual({ name });
  }));
});

test('the policy names the hosts there are, and the second policy of Trusted Types only where words are loaded by hash', () => {
  expect(policyFor({ script: 'https://scripts.example/a.js', catalogue: 'https://dealer.example/catalogue.json', ownFile: true })).toBe(
    "script-src https://scripts.example; style-src 'self'; connect-src https://dealer.example; require-trusted-types-for 'script'; trusted-types lit-html acre-to-axle",
  );
  expect(policyFor({ script: '/widget/acre-to-axle.js', catalogue: '/catalogue.json', ownFile: false })).toBe(
    "script-src 'self'; style-src 'self'; connect-src 'self'; require-trusted-types-for 'script'; trusted-types lit-html",
  );
});
