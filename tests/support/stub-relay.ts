import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { problems, type ProblemCode } from '../../src/relay/problems.ts';
import { keyHeader, paths } from '../../src/request/names.ts';
import { readRequest, readSealed } from '../../src/request/read-request.ts';
import type { RequestDocument } from '../../src/request/schema.ts';
import { newRelayKey, open } from '../../src/request/seal.ts';

/** What becomes of one request: it is taken, refused by a relay's own code, or suffers a fault of the way. */
export type Answer =
  | 'accept'
  /** Refused with its own status; `after` as Retry-After [s]. */
  | { refused: ProblemCode; after?: number }
  /** An answer of a server that is no relay's own. */
  | { status: number; body?: string }
  /** Stored, and the connection breaks before the answer. */
  | 'lose-answer'
  /** The connection breaks before anything is stored. */
  | 'cut'
  /** No answer, until the connection is given up. */
  | 'silent'
  /** A 202 of something else. */
  | 'other-id';

/** A request that was taken, opened. */
export interface LedgerEntry {
  id: string;
  request: RequestDocument;
  token: string | undefined;
}

const bodyOf = async (request: IncomingMessage) => {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part as Buffer);
  return Buffer.concat(parts).toString('utf8');
};

/**
 * A relay of a few lines, with a ledger of what it took: the same routes, codes, keys and rules for the same key twice
 * as a real one, no mail, and whatever fault a test wants. Its verdict is not the counter's own.
 */
export class StubRelay {
  /** What was taken, each once, in its order. */
  readonly ledger: LedgerEntry[] = [];
  /** Every request that was heard, whatever came of it. */
  readonly heard: string[] = [];
  /** How often it was asked whether it is there. */
  probes = 0;
  /** Decides on each request; `number` counts from 0. */
  answer: (post: { id: string; number: number }) => Answer = () => 'accept';
  /** A page to log in with stands before everything. */
  portal = false;
  readonly #bodies = new Map<string, string>();
  #keys: Awaited<ReturnType<typeof newRelayKey>>[] = [];
  #server: Server;
  #port = 0;

  private constructor() {
    this.#server = this.#made();
  }

  static async start(): Promise<StubRelay> {
    const relay = new StubRelay();
    await relay.rotate();
    await relay.comeBack();
    return relay;
  }

  get address() {
    return `http://127.0.0.1:${this.#port}/`;
  }

  /** A new key comes first; those before it still open. */
  async rotate() {
    this.#keys.unshift(await newRelayKey(`k${this.#keys.length + 1}`));
  }

  /** Sixty days went by: only the newest key opens. */
  forgetOldKeys() {
    this.#keys.length = 1;
  }

  /** Nobody listens at the address any more. */
  async goAway() {
    const closed = new Promise((done) => { this.#server.close(done); });
    this.#server.closeAllConnections();
    await closed;
  }

  /** Listens again, where it was before. */
  async comeBack() {
    this.#server = this.#made();
    await new Promise<void>((ready) => { this.#server.listen(this.#port, '127.0.0.1', ready); });
    this.#port = (this.#server.address() as AddressInfo).port;
  }

  #made() {
    return createServer((request, response) => {
      this.#serve(request, response).catch((trouble: unknown) => { response.writeHead(500).end(String(trouble)); });
    });
  }

  async #serve(request: IncomingMessage, response: ServerResponse) {
    if (this.portal) return void response.writeHead(200, { 'content-type': 'text/html', 'access-control-allow-origin': '*' }).end('<title>Welcome to the guest network</title>');
    const { origin } = request.headers;
    if (origin) response.setHeader('access-control-allow-origin', origin).setHeader('access-control-expose-headers', 'Retry-After');
    if (request.method === 'OPTIONS') {
      return void response.writeHead(204, { 'access-control-allow-methods': 'GET, POST', 'access-control-allow-headers': `content-type, ${keyHeader.toLowerCase()}, authorization`, 'access-control-max-age': '600' }).end();
    }
    const say = (status: number, body: object, headers = {}) => void response.writeHead(status, { 'content-type': 'application/json', ...headers }).end(JSON.stringify(body));
    const refuse = (code: ProblemCode, after?: number) => say(problems[code].status, { code, status: problems[code].status }, after === undefined ? {} : { 'retry-after': String(after) });
    if (request.method === 'GET' && request.url === paths.health) {
      this.probes += 1;
      return say(200, { ok: true, minVersion: '0.1.0' });
    }
    if (request.method === 'GET' && request.url === paths.keys) return say(200, { keys: [this.#keys[0]!.key] });
    if (request.method !== 'POST' || request.url !== paths.shortlists) return refuse('not-found');

    const id = String(request.headers[keyHeader.toLowerCase()] ?? '');
    if (!/^[0-9a-f-]{36}$/.test(id)) return refuse('key-wrong');
    const body = await bodyOf(request);
    const answer = this.answer({ id, number: this.heard.length });
    this.heard.push(id);
    if (answer === 'cut') return void request.socket.destroy();
    if (answer === 'silent') return;
    if (answer === 'other-id') return say(202, { id: '00000000-0000-4000-8000-000000000000' });
    if (typeof answer === 'object') return 'refused' in answer ? refuse(answer.refused, answer.after) : void response.writeHead(answer.status).end(answer.body);
    const code = await this.#take(id, body, request.headers.authorization?.replace('Bearer ', ''));
    if (answer === 'lose-answer') return void request.socket.destroy();
    if (code) return refuse(code);
    say(202, { id });
  }

  /** @returns why it isn't taken */
  async #take(id: string, body: string, token: string | undefined): Promise<ProblemCode | undefined> {
    const { value: sealed } = readSealed(JSON.parse(body));
    if (!sealed) return 'not-a-request';
    const key = this.#keys.find((each) => each.key.id === sealed.key);
    if (!key) return 'seal-key';
    const { value: request } = readRequest(await open(sealed, key.privateKey, id));
    if (!request || request.dealer !== sealed.dealer) return 'seal-broken';
    const before = this.#bodies.get(id);
    if (before !== undefined) return before === JSON.stringify(request) ? undefined : 'other-body';
    this.#bodies.set(id, JSON.stringify(request));
    this.ledger.push({ id, request, token });
    return undefined;
  }
}
