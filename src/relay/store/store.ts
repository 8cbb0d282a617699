/** What a relay keeps, and the only way to it: on SQLite for one machine, on PostgreSQL for many. */
import type { RequestDocument } from '../../request/schema.ts';

/** Milliseconds since 1970, from the relay's one clock. */
export type Instant = number;

/** Whom a mail is for: the buyer, the dealer whom he let have a copy, or the buyer to be asked first whether it was he. */
export const roles = ['buyer', 'dealer', 'confirm'] as const;
export type Role = (typeof roles)[number];

/**
 * `queued` waits for its turn or its time; `sending` is claimed; `unsure` went out whole and was never answered, and is
 * sent once more later under the same Message-ID; `unconfirmed` waits for the buyer's word; `held` waits for a person.
 * The others are ends.
 */
export const ends = ['sent', 'refused', 'expired', 'suppressed', 'cancelled'] as const;
export type End = (typeof ends)[number];
/** Of mails that are to go out. */
export const waitingStates = ['queued', 'sending', 'unsure'] as const;
export const states = ['unconfirmed', 'queued', 'sending', 'unsure', 'held', ...ends] as const;
export type State = (typeof states)[number];

/** One withdrawal from a bucket that fills up steadily. */
export interface Take {
  /** What is limited, such as `recipient-day:` and a keyed hash. */
  bucket: string;
  /** Most that are in it. */
  most: number;
  /** Time in which it fills from empty [ms]. */
  fills: number;
}

export interface NewMessage {
  role: Role;
  /** Keyed hash of the address: what the stop list and limits go by. */
  recipient: string;
  /** Kept over every attempt. */
  messageId: string;
  /** Secret of the links to stop, and to say it wasn't I: at least 128 random bits. */
  token: string;
  state: 'queued' | 'unconfirmed' | 'held';
}

export interface NewRequest {
  /** The idempotency key: a UUID. */
  id: string;
  dealer: string;
  /** SHA-256 of what was handed in, in canonical form. */
  fingerprint: string;
  /** Keyed hash of dealer, address and answers: alike within a while is the same request under any key. */
  likeness: string;
  request: RequestDocument;
  messages: readonly NewMessage[];
}

/**
 * `repeated`: the same key with the same body, or one alike a little earlier: answered as if it were new.
 * `other-body`: the key was used for something else. `limited`: a bucket is empty; which one is never told.
 */
export type Accepted = 'stored' | 'repeated' | 'other-body' | { limited: true; after: number };

/** A mail to be sent now. Only who holds its fence may say what came of it. */
export interface Claim {
  message: string;
  request: string;
  role: Role;
  /** As in {@link NewMessage}. */
  recipient: string;
  messageId: string;
  token: string;
  /** The address it goes to is in the request, or the dealer's from the settings. */
  document: RequestDocument;
  dealer: string;
  acceptedAt: Instant;
  /** Attempts that were begun, this one included. */
  attempt: number;
  /** Of them, those with no outcome written, this one not included. */
  crashes: number;
  /** Whether an earlier one ended without an answer. */
  wasUnsure: boolean;
  /** Of a dealer's mail: whether it is word that the buyer's own can't be delivered; the first of a request is his copy. */
  isWord: boolean;
  fence: number;
}

/** What tells one mail from all others. */
export type MessageIds = Pick<NewMessage, 'messageId' | 'token'>;

/** A buyer's mail that came to an end without him, and how far the word of it is that goes to the dealer; undefined where there is none. */
export interface Undelivered {
  message: string;
  request: string;
  dealer: string;
  state: State;
  reason: string;
  since: Instant;
  told: State | undefined;
}

/** What came of a claim. */
export type Outcome =
  | { state: 'sent'; reply: string }
  | { state: 'refused' | 'expired' | 'suppressed' | 'cancelled' | 'held'; reason: string; reply?: string }
  /** To be tried again, not before `at`. */
  | { state: 'queued' | 'unsure'; at: Instant; reason: string; reply?: string };

/** Whom nothing is claimed for at the moment: dealers that are paused, domains of recipients that have enough on the way (`dealer:` and his id for a dealer's copies). */
export interface Except {
  dealers?: readonly string[];
  destinations?: readonly string[];
}

export type StopScope = { all: true } | { dealer: string };

/** Waiting mail by age: how many are at most so old [ms], and how old the oldest is. */
export interface Depth {
  byState: Record<State, number>;
  byAge: readonly { upTo: number; count: number }[];
  oldest: number | undefined;
}

export interface StoredCatalogue {
  dealer: string;
  /** The hash the document was stored under. */
  hash: string;
  /** `version` of the document, as a buyer saw it. */
  version: string | undefined;
  asOf: string;
  text: string;
}

export interface Store {
  /**
   * All or nothing, and on disk before it resolves: limits taken, key, request and messages. Stopped recipients' messages are stored as `suppressed`.
   * Rejects with StoreFull where there is no room; any method rejects with StoreBroken where the disk failed.
   */
  accept(request: NewRequest, takes: readonly Take[], now: Instant, likeSince: Instant): Promise<Accepted>;
  /**
   * Mail whose time has come, at most `most`: half of it what became due last, so that nobody new waits for a backlog, half
   * what has waited longest. Stopped recipients are settled as `suppressed` in the same transaction and not given out. A message
   * claimed `crashesHeld` times without an outcome is `held` instead, and so is one that isn't as it was stored. What is due in
   * more than a day was put off by a clock that was wrong, and is due now.
   */
  claim(most: number, now: Instant, crashesHeld: number, except?: Except): Promise<Claim[]>;
  /**
   * @param word  where the mail can't be delivered: what word to the dealer is told by, stored with the outcome, as {@link tell} does
   * @returns false where the fence is no longer the message's: somebody else has it, and nothing was written
   */
  settle(claim: Pick<Claim, 'message' | 'fence'>, outcome: Outcome, now: Instant, word?: MessageIds): Promise<boolean>;
  /** Queues word to the dealer that the buyer's mail can't be delivered, once, and only where the buyer let him have a copy. @returns whether it did */
  tell(request: string, word: MessageIds, now: Instant): Promise<boolean>;
  /** Mail to buyers that was refused or given up, as long as it is kept, the last thousand. */
  undelivered(): Promise<Undelivered[]>;
  /** Claims nobody works on any more are queued again: at the start of a relay that is alone, all of them; else those whose worker gave no sign for so long. @returns how many */
  release(now: Instant, silentFor?: number): Promise<number>;
  /** A sign of life for what this process has claimed. */
  beat(now: Instant): Promise<void>;
  /** The earliest time anything becomes due. */
  nextDue(): Promise<Instant | undefined>;
  depth(now: Instant): Promise<Depth>;
  /** How many mails are queued, on their way or unsure: of {@link depth} what costs nothing, however many there are. */
  waiting(): Promise<number>;

  /** The buyer said it was he. Idempotent. @returns false where the token is unknown */
  confirm(token: string, now: Instant): Promise<boolean>;
  /** Stops mail by the token of one; what waits for that person is suppressed. Idempotent. @returns what it stopped, or undefined where the token is unknown */
  stop(token: string, why: 'stop' | 'not-asked', now: Instant): Promise<{ recipient: string; dealer: string } | undefined>;
  /** Puts an address on the list by its keyed hash (a bounce, an import). */
  suppress(recipient: string, scope: StopScope, why: string, now: Instant, until?: Instant): Promise<void>;
  isStopped(recipient: string, dealer: string, now: Instant): Promise<boolean>;

  held(): Promise<{ message: string; request: string; dealer: string; role: Role; reason: string; since: Instant }[]>;
  /** Queues held mail again, all or those named, with the same Message-ID. @returns how many */
  sendAgain(messages: readonly string[] | 'all', now: Instant): Promise<number>;

  /** Keeps a version of a dealer's catalogue; the same again only counts as seen. */
  keepCatalogue(catalogue: StoredCatalogue, now: Instant): Promise<void>;
  /** The version a buyer saw, or undefined; `version` undefined asks for the newest. */
  catalogueOf(dealer: string, version: string | undefined): Promise<StoredCatalogue | undefined>;

  /** Everything held about one address, by its keyed hash and the address itself, for whoever asks for it. */
  exportOf(recipient: string, address: string): Promise<unknown[]>;
  /** Erases it; the stop list keeps its keyed hash. @returns how many requests */
  erase(recipient: string, address: string, now: Instant): Promise<number>;
  /** Deletes what its time is over for: bodies so long after their end, keys and states later, old catalogues, spent buckets. */
  tidy(now: Instant, keep: { bodies: number; rows: number; catalogues: number; expiresAfter: number }): Promise<void>;
  /** Consented answers without any address, in the order they came; streamed, never all at once. */
  statistics(dealer?: string): AsyncIterable<{ dealer: string; day: string; kind: RequestDocument['kind']; answers: RequestDocument['answers'] }>;

  /** One use of a word given out by us (a ticket, a challenge). @returns false where it was used before */
  spend(word: string, until: Instant, now: Instant): Promise<boolean>;

  /** What an administrator asks first; throws where the store can't be read. */
  health(): Promise<{ kind: 'sqlite' | 'postgres'; version: string; durable: boolean; freeBytes?: number }>;
  close(): Promise<void>;
}
