/** Columns of a terminal, and of a sheet printed from one. */
const columns = 80;

const segments = new Intl.Segmenter('en', { granularity: 'grapheme' });
/** Characters a terminal draws two columns wide: those of East Asia, and pictures. */
const wide = /^[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}\u{20000}-\u{3fffd}]/u;

/** Columns a text takes on a terminal. */
export const widthOf = (text: string) => {
  let width = 0;
  for (const { segment } of segments.segment(text)) width += wide.test(segment) ? 2 : 1;
  return width;
};

/** Control and formatting characters: a name from a catalogue must not move the cursor, colour a line or reorder it. */
const unprintable = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu;
const noBreak = /\u00a0|\u202f/g;

/** Text broken at blanks; a no-break space holds an amount and its unit together and is then an ordinary one. */
export function paragraph(text: string, indent = 0, first = ' '.repeat(indent)): string[] {
  const margin = ' '.repeat(indent);
  const lines: string[] = [];
  let line = '';
  for (const word of text.replace(unprintable, ' ').split(/ +/).filter((each) => each !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && indent + widthOf(longer) > columns) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line].map((each, index) => `${index === 0 ? first : margin}${each}`.replace(noBreak, ' ').trimEnd());
}

/** A paragraph behind a mark, its later lines under its first word. */
export const item = (mark: string, text: string, indent = 0) =>
  paragraph(text, indent + mark.length + 1, `${' '.repeat(indent)}${mark} `);

export const heading = (text: string) => {
  const lines = paragraph(text);
  return ['', ...lines, '-'.repeat(Math.max(...lines.map(widthOf)))];
};

/** Rows whose cells stand below each other; the first column from the left, the others from the right. */
export function table(rows: readonly (readonly string[])[], indent = 0): string[] {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => widthOf(row[column] ?? ''))));
  const padded = (cell: string, column: number) => {
    const blank = ' '.repeat(widths[column]! - widthOf(cell));
    return column === 0 ? cell + blank : blank + cell;
  };
  return rows.map((row) => `${' '.repeat(indent)}${row.map(padded).join('  ')}`.replace(noBreak, ' ').trimEnd());
}
