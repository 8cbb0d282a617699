import type { AnswersDocument } from '../../answers/schema.ts';
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../catalogue/schema.ts';
import type { HandoffWords } from '../../handoff/words/words.ts';
import type { Voice } from '../../reasons/say.ts';
import type { Shortlist } from '../../reasons/schema.ts';
import type { RequestKind } from '../../request/names.ts';
import type { MailWords } from './words/words.ts';

/** Of one mail to the buyer, and where his answers can be gone on with; each a whole address. */
export interface MailLinks {
  /** With the answers in its fragment; left out where no page is known. */
  goOn?: string;
  stop: string;
  notAsked: string;
  confirm: string;
}

/** All a mail is made from. Nothing else goes in: no clock, no network, no chance. */
export interface MailInput {
  kind: RequestKind;
  /** Its texts made harmless already. */
  catalogue: CatalogueDocument;
  /** The same in SI. */
  inSi: Catalogue;
  /** From closed lists alone. */
  answers: AnswersDocument;
  /** Made of those two. */
  shortlist: Shortlist;
  voice: Voice;
  own: HandoffWords;
  words: MailWords;
  links: MailLinks;
  /** As the relay's settings have the dealer. */
  dealer: { senderName: string; mail: string; postalAddress: string };
  /** Which of the dealer's lists it was reckoned with: the one the buyer saw, or another, and of which day his was where that is known. */
  reckonedWith: 'as-seen' | { seenAsOf?: string };
  /** Whether the rule book is that of the page he saw. */
  sameRules: boolean;
}

/** Who a buyer is: for the dealer's copy alone, where the buyer agreed to it. */
export interface BuyersContact {
  address: string;
  name?: string | undefined;
  phone?: string | undefined;
  goodTime?: 'any' | 'morning' | 'midday' | 'afternoon' | 'evening' | undefined;
  /** The name of the language his mail is in, as that language calls itself. */
  language: string;
}
