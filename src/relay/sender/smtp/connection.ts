import { Readable } from 'node:stream';
import SMTPConnection from 'nodemailer/lib/smtp-connection';
import type { OutgoingMail } from '../transport.ts';
import type { Failure, Stage } from '../verdict.ts';

export interface SmtpOptions {
  host: string;
  port: number;
  /** TLS from the first byte; else STARTTLS, and no mail without it. */
  tls: boolean;
  user?: string;
  password?: string;
  /** Of this machine, as it introduces itself. */
  name?: string;
  /** Certificates trusted besides those of the system. */
  ca?: string;
  /** Only for a server on this machine: nobody else can listen. */
  plain?: boolean;
  waits?: Partial<Waits>;
}

/** Longest waits [ms]. */
export interface Waits {
  connect: number;
  greeting: number;
  /** Log-in, sender, recipient and the answer to DATA, each. */
  command: number;
  /** For the server to take the text. */
  text: number;
  /** For the answer to the final dot: too short a wait makes mail go out twice. */
  dot: number;
}

const isOnThisMachine = (host: string) => ['localhost', '127.0.0.1', '::1'].includes(host);

/** As RFC 5321, section 4.5.3.2 has them; only a server on this machine greets at once or never, and nobody waits 5 min to be connected. */
export const waitsOf = ({ host, waits }: SmtpOptions): Waits => ({
  connect: 30_000, greeting: isOnThisMachine(host) ? 30_000 : 300_000, command: 300_000, text: 180_000, dot: 600_000, ...waits,
});

/** A failure, and how far the mail had come. */
export class SmtpFailure extends Error {
  readonly failure: Failure;
  readonly stage: Stage;
  constructor(failure: Failure, stage: Stage) {
    super(failure.code ?? 'failed');
    this.failure = failure;
    this.stage = stage;
  }
}

const piece = 16_384;

/** A text in pieces, as fast as they are taken. It notes when the first is asked for, and that the last one was taken: the final dot follows it. */
function noted(raw: Uint8Array, begun: () => void, ended: () => void): Readable {
  let given = 0;
  const stream = new Readable({
    highWaterMark: piece,
    read() {
      if (given === 0) begun();
      if (this.destroyed) return;
      this.push(given < raw.length ? raw.subarray(given, given + piece) : null);
      given += piece;
    },
  });
  return stream.once('end', ended);
}

/** One connection to a mail server, with deadlines of its own. One mail at a time. */
export class Connection {
  readonly #smtp: SMTPConnection;
  readonly #waits: Waits;
  readonly #options: SmtpOptions;
  #stage: Stage = 'connect';
  #timer: ReturnType<typeof setTimeout> | undefined;
  #fail: ((failure: Failure) => void) | undefined;
  /** Mails that went out on it. */
  sent = 0;
  isOpen = true;
  /** Hears once that it is gone. */
  onGone = () => {};

  constructor(options: SmtpOptions) {
    if (options.plain && !isOnThisMachine(options.host)) throw new Error(`Without TLS mail goes to a server on this machine alone, not to ${options.host}.`);
    this.#options = options;
    this.#waits = waitsOf(options);
    const { host, port, tls, plain = false, name, ca } = options;
    this.#smtp = new SMTPConnection({
      host, port, secure: tls, requireTLS: !tls && !plain, ignoreTLS: plain, ...(name && { name }), tls: { minVersion: 'TLSv1.2', ...(ca && { ca }) },
      // From the first packet to the last of the handshake; the greeting has a limit of its own within.
      connectionTimeout: this.#waits.connect + this.#waits.greeting, greetingTimeout: this.#waits.greeting, dnsTimeout: this.#waits.connect,
      socketTimeout: this.#waits.dot, socketCloseTimeout: 0, maxResponseSize: 65_536,
    });
    this.#smtp.on('error', (error: Failure) => this.#over(error));
    // Whatever ended it is told by itself, right after.
    this.#smtp.on('end', () => queueMicrotask(() => this.#over({ code: 'ECONNECTION' })));
  }

  #over(failure: Failure): void {
    clearTimeout(this.#timer);
    if (!this.isOpen) return;
    this.isOpen = false;
    this.#fail?.(failure);
    this.#smtp.close();
    this.onGone();
  }

  /** Breaks it off. */
  close(): void {
    this.#over({ code: 'ECONNECTION' });
  }

  #enter(stage: Stage, wait: number): void {
    this.#stage = stage;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#over({ code: 'ETIMEDOUT' }), wait);
  }

  /** @throws SmtpFailure */
  async #step<T>(begin: (done: (error: Failure | null | undefined, value?: T) => void) => void): Promise<T> {
    try {
      return await new Promise<T>((resolve, reject) => {
        this.#fail = reject;
        if (!this.isOpen) reject({ code: 'ECONNECTION' } satisfies Failure);
        else begin((error, value) => (error ? reject(error) : resolve(value as T)));
      });
    } catch (error) {
      // A connection on which something went wrong is no connection to go on with.
      const stage = this.#stage;
      this.close();
      throw new SmtpFailure(error as Failure, stage);
    } finally {
      this.#fail = undefined;
      clearTimeout(this.#timer);
    }
  }

  /** @throws SmtpFailure */
  async open(): Promise<void> {
    this.#enter('connect', this.#waits.connect + this.#waits.greeting);
    await this.#step<void>((done) => this.#smtp.connect((error?: unknown) => done(error as Failure | undefined)));
    const { user, password } = this.#options;
    if (user === undefined) return;
    this.#enter('login', this.#waits.command);
    await this.#step<unknown>((done) => this.#smtp.login({ user, pass: password, credentials: { user, pass: password } }, (error) => done(error as Failure | null)));
  }

  /** @returns what the server said; @throws SmtpFailure */
  async send({ envelope, raw }: OutgoingMail): Promise<string> {
    this.#enter('envelope', this.#waits.command);
    const text = noted(raw, () => {
      // Whoever doesn't ask for the text has said something else too much or too little: no later answer could be trusted.
      if (/^354[ -]/.test(String(this.#smtp.lastServerResponse))) this.#enter('data', this.#waits.text);
      else this.close();
    }, () => this.#enter('done', this.#waits.dot));
    const info = await this.#step<{ response?: string }>((done) => this.#smtp.send({ from: envelope.from, to: [envelope.to], size: raw.length }, text, (error, value) => done(error as Failure | null, value)));
    this.sent += 1;
    return String(info.response ?? '');
  }
}
