import { sayTerms } from '../../../reasons/say-terms.ts';
import { safeLink } from '../safe-link.ts';
import type { MailInput } from '../input.ts';
import type { Block, Line, Part } from '../parts.ts';

/** The dealer's own terms in the language of the mail, or ours; with what he must say of loans and of what he does with answers. */
export function terms({ catalogue: { dealer }, voice: { words } }: MailInput): Block {
  const { finance, privacy } = dealer.terms?.[words.language] ?? {};
  return { kind: 'block', heading: words.result.termsHeading, lines: [sayTerms(dealer, words), finance, privacy].filter((each) => each !== undefined) };
}

export function reach({ catalogue: { dealer }, voice: { words } }: MailInput): Block {
  const all = [dealer.name, dealer.phone, dealer.email, dealer.address, safeLink(dealer.url)].filter((each) => each !== undefined);
  return { kind: 'block', lines: [`${words.result.contact}${words.joins.colon}${all.join(', ')}`] };
}

/** The way back to the page, with the answers. */
export function goOn({ links, own, words }: MailInput): Part[] {
  const href = safeLink(links.goOn);
  return href === undefined ? [] : [{ kind: 'link', says: own.goOn, label: words.open, href }];
}

/** Why it came, how to have no more of it, and where the dealer can be written to. */
export const footer = ({ catalogue: { dealer }, links, words: { footer: said }, dealer: { postalAddress } }: MailInput): Line[] => [
  { text: said.why(dealer.name) },
  { text: said.stop, links: [{ href: links.stop, text: said.stopLink }] },
  { text: said.notAsked, links: [{ href: links.notAsked, text: said.notAskedLink }] },
  { text: `${dealer.name}, ${postalAddress}` },
];
