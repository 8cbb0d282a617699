import type { RuleBook } from '../trade/book.ts';
import { factors } from '../units/quantity.ts';
import type { Measure } from './shape.ts';

export interface TyreSize {
  diameter?: Measure;
  width?: Measure;
}

const { in: inch, mm } = factors.length;
const given = (value: number): Measure => ({ value, assumed: false });
const number = String.raw`(\d+(?:[.,]\d+)?)`;
const pattern = (text: string) => new RegExp(text, 'i');
const numberOf = (text: string | undefined) => Number((text ?? '').replace(',', '.'));

/** "43 in tall, 14 in wide": somebody measured. */
const measured = (word: string) => pattern(String.raw`${number}\s*(in|mm|cm|m|ft)\.?\s+${word}`);
const [tall, wide] = [measured('tall'), measured('wide')];
/** 280/70R18, 15.0/55-17: width, height of the section in percent of it, rim in inches. */
const withSection = pattern(String.raw`${number}\s*/\s*(\d{2,3})\s*[-RBD]\s*${number}`);
/** 26x12.00-12, 16x4: overall diameter, then width. */
const withDiameter = pattern(String.raw`${number}\s*[x×]\s*${number}(?:\s*[-R]\s*${number})?`);
/** 11.2-24, 11.2x24, 17.5L-24: width, then rim; the height of the section is not said. */
const withoutSection = pattern(String.raw`${number}\s*(L?)\s*[-Rx×]\s*${number}`);

const metres = (match: RegExpMatchArray | null) =>
  match ? given(numberOf(match[1]) * factors.length[match[2]!.toLowerCase() as 'in']) : undefined;

/** What is said of one axle's tyres: a size without a word which is that of the rear ones. */
function partOf(size: string, axle: 'front' | 'rear') {
  const parts = size.split(/(?=\b(?:front|rear)\b)/i);
  const named = parts.find((part) => part.toLowerCase().startsWith(axle));
  return named ?? (axle === 'rear' && !/\b(?:front|rear)\b/i.test(size) ? size : undefined);
}

/**
 * Diameter and width of a tyre from what its size says. Where the designation leaves the height of the section
 * open the diameter is assumed.
 * @example readTyre('rear 280/70R18', 'rear', book) // diameter 0.849 m, width 0.28 m
 */
export function readTyre(size: string | undefined, axle: 'front' | 'rear', book: RuleBook): TyreSize {
  const text = size && partOf(size, axle);
  if (!text) return {};
  const [diameter, width] = [metres(text.match(tall)), metres(text.match(wide))];
  if (diameter || width) return { ...(diameter && { diameter }), ...(width && { width }) };

  const section = text.match(withSection);
  if (section) {
    const across = numberOf(section[1]);
    // Widths in millimetres have three digits, those in inches two at most.
    const broad = across * (across >= 100 ? mm : inch);
    return { diameter: given(numberOf(section[3]) * inch + (2 * broad * numberOf(section[2])) / 100), width: given(broad) };
  }
  const overall = text.match(withDiameter);
  if (overall && (overall[3] !== undefined || numberOf(overall[1]) > numberOf(overall[2]))) {
    return { diameter: given(numberOf(overall[1]) * inch), width: given(numberOf(overall[2]) * inch) };
  }
  const plain = text.match(withoutSection);
  if (!plain) return {};
  const [broad, rim] = [numberOf(plain[1]) * inch, numberOf(plain[3])];
  const low = plain[2] !== '' || !Number.isInteger(rim);
  const share = low ? book.value('drawing.tyre-section-low') : book.value('drawing.tyre-section');
  return { diameter: { value: rim * inch + 2 * broad * share, assumed: true }, width: given(broad) };
}
