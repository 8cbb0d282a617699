import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mailUrl, phoneUrl, safeUrl } from '../../src/widget/safe-url.ts';

// Ways to write an address that isn't what it seems: after the URL Standard (WHATWG), which drops tabs and line breaks, trims
// blanks and controls, and takes schemes in any case.

test.each([
  'https://dealer.example/units/7?photo=1#top', 'mailto:yard@dealer.example', 'tel:+15555550142', 'http://localhost:8080/x', 'http://127.0.0.1/x', 'HTTPS://DEALER.EXAMPLE/',
])('%s is followed', (written) => expect(safeUrl(written)).toBe(new URL(written).href));

test.each([
  'javascript:alert(1)', 'JaVaScRiPt:alert(1)', ' javascript:alert(1)', '\u0001javascript:alert(1)', 'java\tscript:alert(1)', 'java\nscript:alert(1)', 'javascript\t:alert(1)',
  'javascript://dealer.example/%0aalert(1)', 'data:text/html,<script>alert(1)</script>', 'data:image/svg+xml,<svg onload=alert(1)>', 'blob:https://dealer.example/7', 'vbscript:msgbox(1)',
  'file:///etc/passwd', 'ftp://dealer.example/', '//evil.example/x', '/units/7', 'units/7', '', 'https://', 'http://dealer.example/', 'http://localhost.evil.example/',
  'https://user:pw@dealer.example/', 'https://user@dealer.example/', 'https://dealer.example@evil.example/', 'https://dealer.example/a b', 'https://dealer.example/\u0000',
  'https://dealer.example/\u2028', `https://dealer.example/${'x'.repeat(2_000)}`, 'view-source:https://dealer.example/', 'intent://x#Intent;scheme=javascript;end',
])('%j is not', (written) => expect(safeUrl(written)).toBeUndefined());

test.each(['mailto:yard@dealer.example', 'tel:+15555550142', 'data:image/png;base64,AAAA', 'blob:https://dealer.example/7'])('%s is no picture', (written) => {
  expect(safeUrl(written, 'picture')).toBeUndefined();
});

test('whatever is written, what comes out leads to a place by one of the schemes, with no credentials', () => {
  const scheme = fc.constantFrom('https:', 'http:', 'javascript:', 'data:', 'java\tscript:', 'mailto:', 'tel:', '', '//', 'https:/', ' https://');
  fc.assert(fc.property(scheme, fc.string({ unit: 'binary' }), (start, rest) => {
    const url = safeUrl(`${start}${rest}`);
    if (url === undefined) return;
    const { protocol, username, password, hostname } = new URL(url);
    expect(['https:', 'mailto:', 'tel:', 'http:']).toContain(protocol);
    if (protocol === 'http:') expect(['localhost', '127.0.0.1', '[::1]']).toContain(hostname);
    expect(username + password).toBe('');
    expect(url.length).toBeLessThan(7_000);
  }), { numRuns: 5_000 });
});

test.each([
  ['yard@dealer.example', 'mailto:yard@dealer.example'],
  ['yard+used@dealer.example', 'mailto:yard%2Bused@dealer.example'],
  ['yard@dealer.example?bcc=all@evil.example', undefined],
  ['yard@dealer.example&cc=x@evil.example', undefined],
  ['yard@dealer.example,x@evil.example', undefined],
  ['yard@dealer.example\nbcc:x@evil.example', undefined],
  ['not an address', undefined],
  [undefined, undefined],
])('mail to %j goes to %j', (address, url) => expect(mailUrl(address)).toBe(url));

test.each([['555-555-0142', 'tel:5555550142'], ['+1 (555) 555-0142', 'tel:+15555550142'], ['call us', undefined], ['javascript:1', 'tel:1']])('%j is called as %j', (number, url) => {
  expect(phoneUrl(number)).toBe(url);
});
