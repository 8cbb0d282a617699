import { linkTo } from '../../handoff/link.ts';
import { pack } from '../../handoff/pack.ts';
import { readerFor } from '../../reasons/asking-voice.ts';
import { namesIn } from '../../reasons/say.ts';
import { shortlist } from '../../reasons/shortlist.ts';
import { rulesVersion } from '../../trade/book.ts';
import type { Compose, Composed, Composing } from '../sender/composed.ts';
import { fromClosedLists } from './closed-lists.ts';
import { composeBuyerMail, composeDealerMail, composeQuestion, composeWord } from './compose-mails.ts';
import type { MailInput } from './input.ts';
import { mailLanguage, nameOfLanguage } from './languages.ts';
import { ReadCatalogues } from './usable-catalogue.ts';

/** Where the links of a mail lead, below the relay's address. */
export const mailPaths = { stop: 'u/', notAsked: 'n/', confirm: 'c/' } as const;

const catalogues = new ReadCatalogues();

/** All a mail is made from: the request stripped of what anybody wrote, and reckoned again. @throws Error where there is no catalogue to use */
export function inputOf({ role, document: request, dealer, catalogue: stored, asSeen, token }: Composing, relay: string): MailInput {
  if (!stored) throw new Error('There is no catalogue of this dealer.');
  const { document: catalogue, inSi } = catalogues.of(stored);
  const answers = fromClosedLists(request.answers);
  const seen = request.seen.catalogue;
  const isDealers = role === 'dealer';
  const { words, own, mail } = mailLanguage(isDealers ? catalogue.dealer.locale : request.language);
  const reader = readerFor(words, isDealers ? catalogue.dealer.units : request.units, catalogue.dealer.locale, catalogue.dealer.currency);
  const goOn = dealer.page === undefined ? undefined : linkTo(dealer.page, pack(answers));
  const link = (which: keyof typeof mailPaths) => new URL(`${mailPaths[which]}${token}`, relay).href;
  return {
    kind: request.kind, catalogue, inSi, answers, shortlist: shortlist(catalogue, answers, [], inSi),
    voice: { words, reader, nameOf: namesIn(catalogue, reader) }, own, words: mail,
    links: { ...(goOn !== undefined && { goOn }), stop: link('stop'), notAsked: link('notAsked'), confirm: link('confirm') },
    dealer,
    // A list without a version can't be told from another.
    reckonedWith: asSeen || seen.version === undefined ? 'as-seen' : { ...(seen.asOf !== undefined && { seenAsOf: seen.asOf }) },
    sameRules: request.seen.rules.version === rulesVersion,
  };
}

/**
 * Makes the mail of a role.
 *
 * @param relay  its address, with a slash, which its links begin with
 * @throws Error where it can't
 */
export function composedOf(composing: Composing, relay: string): Composed {
  const input = inputOf(composing, relay);
  const { role, isWord, document: { address, contact, consent, language } } = composing;
  switch (role) {
    case 'buyer': return composeBuyerMail(input);
    case 'confirm': return composeQuestion(input);
    case 'dealer': return (isWord ? composeWord : composeDealerMail)(input, { ...(consent.dealerCopy && contact), address, language: nameOfLanguage(language) });
  }
}

/** What makes the mails of a relay. @param relay  as in {@link composedOf} */
export const composeAt = (relay: string): Compose => async (composing) => composedOf(composing, relay);
