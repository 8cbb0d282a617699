/** Reading of what a mail server sends back: a delivery status notification (RFC 3464) in a multipart report (RFC 6522). */
import { isAddress } from '../../documents/mail-address.ts';

/** What one recipient's part of a report says. */
export interface Bounced {
  address: string;
  /** As RFC 3463 has it, such as 5.1.1; undefined where there is none to read. */
  status: string | undefined;
  action: string | undefined;
}

/** More than any report needs: what is longer is cut, not read. */
const mostSigns = 512 * 1024;
const mostRecipients = 20;

/** Fields of a block of header lines, by their small names, folded lines put together (RFC 5322, section 2.2.3). */
function fieldsOf(block: string): Map<string, string> {
  const fields = new Map<string, string>();
  for (const line of block.replace(/\r?\n[ \t]+/g, ' ').split(/\r?\n/)) {
    const colon = line.indexOf(':');
    if (colon > 0) fields.set(line.slice(0, colon).trim().toLowerCase(), line.slice(colon + 1).trim());
  }
  return fields;
}

/** `rfc822; <ann@buyer.example>` (RFC 3464, section 2.3.2) as a plain address. */
function addressIn(field: string | undefined): string | undefined {
  const [type = '', written = ''] = (field ?? '').split(';', 2);
  const address = written.trim().replace(/^<(.*)>$/, '$1');
  return type.trim().toLowerCase() === 'rfc822' && isAddress(address) ? address : undefined;
}

const statusIn = (field: string | undefined) => /^([245]\.\d{1,3}\.\d{1,3})(?:\s|$)/.exec(field ?? '')?.[1];

/** The part that holds the report; undefined where the mail has none. */
function reportIn(mail: string): string | undefined {
  const at = mail.search(/^content-type:\s*message\/(?:global-)?delivery-status\b/im);
  if (at === -1) return undefined;
  const body = /\r?\n\r?\n/.exec(mail.slice(at));
  if (!body) return undefined;
  const inside = mail.slice(at + body.index + body[0].length);
  const end = inside.search(/^--\S/m);
  return end === -1 ? inside : inside.slice(0, end);
}

/** @returns nothing where the mail is no report: an out-of-office note, a complaint, a letter */
export function readReport(mail: string): Bounced[] {
  const report = reportIn(mail.slice(0, mostSigns));
  if (report === undefined) return [];
  return report.split(/(?:\r?\n){2,}/).slice(0, mostRecipients + 1).map(fieldsOf).flatMap((fields) => {
    const address = addressIn(fields.get('original-recipient')) ?? addressIn(fields.get('final-recipient'));
    return address ? [{ address, status: statusIn(fields.get('status')), action: fields.get('action')?.toLowerCase() }] : [];
  });
}

/**
 * What a status means for the person (RFC 3463, section 3): `hard`, the mailbox isn't there; `ours`, it was refused for what
 * we are or sent, and he is not to suffer for it; `soft` for everything else that failed, and whatever isn't known.
 */
export function weightOf({ status, action }: Bounced): 'hard' | 'soft' | 'ours' | 'none' {
  if (action !== undefined && action !== 'failed') return 'none';
  if (status?.startsWith('2.')) return 'none';
  if (status && ['5.1.1', '5.1.2', '5.1.6', '5.1.10'].includes(status)) return 'hard';
  return status?.startsWith('5.7.') ? 'ours' : 'soft';
}
