import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { materials, species } from '../../src/answers/questions.ts';
import { checkAnswers } from '../../src/answers/read-answers.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { codeDocument } from '../../src/handoff/code.ts';
import { crc16 } from '../../src/handoff/crc-16.ts';
import { layout1 } from '../../src/handoff/layout-1.ts';
import { even, reader, writer } from '../../src/handoff/numeral.ts';
import { layouts, pack, unpack } from '../../src/handoff/pack.ts';
import { toBytes, toSigns } from '../../src/handoff/signs.ts';
import { anyAnswers, aMinute, runs } from '../support/arbitraries.ts';
import { anyCarried } from './any-carried.ts';
import { buyers } from './buyers.ts';

const said = (answers: object) => ({ format: 'acre-to-axle/answers/1', ...answers }) as AnswersDocument;
const handedOn = (answers: AnswersDocument) => unpack(pack(answers).bytes);

describe('what is handed on comes back the same', () => {
  test.each(buyers)('of the buyer $name', ({ answers }) => {
    expect(pack(answers).leftOut).toEqual([]);
    expect(handedOn(answers)).toEqual({ answers });
  });

  test.each(['first-acre', 'hay-and-barn', 'steep-and-careful'])('of the demo %s', (name) => {
    const answers = JSON.parse(readFileSync(`demo/answers/${name}.json`, 'utf8')) as AnswersDocument;
    expect(pack(answers).leftOut).toEqual([]);
    expect(handedOn(answers)).toEqual({ answers });
  });

  test('of any buyer, but for materials and species nobody lists', () => {
    fc.assert(fc.property(anyAnswers, (answers) => {
      const tasks = answers.tasks?.map((task) => {
        const { material, species: wood, ...rest } = task as typeof task & { material?: string; species?: string };
        return { ...rest, ...(material && (materials as readonly string[]).includes(material) && { material }), ...(wood && (species as readonly string[]).includes(wood) && { species: wood }) };
      });
      expect(handedOn(answers)).toEqual({ answers: { ...answers, ...(tasks && { tasks }) } });
    }), runs(400));
  }, aMinute);

  test('of whatever a layout carries: any unit, any number to its last digit, any list in any order', () => {
    fc.assert(fc.property(anyCarried(layout1), (answers) => {
      const { bytes, leftOut } = pack(answers);
      expect(leftOut).toEqual([]);
      expect(unpack(bytes)).toEqual({ answers });
    }), runs(400));
  }, aMinute);

  test.each([0, 5e-324, Number.MIN_VALUE, 2.2250738585072014e-308, 0.1, 1 / 3, 6.66666666667, 1.33333333333, 123_456_789.123, 2 ** 53 - 1, 2 ** 53, 1e21, 1e308, Number.MAX_VALUE])('of the number %d', (value) => {
    const answers = said({ land: { gate: { value, unit: 'ft' } }, budget: { hoursPerYear: value } });
    expect(handedOn(answers)).toEqual({ answers });
  });

  test('nothing said, and empty parts, are told apart', () => {
    for (const answers of [said({}), said({ tasks: [] }), said({ land: {}, tasks: [] }), said({ comfort: { must: [] }, owned: [{}] })]) expect(handedOn(answers)).toEqual({ answers });
  });
});

describe('what is left out is told, and never handed on', () => {
  test.each<[string, object, object[], object]>([
    ['a key nobody knows', { land: { colour: 'green', gate: { value: 6, unit: 'ft' } } }, [{ place: 'land.colour', why: 'unknown' }], { land: { gate: { value: 6, unit: 'ft' } } }],
    ['a key that is free for anyone', { 'x-note': 'call Ann', tasks: [{ task: 'dig', 'x-by': 1 }] }, [{ place: 'x-note', why: 'unknown' }, { place: 'tasks[0].x-by', why: 'unknown' }], { tasks: [{ task: 'dig' }] }],
    ['a postal code', { haul: { how: 'hire', delivery: '90210' } }, [{ place: 'haul.delivery', why: 'written' }], { haul: { how: 'hire' } }],
    ['what is traded in', { budget: { firm: true, tradeIn: { kind: 'Ann’s old one', owed: { value: 900, currency: 'USD' } } } }, [{ place: 'budget.tradeIn', why: 'written' }], { budget: { firm: true } }],
    ['names of what is owned', { owned: [{ id: 'anns', name: 'Ann’s mower', kind: 'finish-mower', attachmentInterface: 'hers' }] },
      [{ place: 'owned[0].id', why: 'written' }, { place: 'owned[0].name', why: 'written' }, { place: 'owned[0].attachmentInterface', why: 'written' }], { owned: [{ kind: 'finish-mower' }] }],
    ['a material nobody lists', { tasks: [{ task: 'move-loose', material: 'what is in the shed' }] }, [{ place: 'tasks[0].material', why: 'written' }], { tasks: [{ task: 'move-loose' }] }],
    ['a task of a newer version', { tasks: [{ task: 'rake-leaves' }, { task: 'dig' }] }, [{ place: 'tasks[0]', why: 'unknown' }], { tasks: [{ task: 'dig' }] }],
    ['a question of a newer version', { unsure: ['looks', 'deck'] }, [{ place: 'unsure[0]', why: 'written' }], { unsure: ['deck'] }],
    ['a unit nobody knows', { land: { gate: { value: 1, unit: 'rod' } } }, [{ place: 'land.gate', why: 'unknown' }], { land: {} }],
    ['more beside an amount', { land: { gate: { value: 1, unit: 'm', note: 'by the oak' } } }, [{ place: 'land.gate.note', why: 'unknown' }], { land: { gate: { value: 1, unit: 'm' } } }],
    ['a number that is none', { budget: { hoursPerYear: Infinity, keepYears: -1 } }, [{ place: 'budget.hoursPerYear', why: 'unknown' }, { place: 'budget.keepYears', why: 'unknown' }], { budget: {} }],
    ['names of an object’s own', { constructor: { prototype: 1 }, tasks: [{ task: 'toString' }] }, [{ place: 'constructor', why: 'unknown' }, { place: 'tasks[0]', why: 'unknown' }], { tasks: [] }],
  ])('%s', (_what, written, leftOut, rest) => {
    const packed = pack(said(written));
    expect(packed.leftOut).toEqual(leftOut);
    expect(unpack(packed.bytes)).toEqual({ answers: said(rest) });
  });

  test('whatever stands where an answer should be', () => {
    const keys = ['land', 'tasks', 'owned', 'budget', 'comfort', 'priorities', 'unsure', 'haul'] as const;
    fc.assert(fc.property(fc.constantFrom(...keys), fc.anything(), (key, value) => {
      const { bytes } = pack(said({ [key]: value }));
      const unpacked = unpack(bytes);
      if ('answers' in unpacked) expect(checkAnswers(unpacked.answers)).toEqual([]);
      else expect(unpacked.refused.code).toBe('not-understood');
    }), runs(400));
  });
});

describe('bytes that were never packed', () => {
  test('are refused, or are answers without a fault; nothing throws', () => {
    let through = 0;
    fc.assert(fc.property(fc.uint8Array({ maxLength: 60 }), (some) => {
      const numeral = [...some];
      const check = crc16(numeral);
      const unpacked = unpack([...numeral, check >> 8, check & 0xff]);
      if (!('answers' in unpacked)) return;
      through++;
      expect(checkAnswers(unpacked.answers)).toEqual([]);
      expect(handedOn(unpacked.answers)).toEqual(unpacked);
    }), runs(1000));
    expect(through).toBeGreaterThan(20);
  }, aMinute);

  test('made to keep a page busy are refused before they do: lists of thousands of nothings', () => {
    const coder = writer();
    const layout = { owned: layout1.owned! };
    coder.choose(even(16), 1);
    codeDocument(layout, coder, { owned: Array.from({ length: 9000 }, () => ({})) });
    const numeral = [...(coder.numeral().toString(16).replace(/^(?=(..)*.$)/, '0').match(/../g) ?? [])].map((pair) => Number(`0x${pair}`));
    expect(numeral.length).toBeLessThan(6000);
    expect(unpack([...numeral, crc16(numeral) >> 8, crc16(numeral) & 0xff], [layout])).toEqual({ refused: { code: 'damaged' } });
  });

  test('are refused as damaged where the check is wrong, as newer where their layout is', () => {
    const { bytes } = pack(said({}));
    expect(unpack([])).toEqual({ refused: { code: 'damaged' } });
    expect(unpack([0, ...bytes])).toEqual({ refused: { code: 'damaged' } });
    expect(unpack([...bytes.slice(0, -1), bytes.at(-1)! ^ 1])).toEqual({ refused: { code: 'damaged' } });
    const later = [layouts.length + 1];
    expect(unpack([...later, crc16(later) >> 8, crc16(later) & 0xff])).toEqual({ refused: { code: 'newer' } });
  });
});

describe('by published figures', () => {
  test('the check of "123456789" is 29B1 (catalogue of parametrised CRC algorithms, CRC-16/IBM-3740)', () => {
    expect(crc16([...'123456789'].map((sign) => sign.codePointAt(0)!))).toBe(0x29b1);
  });

  const base64 = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
  const base32 = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ234567';
  test.each([['', '', ''], ['f', 'Zg', 'MY'], ['fo', 'Zm8', 'MZXQ'], ['foo', 'Zm9v', 'MZXW6'], ['foob', 'Zm9vYg', 'MZXW6YQ'], ['fooba', 'Zm9vYmE', 'MZXW6YTB'], ['foobar', 'Zm9vYmFy', 'MZXW6YTBOI']])('%j in base 64 and 32 (RFC 4648, section 10, without padding)', (text, in64, in32) => {
    const bytes = [...Buffer.from(text)];
    expect([toSigns(bytes, base64, 6), toSigns(bytes, base32, 5)]).toEqual([in64, in32]);
    expect([toBytes(in64, base64, 6), toBytes(in32, base32, 5)]).toEqual([bytes, bytes]);
  });

  test('signs that nobody writes for bytes are none: bits left over, a sign too many (RFC 4648, sections 3.5 and 4)', () => {
    expect([toBytes('Zh', base64, 6), toBytes('Zm9vY', base64, 6), toBytes('MZXW7', base32, 5)]).toEqual([undefined, undefined, undefined]);
  });

  test('bytes as addresses carry them are those of another implementation', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 80 }), (bytes) => toSigns([...bytes], base64, 6) === Buffer.from(bytes).toString('base64url')), runs(300));
  });

  test('choices of even odds are the digits of a mixed-radix number: 3 days 4 h 5 min 6 s are 273,906 s', () => {
    const coder = writer();
    for (const [index, of] of [[6, 60], [5, 60], [4, 24], [3, 7]] as const) coder.choose(even(of), index);
    expect(coder.numeral()).toBe(273_906n);
    const back = reader(273_906n);
    expect([60, 60, 24, 7].map((of) => back.choose(even(of), undefined))).toEqual([6, 5, 4, 3]);
    expect(back.isSpent()).toBe(true);
  });

  test('a thousand choices of 1 in 4 take as many bits as their information: 811.3 (Shannon)', () => {
    const coder = writer();
    for (let each = 0; each < 1000; each++) coder.choose([3, 1], each % 4 === 0 ? 1 : 0);
    expect(coder.numeral().toString(2).length).toBeGreaterThan(805);
    expect(coder.numeral().toString(2).length).toBeLessThan(815);
  });
});
