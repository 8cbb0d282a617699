/**
 * Text that strangers wrote, made harmless to set among our own: it can't turn the direction of what stands
 * around it, hide letters, pile marks over other lines or fill the page.
 */

/** Characters a label may have; more is no label. */
const longestLabel = 2_000;
/** Marks over and under one letter that are kept; no script writes more. */
const mostMarks = 4;

const control = /(?![\t\n])\p{Cc}/gu;
/** Overrides, embeddings and isolates of direction (UAX #9), and their marks. */
const turning = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/g;
const hidden = /[\u00AD\u180E\u200B\u2060-\u2064\u206A-\u206F\uFEFF\uFFF9-\uFFFB]|[\u{E0000}-\u{E007F}]/gu;
/** Joiners shape letters of other scripts and families of pictures; between Latin letters they only hide. */
const strayJoiner = /(?<![\u0370-\u{10FFFF}])[\u200C\u200D]+|[\u200C\u200D]+(?![\u0370-\u{10FFFF}])/gu;
const piled = new RegExp(`(\\p{M}{${mostMarks}})\\p{M}+`, 'gu');
const rightToLeft = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;
const loneSurrogate = /\p{Cs}/gu;

/**
 * One string, made harmless. What is written from right to left is set in an isolate (FSI … PDI, UAX #9), so
 * that a sentence it stands in keeps its order.
 */
export function plainText(written: string, longest = longestLabel): string {
  const cut = written.length > longest ? `${written.slice(0, longest)}…` : written;
  const bare = cut.replace(loneSurrogate, '\uFFFD').normalize('NFC').replace(control, '').replace(turning, '').replace(hidden, '').replace(strayJoiner, '');
  // Composed again once nothing stands between a letter and its marks any more, and counted once they are in order.
  const plain = bare.normalize('NFC').replace(piled, '$1');
  return rightToLeft.test(plain) ? `\u2068${plain}\u2069` : plain;
}

/**
 * A document with all its texts made harmless; keys stay as they are.
 *
 * @param document  parsed JSON
 * @param whole     keys under which texts may be as long as they are: what the law wants said
 */
export function withPlainText<T>(document: T, whole: readonly string[] = [], longest = longestLabel): T {
  if (typeof document === 'string') return plainText(document, longest) as T;
  if (Array.isArray(document)) return document.map((each: unknown) => withPlainText(each, whole, longest)) as T;
  if (typeof document !== 'object' || document === null) return document;
  return Object.fromEntries(Object.entries(document).map(([key, value]) =>
    [key, withPlainText<unknown>(value, whole, whole.includes(key) ? Infinity : longest)])) as T;
}
