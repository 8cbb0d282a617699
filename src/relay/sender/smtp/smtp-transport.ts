import type { OutgoingMail, Transport } from '../transport.ts';
import { shortReply, verdictOf, type Verdict } from '../verdict.ts';
import { Connection, SmtpFailure, type SmtpOptions } from './connection.ts';

/** Mails on one connection, and how long it is kept for a next one [ms]: servers end those that idle, and a mail may be on it. */
const [mostOnOne, longestIdle] = [20, 2_000];

/** Sends to one mail server. Which mails go at once is the sender's to say: nothing waits here. */
export function smtpTransport(options: SmtpOptions): Transport {
  const idle: { connection: Connection; timer: ReturnType<typeof setTimeout> }[] = [];
  const open = new Set<Connection>();

  function keep(connection: Connection): void {
    if (connection.sent >= mostOnOne || !connection.isOpen) {
      connection.close();
      return;
    }
    const timer = setTimeout(() => connection.close(), longestIdle);
    idle.push({ connection, timer });
  }

  async function kept(): Promise<Connection | undefined> {
    const found = idle.pop();
    clearTimeout(found?.timer);
    // What the server said too much is read first, and ends it.
    if (found) await new Promise((resolve) => setImmediate(resolve));
    return found?.connection.isOpen ? found.connection : undefined;
  }

  async function opened(): Promise<Connection> {
    const connection = new Connection(options);
    open.add(connection);
    connection.onGone = () => {
      open.delete(connection);
      const place = idle.findIndex((each) => each.connection === connection);
      if (place < 0) return;
      clearTimeout(idle[place]!.timer);
      idle.splice(place, 1);
    };
    await connection.open();
    return connection;
  }

  async function sendOn(connection: Connection, mail: OutgoingMail): Promise<Verdict> {
    const reply = await connection.send(mail);
    keep(connection);
    return { kind: 'sent', reply: shortReply(reply) };
  }

  const judged = (error: unknown): Verdict => {
    if (error instanceof SmtpFailure) return verdictOf(error.failure, error.stage);
    return { kind: 'later', reason: 'transport', unreached: true, slower: false };
  };

  return {
    async send(mail) {
      const old = await kept();
      if (old) {
        try {
          return await sendOn(old, mail);
        } catch (error) {
          // It had ended while it lay there, or said something too much: of this mail's text nothing went out.
          const ended = error instanceof SmtpFailure && error.stage === 'envelope' && error.failure.responseCode === undefined;
          if (!ended) return judged(error);
        }
      }
      try {
        return await sendOn(await opened(), mail);
      } catch (error) {
        return judged(error);
      }
    },
    abort() {
      for (const connection of open) connection.close();
    },
    async close() {
      for (const connection of open) connection.close();
    },
  };
}
