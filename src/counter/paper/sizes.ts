/** Sheets there are in printers, upright, in millimetres (ISO 216; ANSI/ASME Y14.1, size A), by what CSS calls them. */
export const sheets = {
  a4: { size: 'A4', width: 210, height: 297 },
  letter: { size: 'letter', width: 215.9, height: 279.4 },
} as const;

export type SheetSize = keyof typeof sheets;

export const millimetresAnInch = 25.4;
/** CSS pixels to the inch, by definition (CSS Values and Units, section 6.2). */
export const pixelsAnInch = 96;
export const toPixels = (millimetres: number) => (millimetres * pixelsAnInch) / millimetresAnInch;

/** Millimetres on each side that most printers can't print on, with some to spare. */
export const margin = 10;
/** Of a page, for its foot. */
export const footHeight = 6;
/** Between two columns. */
export const columnGap = 6;
/** Kept free on each page: a printer's letters may run a little wider than a screen's, and break a line once more. */
const spare = 5;
/** A page a hair too high would be followed by an empty one. */
const hair = 1;

/** What is left of a sheet within its margins [mm]; `room` is how much of its height can be told on. */
export function insideOf(size: SheetSize) {
  const { width, height } = sheets[size];
  const inside = height - 2 * margin - hair;
  return { width: width - 2 * margin, height: inside, room: inside - footHeight - spare };
}
