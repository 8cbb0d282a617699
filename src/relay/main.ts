import { existsSync } from 'node:fs';
import { isAddress } from '../documents/mail-address.ts';
import type { Task } from './control/tasks.ts';
import { checkSettings, doTask, move, newDevice, rotate, salvageStore, serve, type Ending, type World } from './run.ts';
import { sendingBy } from './sending.ts';
import { composeAt } from './mail/compose.ts';
import type { Compose } from './sender/composed.ts';
import { composeInThread } from './sender/mail-threads.ts';

export { requestsInDatabase } from './demand/requests-in-database.ts';

/** What the command line can have the relay do. */
export type RelayTask = { task: 'serve' } | { task: 'check' } | { task: 'rotate' } | { task: 'move' } | { task: 'token'; dealer: string } | { task: 'salvage'; from: string; into: string } | Task;

/** Mails are made in a thread of their own, a file beside this one; run from the sources there is none, and they are made here. */
function composeFor(address: string): Compose {
  const thread = new URL('mail-thread.js', import.meta.url);
  return existsSync(thread) ? composeInThread(thread, address) : composeAt(address);
}

const signals = ['SIGTERM', 'SIGINT'] as const;
/** A terminal that goes away is no wish to stop: mail goes on. */
const ignored = 'SIGHUP';

const worldWith = (told: Pick<World, 'out' | 'err'>): World => ({
  ...told,
  env: process.env,
  exit: (code) => process.exit(code),
  onStop(stop) {
    const deaf = () => {};
    signals.forEach((signal) => process.on(signal, stop));
    process.on(ignored, deaf);
    return () => {
      signals.forEach((signal) => process.off(signal, stop));
      process.off(ignored, deaf);
    };
  },
});

/**
 * @param settings  a file or folder, where one was named
 * @returns 0 well, 1 what was given has faults, 70 the disk failed
 */
export async function run(task: RelayTask, settings: string | undefined, told: Pick<World, 'out' | 'err'>): Promise<Ending> {
  // What is made here is for the user it runs as, and nobody else.
  process.umask(0o077);
  const world = worldWith(told);
  if ('address' in task && !isAddress(task.address)) {
    told.err(`${JSON.stringify(task.address)}: expected one address, such as ann@buyer.example`);
    return 1;
  }
  switch (task.task) {
    case 'serve': return serve(settings, (needs) => sendingBy(needs, composeFor(needs.address)), world);
    case 'check': return checkSettings(settings, world);
    case 'token': return newDevice(settings, task.dealer, world);
    case 'rotate': return rotate(settings, world);
    case 'move': return move(settings, world);
    case 'salvage': return salvageStore(task.from, task.into, world);
    default: return doTask(settings, task, world);
  }
}
