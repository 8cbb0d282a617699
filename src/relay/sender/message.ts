import MailComposer from 'nodemailer/lib/mail-composer';
import { isAddress } from '../../documents/mail-address.ts';
import type { Instant } from '../store/store.ts';
import type { Composed } from './composed.ts';
import type { OutgoingMail } from './transport.ts';

export interface Addressing {
  to: string;
  /** The relay's own address: what the mail is from. */
  sender: string;
  /** Domain mail comes back to that can't be delivered. */
  bounces: string;
  messageId: string;
  token: string;
  /** When the request was stored: it stays the same over every attempt. */
  date: Instant;
}

/** One line that no header can be broken out of. */
const isLine = (text: string) => /^[\x20-\x7e]{1,990}$/.test(text);

/**
 * Puts a mail into the form of RFC 5322, to one recipient and nobody else, and holds what the library made of it against
 * that.
 *
 * @throws Error where it can't be sent like this
 */
export async function messageOf(composed: Composed, { to, sender, bounces, messageId, token, date }: Addressing): Promise<OutgoingMail> {
  if (!isAddress(to)) throw new Error('The recipient is no address.');
  const id = /^<([\w.+-]+)@[\w.-]+>$/.exec(messageId)?.[1];
  if (id === undefined) throw new Error('The Message-ID is none.');
  const headers = Object.entries(composed.headers ?? {});
  if (!headers.every(([name, value]) => /^[A-Za-z][A-Za-z0-9-]*$/.test(name) && isLine(value))) throw new Error('A header isn’t one plain line.');
  const from = `b+${token}@${bounces}`;
  const node = new MailComposer({
    from: { name: composed.fromName, address: sender },
    // As a text it would be a list, and what somebody typed could be two.
    to: [{ name: '', address: to }],
    ...(composed.replyTo && { replyTo: [{ name: '', address: composed.replyTo }] }),
    envelope: { from, to: [to] },
    subject: composed.subject, text: composed.text, html: composed.html,
    attachments: (composed.attachments ?? []).map(({ name, type, content, id }) => ({
      filename: name, contentType: type, content: typeof content === 'string' ? content : Buffer.from(content), ...(id && { cid: id, contentDisposition: 'inline' as const }),
    })),
    messageId, date: new Date(date), xMailer: false, disableFileAccess: true, disableUrlAccess: true,
    // A field that is folded isn't signed as it is read by some.
    headers: Object.fromEntries(headers.map(([name, value]) => [name, { prepared: true, value }])),
  }).compile();
  const envelope = node.getEnvelope();
  if (envelope.to.length !== 1 || envelope.to[0] !== to || envelope.from !== from) throw new Error('The library would send it to somebody else.');
  return { envelope: { from, to }, raw: await node.build(), name: id };
}
