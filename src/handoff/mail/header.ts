import { onOneLine } from '../one-line.ts';
import { inBytes } from './quoted-printable.ts';

/** A mailbox: an address, and whose it is. */
export interface Mailbox {
  address: string;
  name?: string;
}

/** A line with encoded words has at most 76 signs, and the longest name of ours before it nine (`Subject: `). */
const longestWord = 76 - 9;
const [opening, closing] = ['=?utf-8?Q?', '?='];
const letterOf = (letter: string) => (/[A-Za-z0-9!*+/-]/.test(letter) ? letter : letter === ' ' ? '_' : inBytes(letter));

/** A text of a header as encoded words (RFC 2047, section 4.2), each of whole letters and on a line of its own. */
function encodedWords(text: string): string {
  const words: string[] = [];
  let now = '';
  for (const letter of text) {
    const code = letterOf(letter);
    if (opening.length + now.length + code.length + closing.length > longestWord) {
      words.push(now);
      now = '';
    }
    now += code;
  }
  return [...words, now].map((word) => `${opening}${word}${closing}`).join('\r\n ');
}

const longestPlain = 60;
/** What needs no encoding: short, and of letters no header reads as anything else. */
const isPlain = (text: string) => text.length <= longestPlain && /^[A-Za-z0-9 ]*$/.test(text);

/** Free text behind a header's name, such as a subject. */
export const headerText = (text: string) => {
  const line = onOneLine(text);
  return isPlain(line) ? line : encodedWords(line);
};

/** A mailbox as a header has it. */
export const headerMailbox = ({ address, name = '' }: Mailbox) => {
  const said = headerText(name);
  return said === '' ? address : `${said}\r\n <${address}>`;
};
