import { answersFormat } from '../answers/names.ts';
import { readAnswers } from '../answers/read-answers.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import { carried, type LeftOut } from './carried.ts';
import { codeDocument } from './code.ts';
import { crc16 } from './crc-16.ts';
import { record, type Keys } from './fields.ts';
import { layout1 } from './layout-1.ts';
import { even, reader, writer } from './numeral.ts';
import type { Refusal } from './refusal.ts';

/** Every layout there is, oldest first; answers are packed with the newest. */
export const layouts: readonly Keys[] = [layout1];

/** Layouts that can ever be told apart: the first choice of every packed document, whatever else it holds. */
const mostLayouts = 16;
const versions = even(mostLayouts);
const byte = 256n;

export interface Packed {
  /** What is handed on: the answers, compact, with the number of their layout and a check. */
  bytes: readonly number[];
  leftOut: readonly LeftOut[];
}

/** A number's bytes, the greatest first. */
function bytesOf(numeral: bigint): number[] {
  const bytes: number[] = [];
  for (let rest = numeral; rest > 0n; rest /= byte) bytes.push(Number(rest % byte));
  return bytes.reverse();
}

const withCheck = (bytes: readonly number[]) => {
  const check = crc16(bytes);
  return [...bytes, check >> 8, check & 0xff];
};

/**
 * Answers as bytes. Numbers keep every digit and every unit. What a layout doesn't carry, keys nobody knows and
 * texts somebody wrote, is left out and told. Never throws.
 *
 * @param known  layouts, of which the last is used
 */
export function pack(answers: AnswersDocument, known: readonly Keys[] = layouts): Packed {
  const { format: _format, ...said } = answers;
  const keys = known.at(-1)!;
  const { value, leftOut } = carried(record(keys), said, []);
  const coder = writer();
  coder.choose(versions, known.length);
  codeDocument(keys, coder, value as Readonly<Record<string, unknown>>);
  return { bytes: withCheck(bytesOf(coder.numeral())), leftOut };
}

export type Unpacked = { answers: AnswersDocument } | { refused: Refusal };

const refused = (code: 'damaged' | 'newer' | 'not-understood'): Unpacked => ({ refused: { code } });

/** The answers behind bytes, or why there are none. Never throws. */
export function unpack(bytes: readonly number[], known: readonly Keys[] = layouts): Unpacked {
  const numeral = bytes.slice(0, -2);
  const check = bytes.at(-2)! * Number(byte) + bytes.at(-1)!;
  if (numeral.length === 0 || numeral[0] === 0 || check !== crc16(numeral)) return refused('damaged');
  const coder = reader(numeral.reduce((all, each) => all * byte + BigInt(each), 0n));
  const version = coder.choose(versions, undefined);
  if (version > known.length) return refused('newer');
  if (version === 0) return refused('damaged');
  const said = codeDocument(known[version - 1]!, coder, undefined);
  if (!coder.isSpent()) return refused('damaged');
  const { value } = readAnswers({ format: answersFormat, ...said });
  return value ? { answers: value } : refused('not-understood');
}
