import { onOneLine } from '../../handoff/one-line.ts';
import type { Composed } from '../sender/composed.ts';
import type { BuyersContact, MailInput } from './input.ts';
import type { Sheet } from './parts.ts';
import { extents, type Extent } from './plan/extent.ts';
import { dealersSheet, noticeSheet, questionSheet, shortlistSheet, undeliveredSheet } from './plan/sheets.ts';
import { safeLink } from './safe-link.ts';
import { toHtml } from './to-html.ts';
import { toText } from './to-text.ts';

/** Octets of HTML behind which some readers of mail cut it off (common practice, no source). */
export const mostHtml = 100_000;
/** Signs of a subject and of a name: more is cut off wherever mails are listed. */
const longestSubject = 150;

/** That a machine wrote it, so that no other answers (RFC 3834, section 5). */
const byMachine = { 'Auto-Submitted': 'auto-generated', 'X-Auto-Response-Suppress': 'All' };

/** How to stop it with one click of the provider's own button (RFC 8058, section 3.1): by TLS alone. */
function stopping(stop: string): Record<string, string> {
  const href = safeLink(stop);
  return !href?.startsWith('https:') ? {} : { 'List-Unsubscribe': `<${href}>`, 'List-Unsubscribe-Post': 'List-Unsubscribe=One-Click' };
}

/** One line for a header. What a reader would take for an encoded word (RFC 2047), and decode to other lines, is broken up. */
const cut = (text: string) => {
  const signs = [...onOneLine(text).replaceAll('=?', '= ?')];
  return signs.length > longestSubject ? `${signs.slice(0, longestSubject - 1).join('')}…` : signs.join('');
};

/** Lines as mail has them (RFC 5322, section 2.3): a line end of another kind may be lost or doubled on the way. */
const inLines = (text: string) => text.replace(/\r\n|\r|\n/g, '\r\n');

const written = (sheet: Sheet, fromName: string, headers: Record<string, string>): Composed => ({
  fromName: cut(fromName), subject: cut(sheet.subject), text: inLines(toText(sheet)), html: inLines(toHtml(sheet)),
  headers: { ...byMachine, ...headers, 'Content-Language': sheet.language },
});

const octets = (html: string) => new TextEncoder().encode(html).length;

/** As much as there is room for. */
function fitting(sheetOf: (extent: Extent) => Sheet): Sheet {
  for (const extent of extents) {
    const sheet = sheetOf(extent);
    if (octets(toHtml(sheet)) <= mostHtml) return sheet;
  }
  return sheetOf(extents.at(-1)!);
}

const toBuyer = (input: MailInput, sheet: Sheet): Composed => ({ ...written(sheet, input.dealer.senderName, stopping(input.links.stop)), replyTo: input.dealer.mail });

/** The buyer's mail: his shortlist, or that word will come. Nothing anybody typed stands in it but what the dealer's catalogue and the settings say. */
export const composeBuyerMail = (input: MailInput): Composed =>
  toBuyer(input, input.kind === 'notify' ? noticeSheet(input) : fitting((extent) => shortlistSheet(input, extent)));

/** Asks the buyer whether it was he who asked. */
export const composeQuestion = (input: MailInput): Composed => toBuyer(input, questionSheet(input));

/** The dealer's copy, with the buyer's contact in its body and nowhere else; replies go to the buyer. */
export const composeDealerMail = (input: MailInput, contact: BuyersContact): Composed => ({
  ...written(fitting((extent) => dealersSheet(input, contact, extent)), input.dealer.senderName, {}), replyTo: contact.address,
});

/** Word to the dealer that the buyer's mail can't be delivered. Replies to it would get no further than that mail did. */
export const composeWord = (input: MailInput, contact: BuyersContact): Composed => written(undeliveredSheet(input, contact), input.dealer.senderName, {});
