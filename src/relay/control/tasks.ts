import { isAddress } from '../../documents/mail-address.ts';
import * as z from '../../zod.ts';
import { takeBounce } from '../bounces/take-bounce.ts';
import type { Clock } from '../clock.ts';
import { recipientOf } from '../hashes.ts';
import type { Keys } from '../settings/keys.ts';
import type { Store } from '../store/store.ts';

const address = z.string().check(z.refine(isAddress));
const mostSignsOfMail = 1024 * 1024;

/** What an administrator can have done, as it goes over the relay's own socket. */
export const task = z.discriminatedUnion('task', [
  z.strictObject({ task: z.literal('held') }),
  z.strictObject({ task: z.literal('undelivered') }),
  z.strictObject({ task: z.literal('again'), messages: z.union([z.literal('all'), z.array(z.string().check(z.regex(/^\d{1,15}$/)))]) }),
  z.strictObject({ task: z.literal('export'), address }),
  z.strictObject({ task: z.literal('erase'), address }),
  z.strictObject({ task: z.literal('stop'), address }),
  z.strictObject({ task: z.literal('bounce'), mail: z.string().check(z.maxLength(mostSignsOfMail)) }),
  z.strictObject({ task: z.literal('statistics'), dealer: z.optional(z.string()) }),
]);
export type Task = z.infer<typeof task>;

export interface TaskParts {
  store: Store;
  keys: Keys;
  clock: Clock;
  /** Of the sender: the right-hand side of Message-IDs. */
  domain: string;
  /** Something may be sent again. */
  wake(): void;
}

const counted = (many: number, one: string) => `${many} ${one}${many === 1 ? '' : 's'}`;

/** Does a task and tells of it, a line at a time. */
export async function* runTask(asked: Task, parts: TaskParts): AsyncIterable<string> {
  const { store, keys, clock, wake } = parts;
  const now = clock.now();
  switch (asked.task) {
    case 'held':
      for (const { message, dealer, role, reason, since } of await store.held()) yield `${message}  ${new Date(since).toISOString()}  ${dealer}  ${role}  ${reason || 'a program may have sent it'}`;
      return;
    case 'undelivered':
      for (const { message, dealer, state, reason, since, told } of await store.undelivered()) yield `${message}  ${new Date(since).toISOString()}  ${dealer}  ${state}  ${reason}  ${told === undefined ? 'the dealer wasn’t to be told' : `word to the dealer: ${told}`}`;
      return;
    case 'again': {
      const sent = await store.sendAgain(asked.messages, now);
      wake();
      yield `${counted(sent, 'mail')} queued again`;
      return;
    }
    case 'export':
      yield JSON.stringify(await store.exportOf(recipientOf(keys.addresses, asked.address), asked.address), undefined, 1);
      return;
    case 'erase': {
      const erased = await store.erase(recipientOf(keys.addresses, asked.address), asked.address, now);
      yield `${counted(erased, 'request')} erased; whether this person stopped mail is still known, by a keyed hash alone`;
      return;
    }
    case 'stop':
      await store.suppress(recipientOf(keys.addresses, asked.address), { all: true }, 'stop', now);
      yield 'stopped: no dealer sends there any more';
      return;
    case 'bounce':
      for (const taken of await takeBounce(asked.mail, parts)) yield taken;
      wake();
      return;
    case 'statistics':
      for await (const row of store.statistics(asked.dealer)) yield JSON.stringify(row);
  }
}
