/** Signs a line is broken at; RFC 3676 asks for at most 78 with the blank at its end. */
const widest = 76;

/** A line that would be taken for a quotation, for the start of a mailbox or for a stuffed one is stuffed itself (RFC 3676, section 4.4). */
const stuffed = (line: string) => (/^(?: |>|From )/.test(line) ? ` ${line}` : line);

/**
 * Paragraphs as `format=flowed` (RFC 3676): broken at blanks, with a blank before each break that isn't the writer's,
 * so that a mail program sets them to its own width.
 */
export function flowed(paragraphs: readonly string[]): string[] {
  return paragraphs.flatMap((paragraph) => {
    const lines: string[] = [];
    let line = '';
    for (const word of paragraph.split(/ +/).filter((each) => each !== '')) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (line !== '' && longer.length > widest) {
        lines.push(`${line} `);
        line = word;
      } else line = longer;
    }
    return [...lines, line].map(stuffed);
  });
}
