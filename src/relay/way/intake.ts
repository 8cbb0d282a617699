import type { RequestDocument, SealedRequest } from '../../request/schema.ts';
import { open } from '../../request/seal.ts';
import { minute, type Clock } from '../clock.ts';
import { keyedHash, mailboxOf, same, sha256 } from '../hashes.ts';
import { Refusal } from '../problems.ts';
import type { Dealer } from '../settings/dealer.ts';
import type { Keys } from '../settings/keys.ts';
import type { Store } from '../store/store.ts';
import { fingerprintOf, keptOf, likenessOf } from './fingerprint.ts';
import { takesOf, vagueAfter } from './limits.ts';
import { messagesOf } from './messages.ts';
import { parseBody, readIfSealed, readPlain } from './read-body.ts';
import { Recent } from './recent.ts';
import { scoreOf, standingOf, type Signs, type Standing } from './score.ts';
import { isWorked, longestOpen, readTicket } from './ticket.ts';

/** Alike within so long is the same request, whatever its key. */
const likeFor = 10 * minute;
/** More recipients a day from one client speak for a program. */
const usualRecipients = 3;
/** So many who say it wasn't they, in a day, and every buyer of the dealer is asked first. */
const mostDenials = 3;

/** A request as it came, once its head was looked at. */
export interface Arrival {
  body: Uint8Array;
  origin: string;
  idempotencyKey: string;
  /** Of a device, where one was shown. */
  token: string | undefined;
  /** What counts as one client. */
  network: string;
  /** Whether the browser said how it came to send this. */
  fetchMetadata: boolean;
}

export interface IntakeParts {
  store: Store;
  clock: Clock;
  keys: Keys;
  dealers: ReadonlyMap<string, Dealer>;
  /** Mails the provider takes in a day. */
  mailsPerDay: number;
  /** Domain of the sender. */
  domain: string;
}

export interface TakenIn {
  dealer: string;
  standing: Standing;
  sealed: boolean;
  device: boolean;
  isNew: boolean;
}

/** The way of a request from its bytes to the store. */
export class Intake {
  readonly #parts: IntakeParts;
  readonly #recipients = new Recent();
  readonly #denials = new Recent();

  constructor(parts: IntakeParts) {
    this.#parts = parts;
  }

  clientOf(network: string): string {
    return keyedHash(this.#parts.keys.addresses, 'client', network);
  }

  /** Somebody was sent mail he hadn't asked for. */
  denied(dealer: string, token: string): void {
    this.#denials.add(dealer, token, this.#parts.clock.now());
  }

  /** Whether a form of this client had better reckon something first. */
  doubts(network: string): boolean {
    return this.#recipients.count(this.clientOf(network), this.#parts.clock.now()) > usualRecipients;
  }

  /** @throws Refusal `dealer`, `origin` */
  dealerOf(id: string, origin: string): Dealer {
    const dealer = this.#parts.dealers.get(id);
    if (!dealer) throw new Refusal('dealer');
    if (!dealer.origins.has(origin)) throw new Refusal('origin');
    return dealer;
  }

  #deviceOf(token: string | undefined, { devices }: Dealer): string | undefined {
    if (token === undefined) return undefined;
    const hash = sha256(token);
    const found = devices.find((each) => same(each.hash, hash));
    if (!found) throw new Refusal('device');
    return found.id;
  }

  async #opened(box: SealedRequest, idempotencyKey: string): Promise<RequestDocument> {
    const { keys, clock } = this.#parts;
    const seal = keys.seals(clock.now()).find(({ id }) => id === box.key);
    if (!seal) throw new Refusal('seal-key');
    const opened = await open(box, seal.privateKey, idempotencyKey);
    if (opened === undefined) throw new Refusal('seal-broken');
    const request = readPlain(opened);
    if (request.dealer !== box.dealer) throw new Refusal('seal-broken');
    return request;
  }

  async #signsOf(request: RequestDocument, { origin, network, fetchMetadata }: Arrival, mailbox: string): Promise<Signs> {
    const { store, clock, keys } = this.#parts;
    const now = clock.now();
    const { sign, nonce, bits } = readTicket(request.ticket, keys.ticketSecrets(now), { dealer: request.dealer, origin }, now);
    const isFresh = nonce === undefined || await store.spend(`ticket:${nonce}`, now + longestOpen, now);
    return {
      ticket: isFresh ? sign : 'used',
      filled: (request.leftEmpty ?? '') !== '',
      workMissing: !isWorked(request.ticket ?? '', request.work, bits),
      bare: !fetchMetadata,
      manyRecipients: this.#recipients.add(this.clientOf(network), mailbox, now) > usualRecipients,
    };
  }

  /**
   * Stores a request, or says why not. When it resolves the request is on disk.
   *
   * @throws Refusal
   */
  async take(arrival: Arrival): Promise<TakenIn> {
    const { store, clock, keys, mailsPerDay, domain } = this.#parts;
    const document = parseBody(arrival.body);
    const box = readIfSealed(document, arrival.body.length);
    const plain = box ? undefined : readPlain(document);
    const dealer = this.dealerOf((box ?? plain)!.dealer, arrival.origin);
    const device = this.#deviceOf(arrival.token, dealer);
    const request = plain ?? await this.#opened(box!, arrival.idempotencyKey);

    const mailbox = mailboxOf(keys.addresses, request.address);
    const confirmFirst = dealer.confirmFirst || this.#denials.count(dealer.id, clock.now()) >= mostDenials;
    // Staff stand beside a counter: nothing there is guessed at.
    const standing = device === undefined ? standingOf(scoreOf(await this.#signsOf(request, arrival, mailbox)), confirmFirst) : 'queued';
    const kept = keptOf(request);
    const messages = messagesOf(kept, dealer, standing, keys.addresses, domain);
    const sender = device === undefined ? { client: this.clientOf(arrival.network) } : { device };
    const takes = takesOf({ dealer: dealer.id, limits: dealer.limits, mailbox, sender, mails: messages.length, quota: mailsPerDay });
    const now = clock.now();
    const accepted = await store.accept({
      id: arrival.idempotencyKey.toLowerCase(), dealer: dealer.id, request: kept, messages,
      fingerprint: fingerprintOf(kept), likeness: likenessOf(keys.addresses, kept),
    }, takes, now, now - likeFor);
    if (accepted === 'other-body') throw new Refusal('other-body');
    if (typeof accepted === 'object') throw new Refusal('limited', { after: vagueAfter(accepted.after) });
    return { dealer: dealer.id, standing, sealed: box !== undefined, device: device !== undefined, isNew: accepted === 'stored' };
  }
}
