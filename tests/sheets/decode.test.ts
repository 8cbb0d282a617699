import { expect, test } from 'vitest';
import { decode, limits } from '../../src/sheets/sheets.ts';

const bytes = (...all: number[]) => Uint8Array.from(all);
const utf8 = (text: string) => new TextEncoder().encode(text);
const codes = (found: ReturnType<typeof decode>) => found.findings.map(({ code, weight }) => `${weight} ${code}`);

test('UTF-8 with and without a byte-order mark is one text (Unicode 15, 2.13: the mark is no part of it)', () => {
  for (const mark of ['', '\uFEFF']) {
    const found = decode(utf8(`${mark}id,größe\n`), 'units');
    expect(found).toEqual({ text: 'id,größe\n', encoding: 'utf-8', findings: [] });
  }
});

test.each<[string, number[], 'utf-16le' | 'utf-16be']>([
  ['little-endian', [0xff, 0xfe, 0x69, 0, 0x64, 0, 0xe9, 0], 'utf-16le'],
  ['big-endian', [0xfe, 0xff, 0, 0x69, 0, 0x64, 0, 0xe9], 'utf-16be'],
])('UTF-16, %s, is known by its mark', (_what, all, encoding) => {
  const found = decode(bytes(...all), 'units');
  expect({ ...found, findings: codes(found) }).toEqual({ text: 'idé', encoding, findings: ['notice file.utf-16'] });
});

/** WHATWG Encoding Standard, index-windows-1252: pointers 0 to 31, as its table gives them. */
const index1252 = [
  0x20ac, 0x81, 0x201a, 0x192, 0x201e, 0x2026, 0x2020, 0x2021, 0x2c6, 0x2030, 0x160, 0x2039, 0x152, 0x8d, 0x17d, 0x8f,
  0x90, 0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014, 0x2dc, 0x2122, 0x161, 0x203a, 0x153, 0x9d, 0x17e, 0x178,
];

test('what is no UTF-8 is Windows-1252, every byte of it, with a notice', () => {
  const upper = Array.from({ length: 128 }, (_, index) => 0x80 + index);
  const found = decode(bytes(0x69, 0x64, ...upper), 'units');
  expect(found.encoding).toBe('windows-1252');
  expect(codes(found)).toEqual(['notice file.not-utf-8']);
  expect([...found.text!].slice(2).map((character) => character.codePointAt(0))).toEqual([...index1252, ...upper.slice(32)]);
});

test.each<[string, Uint8Array, string]>([
  ['nothing', bytes(), 'file.empty'],
  ['blanks', utf8(' \r\n\t'), 'file.empty'],
  ['UTF-16 without its mark', bytes(0x69, 0, 0x64, 0), 'file.nul'],
  ['a workbook', bytes(0x50, 0x4b, 3, 4, 0x14, 0, 6, 0), 'file.nul'],
])('%s is refused', (_what, all, code) => {
  const found = decode(all, 'units');
  expect([found.text, codes(found)]).toEqual([undefined, [`fault ${code}`]]);
});

test('a file one byte beyond the limit is refused with the number, one at the limit is not', () => {
  const full = new Uint8Array(limits.bytes).fill(0x61);
  expect(decode(full, 'units').text).toHaveLength(limits.bytes);
  const found = decode(new Uint8Array(limits.bytes + 1).fill(0x61), 'units');
  expect(found.text).toBeUndefined();
  expect(found.findings).toMatchObject([{ code: 'file.too-large', facts: { limit: 20_000_000 }, read: '20000001' }]);
});
