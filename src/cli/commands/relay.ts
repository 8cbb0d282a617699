import type { RelayTask } from '../../relay/main.ts';
import type { Command, Given } from '../command.ts';
import type { ExitCode, Io } from '../io.ts';
import { oneLine } from '../one-line.ts';
import { wrongWord } from '../read-arguments.ts';

/** What can be typed behind `relay`, what belongs behind that, and what it does. */
const tasks: Readonly<Record<Exclude<RelayTask['task'], 'serve'>, { takes: string; least: number; most: number; does: string }>> = {
  check: { takes: '', least: 0, most: 0, does: 'reads the settings and lists all that is wrong with them' },
  held: { takes: '', least: 0, most: 0, does: 'lists mail that waits for a person to look at it' },
  undelivered: { takes: '', least: 0, most: 0, does: 'lists mail to buyers that was refused or given up, and how far the word to the dealer is' },
  again: { takes: 'all | MAIL…', least: 1, most: Infinity, does: 'queues held mail again, all of it or some by the numbers that held lists' },
  export: { takes: 'ADDRESS', least: 1, most: 1, does: 'prints everything that is held about a person, for him who asks' },
  erase: { takes: 'ADDRESS', least: 1, most: 1, does: 'erases it; that he stopped mail stays known, by a keyed hash' },
  stop: { takes: 'ADDRESS', least: 1, most: 1, does: 'sends nothing to a person any more' },
  bounce: { takes: 'FILE', least: 1, most: 1, does: 'reads a mail that came back, as a mail server hands it on; - for standard input' },
  statistics: { takes: '[DEALER]', least: 0, most: 1, does: 'prints what buyers answered who agreed to it, without who they were, a line of JSON each' },
  token: { takes: 'DEALER', least: 1, most: 1, does: 'makes a token for a counter of his' },
  move: { takes: '', least: 0, most: 0, does: 'takes all that is kept in the data folder over to the database ACRE_DATABASE names, while no relay runs' },
  salvage: { takes: 'FILE NEW', least: 2, most: 2, does: 'copies all that can be read of a damaged store into a new file, and says what couldn’t be' },
  rotate: { takes: '', least: 0, most: 0, does: 'replaces the secrets that can be; the old ones are taken for sixty days more' },
};
const names = Object.keys(tasks) as (keyof typeof tasks)[];

async function taskOf([name, ...behind]: readonly string[], io: Io): Promise<RelayTask | { wrong: string }> {
  if (name === undefined) return { task: 'serve' };
  const task = names.find((each) => each === name);
  if (!task) return { wrong: wrongWord('task', name, names) };
  const { takes, least, most } = tasks[task];
  if (behind.length < least) return { wrong: `relay ${task} needs ${takes} behind it` };
  if (behind.length > most) return { wrong: `relay ${task} doesn’t know what to do with ${JSON.stringify(behind[most])}` };
  const [first = ''] = behind;
  switch (task) {
    case 'check': case 'held': case 'undelivered': case 'move': case 'rotate': return { task };
    case 'again': return { task, messages: first === 'all' ? 'all' : behind };
    case 'export': case 'erase': case 'stop': return { task, address: first };
    case 'statistics': return { task, ...(first !== '' && { dealer: first }) };
    case 'token': return { task, dealer: first };
    case 'salvage': return { task, from: first, into: behind[1]! };
    case 'bounce': return { task, mail: new TextDecoder('latin1').decode(first === '-' ? await io.readStdin() : await io.readFile(first)) };
  }
}

async function runRelay({ options, rest }: Given, io: Io): Promise<ExitCode> {
  let task: Awaited<ReturnType<typeof taskOf>>;
  try {
    task = await taskOf(rest, io);
  } catch (error) {
    const { code } = error as { code?: unknown };
    if (typeof code !== 'string') throw error;
    io.err(oneLine(`${rest[1]}: the file can’t be read (${code})`));
    return 1;
  }
  if ('wrong' in task) {
    io.err(oneLine(`acre-to-axle: ${task.wrong}`));
    return 2;
  }
  // A file of its own beside this one: who only asks for a shortlist needs no server and no packages.
  const relay = await import('../../relay/main.ts').catch((error: unknown) => {
    if ((error as { code?: unknown }).code !== 'ERR_MODULE_NOT_FOUND') throw error;
    io.err('The relay’s packages aren’t installed; install acre-to-axle with its optional dependencies.');
    return undefined;
  });
  return relay ? relay.run(task, options.settings, { out: io.out, err: (line) => io.err(oneLine(line)) }) : 1;
}

export const relay: Command = {
  name: 'relay',
  summary: 'take requests for shortlists and send them by mail',
  options: [{ name: 'settings', takes: 'FILE', says: 'Who the dealers are: a file of JSON, or a folder of such files; ACRE_SETTINGS, or settings.json in the data folder, if not said.' }],
  rest: { shown: '[TASK]', least: 0, most: Infinity },
  details: [
    'Alone it runs until it is stopped, with its store and its secrets in ./acre-relay or the folder ACRE_DATA names. Until ACRE_SMTP names a mail server, every mail is written to a folder there and none goes out. demo/docs/administrator.md tells all settings.',
    ...names.map((name) => `relay ${name}${tasks[name].takes && ` ${tasks[name].takes}`}: ${tasks[name].does}.`),
    'What holds the store is asked where it runs; where no relay does, the store is opened for the task alone.',
  ],
  run: runRelay,
};
