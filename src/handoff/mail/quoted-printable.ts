const longestLine = 76;

/** A letter's bytes in UTF-8, each behind the sign `=`. */
export const inBytes = (letter: string) => (letter <= '~'
  ? `=${letter.codePointAt(0)!.toString(16).toUpperCase().padStart(2, '0')}`
  : encodeURIComponent(letter).replaceAll('%', '='));

/** A line that ends in a blank ends in its code, for blanks at the end are lost on the way. */
const letterOf = (letter: string, isLast: boolean) => (/[!-<>-~]/.test(letter) || (letter === ' ' && !isLast) ? letter : inBytes(letter));

function quotedLine(line: string): string[] {
  const lines: string[] = [];
  let now = '';
  const letters = [...line];
  for (const [index, letter] of letters.entries()) {
    const code = letterOf(letter, index === letters.length - 1);
    if (now.length + code.length >= longestLine) {
      lines.push(`${now}=`);
      now = '';
    }
    now += code;
  }
  return [...lines, now];
}

/** Lines as quoted-printable (RFC 2045, section 6.7), none longer than 76 signs; lone surrogates must be gone. */
export const quotedPrintable = (lines: readonly string[]) => lines.flatMap(quotedLine).join('\r\n');
