import papa from 'papaparse';

/** What a spreadsheet would reckon with if it stood first: OWASP ASVS 5.0, 1.2.10, with quotes of ours before it. */
const formulaStart = /^'*[=+\-@\t\r\0]/;
const escapedStart = /^'+[=+\-@\t\r\0]/;

/** A cell as it was before {@link csvOf} put a quote before what looks like a formula. */
export const unescaped = (cell: string) => (escapedStart.test(cell) ? cell.slice(1) : cell);

/**
 * Rows as CSV after RFC 4180: quoted where need be, rows ended by CR LF. A text that a spreadsheet might take for a
 * formula gets a leading quote, which the reading takes away again; numbers stay numbers.
 *
 * @param rows  the headings first, all rows equally long
 */
export function csvOf(rows: readonly (readonly (string | number)[])[], separator: ',' | ';' | '\t' = ','): string {
  return `${papa.unparse(rows, { delimiter: separator, newline: '\r\n', escapeFormulae: formulaStart })}\r\n`;
}
