import type { RequestDocument } from '../../request/schema.ts';
import type { Dealer } from '../settings/dealer.ts';
import type { Claim, StoredCatalogue } from '../store/store.ts';

/** What a mail is made of: plain data, so that it can be made in a thread of its own. */
export interface Composing {
  role: Claim['role'];
  /** As in {@link Claim}. */
  isWord: boolean;
  document: RequestDocument;
  /** As the settings have him, as far as a mail shows him. */
  dealer: Pick<Dealer, 'id' | 'mail' | 'senderName' | 'postalAddress' | 'page'>;
  /** The version the buyer saw, or the newest where that isn't kept any more; none where no catalogue was ever read. */
  catalogue: StoredCatalogue | undefined;
  /** Whether it is the one the buyer saw. */
  asSeen: boolean;
  /** Of the links in it. */
  token: string;
}

/** A mail before it is put into the form of RFC 5322. */
export interface Composed {
  /** Shown as the sender; his address is the relay's. */
  fromName: string;
  /** Where answers go. */
  replyTo?: string;
  subject: string;
  text: string;
  html?: string;
  /** Further header fields, each one line. */
  headers?: Readonly<Record<string, string>>;
  attachments?: readonly { name: string; type: string; content: string | Uint8Array; /** Shown in the HTML under this id. */ id?: string }[];
}

/** Makes a mail. @throws where it can't: such a mail is held, not tried again */
export type Compose = (what: Composing) => Promise<Composed>;
