import fc from 'fast-check';
import { expect, test } from 'vitest';
import { wrapped } from '../../src/drawing/svg-parts.ts';
import { lineUpSvg } from '../../src/drawing/svg.ts';
import { runs } from '../support/arbitraries.ts';
import { anyMachines, anySheet, anyThings, draw, elements, fullMachine, hasClass, m, parsed, plainWords, svgOf } from './drawn.ts';

const ids = (svg: string) => elements(parsed(svg), (element) => element.hasAttribute('id')).map((element) => element.getAttribute('id')!);

test('whatever the words are, the picture is well-formed and says them', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 30 }), fc.constantFrom('<b>', '&amp;', '"', "'", ']]>', '\u0000', '\ud800', '<!--'), (any, sign) => {
    const said = `${any}${sign}x`;
    const words = { ...plainWords, title: said, length: () => said, legend: { assumed: said, room: said }, machine: () => ({ name: said, standing: said, description: said }) };
    const document = parsed(lineUpSvg(draw([fullMachine], { land: { gate: m(2) } }, { view: 'rear' }), { words, prefix: 'p' }));
    expect(elements(document, ({ tagName }) => !['svg', 'g', 'title', 'desc', 'path', 'circle', 'text'].includes(tagName))).toEqual([]);
    expect(document.getElementsByTagName('desc')[2]!.textContent).toContain(sign === '\u0000' || sign === '\ud800' ? 'x' : `${sign}x`);
  }), runs(150));
});

test('the same line-up gives the same bytes, and no number has more than two digits', () => {
  fc.assert(fc.property(anyMachines(0, 5), anyThings, anySheet, (machines, said, sheet) => {
    const svg = svgOf(draw(machines, said, sheet));
    expect(svgOf(draw(structuredClone(machines), structuredClone(said), sheet))).toBe(svg);
    expect(svg.replace(/>[^<]*</g, '><')).not.toMatch(/\d\.\d{3}|\de[-+]/);
  }), runs(60));
});

test('ids carry the caller’s prefix, are there once, and every label that is pointed to is there', () => {
  const lineUp = draw([fullMachine, { ...fullMachine, id: 'other' }], { land: { gate: m(2) } });
  const [one, two] = ['one', 'two'].map((prefix) => lineUpSvg(lineUp, { words: plainWords, prefix }));
  const all = [...ids(one!), ...ids(two!)];
  expect(new Set(all).size).toBe(all.length);
  expect(ids(one!).filter((id) => !id.startsWith('one-'))).toEqual([]);
  const pointed = elements(parsed(one!), (element) => element.hasAttribute('aria-labelledby')).flatMap((element) => [element.getAttribute('aria-labelledby')!, element.getAttribute('aria-describedby')!]);
  expect(pointed.length).toBeGreaterThanOrEqual(8);
  expect(pointed.filter((id) => !ids(one!).includes(id))).toEqual([]);
});

test('each machine is a picture with a name, a standing and a description of its own', () => {
  const words = { ...plainWords, machine: () => ({ name: 'Rill', standing: 'ruled out', description: 'Your gate is too narrow for it.' }) };
  const [machine] = elements(parsed(lineUpSvg(draw([fullMachine]), { words, prefix: 'a' })), (element) => hasClass(element, 'machine'));
  expect(machine!.getAttribute('role')).toBe('img');
  expect(machine!.getElementsByTagName('title')[0]!.textContent).toBe('Rill: ruled out');
  expect(machine!.getElementsByTagName('desc')[0]!.textContent).toBe('Your gate is too narrow for it.');
});

test('every machine is reached by keyboard, the buyer’s things are not, and on paper nothing is', () => {
  const lineUp = draw([fullMachine, { ...fullMachine, id: 'other' }], { land: { gate: m(2) } });
  const stops = (svg: string) => elements(parsed(svg), (element) => element.hasAttribute('tabindex')).map((element) => `${element.getAttribute('id')} ${element.getAttribute('tabindex')}`);
  expect(stops(svgOf(lineUp))).toEqual(['a-machine-full 0', 'a-machine-other 0']);
  expect(stops(lineUpSvg(lineUp, { words: plainWords, prefix: 'a', standalone: true }))).toEqual([]);
});

test.each([280, 390, 800])('what dashes and thin lines mean is told to the last word, within %d pixels', (width) => {
  const legend = { assumed: 'Dashed: not given, drawn as such machines mostly are built, as far as anybody knows', room: 'Thin lines: room left on each side' };
  const lineUp = draw([{ ...fullMachine, wheelbase: undefined } as unknown as typeof fullMachine], { land: { gate: m(2) } }, { view: 'rear', width });
  const svg = parsed(lineUpSvg({ ...lineUp, legend: ['assumed', 'room'] }, { words: { ...plainWords, legend }, prefix: 'a' }));
  const notes = elements(svg, (element) => hasClass(element, 'note'));
  expect(notes.map((note) => note.textContent).join(' ')).toBe(`${legend.assumed} ${legend.room}`);
  const [high, wide] = ['height', 'width'].map((side) => Number(svg.documentElement!.getAttribute(side)));
  for (const note of notes) {
    expect(Number(note.getAttribute('y'))).toBeLessThan(high!);
    // A letter of the text at 12 px is nowhere wider than 0.6 of that on average.
    expect(Number(note.getAttribute('x')) + note.textContent!.length * 7.2).toBeLessThanOrEqual(wide!);
  }
});

test('colours come from the page: no colour and no style stands in the picture, unless it stands alone', () => {
  const lineUp = draw([fullMachine], { land: { gate: m(2) } }, { view: 'rear' });
  expect(svgOf(lineUp)).not.toMatch(/style|#[0-9a-f]{3}|rgb|fill=|stroke=/i);
  const alone = lineUpSvg(lineUp, { words: plainWords, prefix: 'a', standalone: true });
  expect(parsed(alone).getElementsByTagName('style')).toHaveLength(1);
});

test.each([
  ['Burdock, second series', 100, 2, ['Burdock,', 'second series']],
  ['Rill', 100, 2, ['Rill']],
  ['one two three four five six', 60, 2, ['one two', 'three …']],
  ['Unpronounceably-long-name', 60, 2, ['Unprono…']],
])('%s on %f pixels', (name, width, lines, expected) => {
  const broken = wrapped(name, width, 12, lines);
  expect(broken.length).toBeLessThanOrEqual(lines);
  expect(broken).toEqual(expected);
});
