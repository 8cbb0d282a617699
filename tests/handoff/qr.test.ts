import { DOMParser } from '@xmldom/xmldom';
import jsqr from 'jsqr';
import { describe, expect, test } from 'vitest';
import { linkTo, readHandedOn } from '../../src/handoff/link.ts';
import { pack } from '../../src/handoff/pack.ts';
import { qrSvg } from '../../src/handoff/qr.ts';
import { buyers } from './buyers.ts';

const page = 'https://www.dealer-of-used-tractors.example/used-tractors/';
const pixelsAModule = 4;

/** Reads the picture as a browser draws it: its white, and each strip of its path. */
function drawn(svg: string) {
  const root = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement!;
  const side = Number(root.getAttribute('viewBox')!.split(' ')[2]);
  const dark = new Set<number>();
  const path = root.getElementsByTagName('path')[0]!.getAttribute('d')!;
  const strips = [...path.matchAll(/M(\d+) (\d+)h(\d+)v1H(\d+)z/g)];
  expect(strips.map(([all]) => all).join('')).toBe(path);
  for (const [, x, y, width] of strips) for (let at = 0; at < Number(width); at++) dark.add(Number(y) * side + Number(x) + at);
  return { root, side, isDark: (x: number, y: number) => dark.has(y * side + x) };
}

/** The picture in pixels, with a part of it dirty, as a camera would hand it on. */
function scanned(svg: string, isDirty: (x: number, y: number) => boolean = () => false) {
  const { side, isDark } = drawn(svg);
  const wide = side * pixelsAModule;
  const pixels = new Uint8ClampedArray(wide * wide * 4).fill(255);
  for (let y = 0; y < wide; y++) for (let x = 0; x < wide; x++) {
    const [column, row] = [Math.floor(x / pixelsAModule), Math.floor(y / pixelsAModule)];
    if (isDark(column, row) || isDirty(column, row)) pixels.fill(0, (y * wide + x) * 4, (y * wide + x) * 4 + 3);
  }
  return jsqr(pixels, wide, wide)?.data;
}

const codeOf = (text: string) => qrSvg(text, 'Your answers')!;

describe('another library reads from the picture', () => {
  test.each(buyers)('the answers of the buyer $name', ({ answers }) => {
    const link = linkTo(page, pack(answers))!;
    const read = scanned(codeOf(link));
    expect(read).toBe(link);
    expect(readHandedOn(read!)).toEqual({ answers });
  });

  test.each(['https://höfe.example/träger?a=🚜#a1=x', `${page}#${'a'.repeat(800)}`])('the address %s', (address) => {
    const read = scanned(codeOf(address))!;
    expect(new URL(read).href).toBe(new URL(address).href);
  });

  test('a code of which a part is dirty', () => {
    const link = linkTo(page, pack(buyers[2]!.answers))!;
    const svg = codeOf(link);
    expect(scanned(svg, (x, y) => x > 17 && x < 24 && y > 17 && y < 24)).toBe(link);
  });

  test('control: it reads nothing of a code that is half covered', () => {
    expect(scanned(codeOf(page), (_x, y) => y > 16)).toBeUndefined();
  });
});

test('four modules of white stand around the code (ISO/IEC 18004)', () => {
  const { side, isDark } = drawn(codeOf(page));
  const places = Array.from({ length: side }, (_, place) => place);
  const dark = places.flatMap((y) => places.filter((x) => isDark(x, y)).map((x) => [x, y] as const));
  const all = dark.flat();
  expect([Math.min(...all), Math.max(...all)]).toEqual([4, side - 5]);
  // 4 × version + 17 modules a side.
  expect((side - 8 - 17) % 4).toBe(0);
});

test('whoever can’t see it is told what it is, whatever stands in the title', () => {
  const { root } = drawn(qrSvg(page, '"/><script>alert(1)</script> & ‘more’\u0000')!);
  expect([root.getAttribute('role'), root.getAttribute('aria-label')]).toEqual(['img', '"/><script>alert(1)</script> & ‘more’']);
  expect(root.getElementsByTagName('title')[0]!.textContent).toBe('"/><script>alert(1)</script> & ‘more’');
  expect([...root.childNodes].map(({ nodeName }) => nodeName)).toEqual(['title', 'rect', 'path']);
});

test('what no code holds gives none', () => expect(qrSvg('x'.repeat(3000), 'Your answers')).toBeUndefined());
