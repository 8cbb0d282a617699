import { expect, test } from 'vitest';
import { sources } from '../support/sources.ts';

// What a stranger writes is shown on a dealer's page, so text becomes markup nowhere, and styles follow the direction of the reader.

const widget = sources().filter(({ file }) => file.startsWith('widget/'));

/** Ways by which a text becomes markup or code. */
const risky = /\b(?:unsafeHTML|unsafeStatic|innerHTML|outerHTML|insertAdjacentHTML|setHTMLUnsafe|document\.write|createContextualFragment|eval|Function)\b\s*[(=`]|import[^;]*unsafe-html/;
/** Drawings of our own, made of geometry and of texts that are escaped; nothing of theirs is drawn from markup. */
const drawn = ['widget/hand-on/code.ts', 'widget/line-up.ts', 'widget/picture.ts', 'widget/unit/compare.ts'];

const lines = (pattern: RegExp, among = widget) => among.flatMap(({ file, text }) => text.split('\n').flatMap((line, index) => (pattern.test(line) ? [`${file}:${index + 1} ${line.trim()}`] : [])));

test('nowhere in the widget does a text become markup or code', () => {
  expect(widget.length).toBeGreaterThan(25);
  expect(lines(risky)).toEqual([]);
  expect([...new Set(lines(/\bunsafeSVG\(/).map((line) => line.split(':')[0]))].sort()).toEqual(drawn);
});

test('control: what would be one is found', () => {
  const text = 'x.innerHTML = y;\nunsafeHTML(z);\nnew Function (a);\nconst fine = unsafeCSS(b);';
  expect(lines(risky, [{ file: 'control.ts', text }] as unknown as typeof widget)).toHaveLength(3);
});

test('no style names left or right: a host may read the other way', () => {
  const looks = widget.filter(({ file }) => file.endsWith('look.ts'));
  expect(looks).toHaveLength(5);
  expect(lines(/(?:^|[\s;{-])(?:left|right)\s*:|(?:margin|padding|border)-(?:left|right)|(?:text-align|float):\s*(?:left|right)/, looks)).toEqual([]);
});
