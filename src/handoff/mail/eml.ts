import { isAddress } from '../../documents/mail-address.ts';
import type { Letter } from '../letter/letter.ts';
import { flowed } from './flowed.ts';
import { headerMailbox, headerText, type Mailbox } from './header.ts';
import { quotedPrintable } from './quoted-printable.ts';

export interface Posting {
  /** Whom it is for; left out, the mail program asks. */
  to?: Mailbox;
  from?: Mailbox;
  /** When it was written, as `Date.prototype.toUTCString` says it; left out, the mail program says it on sending. */
  date?: string;
  /** Language of the text, as BCP 47 has it. */
  language?: string;
}

const line = (name: string, value: string | undefined) => (value === undefined ? [] : [`${name}: ${value}`]);
const mailbox = (name: string, box: Mailbox | undefined) => line(name, box && isAddress(box.address) ? headerMailbox(box) : undefined);
const dateOf = (date: string | undefined) => (date && /^[A-Z][a-z]{2}, \d{2} [A-Z][a-z]{2} \d{4} \d\d:\d\d:\d\d GMT$/.test(date) ? date.replace('GMT', '+0000') : undefined);
const languageOf = (language: string | undefined) => (language && /^[A-Za-z0-9-]{2,35}$/.test(language) ? language : undefined);

/**
 * A letter as a file a mail program opens (RFC 5322, `.eml`), marked as not sent yet, so that it opens as a draft. All
 * of it is ASCII. What isn't one plain address, a date or a language is left out: it could hold headers of its own.
 */
export const eml = ({ subject, lines }: Letter, { to, from, date, language }: Posting = {}): string => [
  ...mailbox('From', from),
  ...mailbox('To', to),
  ...line('Subject', headerText(subject)),
  ...line('Date', dateOf(date)),
  'X-Unsent: 1',
  'MIME-Version: 1.0',
  'Content-Type: text/plain; charset=utf-8; format=flowed',
  ...line('Content-Language', languageOf(language)),
  'Content-Transfer-Encoding: quoted-printable',
  '',
  quotedPrintable(flowed(lines)),
  '',
].join('\r\n');
