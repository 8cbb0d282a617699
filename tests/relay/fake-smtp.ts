import { createServer, type Server, type Socket } from 'node:net';
import type { AddressInfo } from 'node:net';
import { EventEmitter, once } from 'node:events';

/** Where a server can do something unusual. */
export type Step = 'greeting' | 'ehlo' | 'mail' | 'rcpt' | 'data' | 'dot' | 'quit' | 'auth' | 'rset';

/**
 * What it does there: says this (lines without their end), says it in pieces as they are, drops the connection, or never says
 * anything. `next` happens after what was said.
 */
export type Doing = string | { pieces: readonly (string | Buffer)[] } | 'drop' | 'reset' | 'hang' | { say: string; next: 'drop' | 'reset' | string } | { wait: Promise<unknown>; say: string };

/** @returns undefined for what a server usually says */
export type Script = (step: Step, said: string, connection: number) => Doing | undefined;

/** A mail that was wholly received, whether or not it was answered. */
export interface Received {
  from: string;
  to: string[];
  raw: string;
  messageId: string;
  /** Whether 250 was said to it. */
  taken: boolean;
  at: number;
}

const usual: Record<Step, string> = {
  greeting: '220 fake.example ESMTP', ehlo: '250-fake.example\r\n250-PIPELINING\r\n250 8BITMIME', mail: '250 2.1.0 sender fine', rcpt: '250 2.1.5 recipient fine',
  data: '354 go on', dot: '250 2.0.0 taken', quit: '221 bye', auth: '235 2.7.0 fine', rset: '250 fine',
};

/** A mail server that does what a script says, byte by byte, and keeps a ledger of all that was wholly received. */
export class FakeSmtp extends EventEmitter {
  readonly ledger: Received[] = [];
  script: Script = () => undefined;
  connections = 0;
  /** Most mails between MAIL and the dot at once. */
  mostAtOnce = 0;
  #atOnce = 0;
  readonly #sockets = new Set<Socket>();
  readonly #server: Server;

  private constructor() {
    super();
    this.#server = createServer((socket) => this.#serve(socket));
  }

  static async listening(port = 0): Promise<FakeSmtp> {
    const fake = new FakeSmtp();
    fake.#server.listen(port, '127.0.0.1');
    await once(fake.#server, 'listening');
    return fake;
  }

  get port(): number {
    return (this.#server.address() as AddressInfo).port;
  }

  /** Resolves once so many mails were wholly received. */
  async received(count: number): Promise<void> {
    while (this.ledger.length < count) await once(this, 'received');
  }

  async close(): Promise<void> {
    for (const socket of this.#sockets) socket.destroy();
    this.#server.close();
    await once(this.#server, 'close');
  }

  #serve(socket: Socket): void {
    this.connections += 1;
    const connection = this.connections;
    this.#sockets.add(socket);
    socket.setEncoding('latin1').on('error', () => undefined).on('close', () => {
      this.#sockets.delete(socket);
      if (within) this.#atOnce -= 1;
      within = false;
      this.emit('gone');
    });
    let within = false;
    let rest = '';
    let text: string | undefined;
    let from = '';
    let to: string[] = [];

    /** @returns whether the connection goes on */
    const act = async (step: Step, said: string): Promise<string | undefined> => {
      const doing = this.script(step, said, connection) ?? usual[step];
      this.emit(step, said);
      if (doing === 'hang') return undefined;
      if (doing === 'drop') return void socket.end();
      if (doing === 'reset') return void socket.resetAndDestroy();
      if (typeof doing === 'string') {
        socket.write(`${doing}\r\n`);
        return doing;
      }
      if ('pieces' in doing) {
        for (const piece of doing.pieces) {
          socket.write(piece);
          await new Promise((resolve) => setImmediate(resolve));
        }
        return String(doing.pieces.join(''));
      }
      if ('wait' in doing) {
        await doing.wait;
        socket.write(`${doing.say}\r\n`);
        return doing.say;
      }
      socket.write(`${doing.say}\r\n`, () => {
        if (doing.next === 'drop') socket.end();
        else if (doing.next === 'reset') socket.resetAndDestroy();
        else socket.write(`${doing.next}\r\n`);
      });
      return doing.say;
    };

    const line = async (said: string): Promise<void> => {
      const verb = said.slice(0, 4).toUpperCase();
      if (verb === 'EHLO' || verb === 'HELO') await act('ehlo', said);
      else if (verb === 'AUTH') await act('auth', said);
      else if (verb === 'RSET') await act('rset', said);
      else if (verb === 'QUIT') {
        await act('quit', said);
        socket.end();
      } else if (verb === 'MAIL') {
        if (!within) this.#atOnce += 1;
        within = true;
        this.mostAtOnce = Math.max(this.mostAtOnce, this.#atOnce);
        from = /<(.*?)>/.exec(said)?.[1] ?? '';
        to = [];
        await act('mail', said);
      } else if (verb === 'RCPT') {
        if ((await act('rcpt', said))?.startsWith('2')) to.push(/<(.*?)>/.exec(said)?.[1] ?? '');
      } else if (verb === 'DATA') {
        if (to.length === 0) socket.write('503 5.5.1 nobody to send it to\r\n');
        else if ((await act('data', said))?.startsWith('354')) text = '';
      } else socket.write('500 5.5.2 what?\r\n');
    };

    const dot = async (): Promise<void> => {
      const raw = text!.replace(/^\.\./gm, '.');
      text = undefined;
      const entry: Received = { from, to, raw, messageId: /^Message-ID: (\S+)/im.exec(raw)?.[1] ?? '', taken: false, at: performance.now() };
      this.ledger.push(entry);
      if (within) this.#atOnce -= 1;
      within = false;
      const said = await act('dot', raw);
      entry.taken = said?.startsWith('250') ?? false;
      this.emit('received', entry);
    };

    const take = async (chunk: string): Promise<void> => {
      const seen = Math.max(0, rest.length - '\r\n.\r\n'.length);
      rest += chunk;
      for (let from = seen; ; from = 0) {
        const end = text === undefined ? rest.indexOf('\r\n') : rest.indexOf('\r\n.\r\n', from);
        if (end < 0) {
          // Whoever drops it in the middle has seen some of it.
          if (text !== undefined && rest !== '') this.emit('text', rest);
          return;
        }
        if (text === undefined) {
          const said = rest.slice(0, end);
          rest = rest.slice(end + '\r\n'.length);
          await line(said);
        } else {
          text = rest.slice(0, end + '\r\n'.length);
          rest = rest.slice(end + '\r\n.\r\n'.length);
          await dot();
        }
      }
    };
    const chunks: string[] = [];
    let isBusy = true;
    const drain = async (): Promise<void> => {
      while (chunks.length > 0) await take(chunks.shift()!);
      isBusy = false;
    };
    const begin = async (): Promise<void> => {
      await act('greeting', '');
      await drain();
    };
    void begin();
    socket.on('data', (chunk: string) => {
      chunks.push(chunk);
      if (isBusy) return;
      isBusy = true;
      void drain();
    });
  }
}
