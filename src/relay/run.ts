import { randomBytes } from 'node:crypto';
import { resolve } from 'node:path';
import { clock } from './clock.ts';
import { handToRelay } from './control/socket.ts';
import { runTask, type Task } from './control/tasks.ts';
import { sha256 } from './hashes.ts';
import { logTo } from './log.ts';
import { keysFileOf, markOf, openStore, storeFileOf } from './open-store.ts';
import { KeysFault, readKeys, rotateKeys } from './settings/keys.ts';
import { domainOf, readSettings, SettingsFault, type Settings } from './settings/read-settings.ts';
import { startRelay, type SenderNeeds } from './start.ts';
import type { Sender } from './sender/sender.ts';
import { StoreAway, StoreUnusable } from './store/failures.ts';

/** What the command is given of the world. */
export interface World {
  env: Readonly<Record<string, string | undefined>>;
  out(line: string): void;
  err(line: string): void;
  /** Calls back for every wish that the process end. @returns how to hear no more of it */
  onStop(stop: () => void): () => void;
  /** Ends the process at once. */
  exit(code: number): void;
}

/** Ends as the command line does: 0 well, 1 what was given has faults, 70 the program or its disk failed. */
export type Ending = 0 | 1 | 70;

const isOurs = (error: unknown): error is Error => [KeysFault, StoreUnusable, StoreAway, SettingsFault].some((ours) => error instanceof ours);

async function told(world: World, job: () => Promise<Ending>): Promise<Ending> {
  try {
    return await job();
  } catch (error) {
    if (isOurs(error)) {
      error.message.split('\n').forEach(world.err);
      return 1;
    }
    const { code, syscall } = error as { code?: unknown; syscall?: unknown };
    if (syscall !== 'listen') throw error;
    world.err(`ACRE_LISTEN: the place to listen at can’t be had (${String(code)}); stop what listens there, or name another`);
    return 1;
  }
}

/** Runs a relay until it is asked to stop; asked twice it ends at once, which loses nothing that was taken. */
export const serve = (settingsFile: string | undefined, newSender: (needs: SenderNeeds) => Sender, world: World): Promise<Ending> => told(world, async () => {
  const settings = await readSettings(world.env, settingsFile);
  const relay = await startRelay(settings, logTo(settings.log), newSender);
  relay.warnings.forEach(world.err);
  world.err(`The relay listens at ${relay.address} for ${[...settings.dealers.keys()].join(', ')}`);
  world.err(settings.mail.kind === 'folder' ? `No mail server is named: mail is written to ${settings.mail.folder}` : `Mail goes out through ${settings.mail.host}`);
  let asked = 0;
  const deaf = world.onStop(() => {
    asked += 1;
    if (asked > 1) world.exit(1);
    else void relay.stop();
  });
  const whole = await relay.ended;
  deaf();
  if (whole) return 0;
  world.err('The disk failed under the store. Nothing more is taken. Look at the disk before you start the relay again.');
  world.exit(70);
  return 70;
});

/** Says what is wrong with the settings, and starts nothing. */
export const checkSettings = (settingsFile: string | undefined, world: World): Promise<Ending> => told(world, async () => {
  const settings = await readSettings(world.env, settingsFile);
  world.out(`all right, ${settings.dealers.size} dealer${settings.dealers.size === 1 ? '' : 's'}`);
  return 0;
});

async function here(settings: Settings, asked: Task): Promise<AsyncIterable<string>> {
  const { store, keys } = await openStore(settings, clock);
  return (async function* lines() {
    try {
      yield* runTask(asked, { store, keys, clock, domain: domainOf(settings), wake: () => {} });
    } finally {
      await store.close();
    }
  })();
}

/** Has a task done: by the relay that runs on the data folder, or on the store itself where none does. */
export const doTask = (settingsFile: string | undefined, asked: Task, world: World): Promise<Ending> => told(world, async () => {
  const settings = await readSettings(world.env, settingsFile);
  for await (const line of await handToRelay(settings.data, asked) ?? await here(settings, asked)) world.out(line);
  return 0;
});

/** Makes a token for a counter of a dealer. It is shown once; the settings get its hash. */
export const newDevice = (settingsFile: string | undefined, dealer: string, world: World): Promise<Ending> => told(world, async () => {
  const settings = await readSettings(world.env, settingsFile);
  const known = settings.dealers.get(dealer);
  if (!known) throw new SettingsFault([`${JSON.stringify(dealer)}: no dealer of the settings, which know ${[...settings.dealers.keys()].join(', ')}`]);
  const token = randomBytes(32).toString('base64url');
  const taken = new Set(known.devices.map(({ id }) => id));
  const free = Array.from({ length: taken.size + 1 }, (_, index) => `counter-${index + 1}`).find((name) => !taken.has(name))!;
  world.err('The token, to be typed once into the counter; it can’t be shown again:');
  world.out(token);
  world.err(`Add this to "devices" of ${dealer} in the settings, under a name of your own, and start the relay again:`);
  world.err(JSON.stringify({ id: free, hash: sha256(token) }));
  return 0;
});

const withSecrets = <T>(settings: Settings, job: (file: string) => Promise<T>): Promise<T> => job(keysFileOf(settings)).catch((error: NodeJS.ErrnoException) => {
  throw error.code === 'ENOENT' ? new KeysFault(`${keysFileOf(settings)}: there are no secrets yet; they are made when the relay is first started`) : error;
});

/** Takes what the file in the data folder holds over to the database. */
export const move = (settingsFile: string | undefined, world: World): Promise<Ending> => told(world, async () => {
  const settings = await readSettings(world.env, settingsFile);
  if (settings.database === undefined) throw new SettingsFault(['ACRE_DATABASE: not set; name the database to move to, such as postgres://relay@db.example/relay']);
  const secrets = markOf(await withSecrets(settings, readKeys));
  const { moveStore } = await import('./store/move.ts');
  const counts = await moveStore({ file: storeFileOf(settings), address: settings.database, secrets }, clock.now());
  world.out(`moved and counted: ${Object.entries(counts).map(([table, count]) => `${table} ${count}`).join(', ')}`);
  world.out(`the file is set aside in ${settings.data}; start the relay with ACRE_DATABASE, and delete the file once you have a backup of the database`);
  return 0;
});

/** Copies what can be read of a damaged file into a new one. It asks for no settings, so that nothing keeps it from being done. */
export const salvageStore = (from: string, into: string, world: World): Promise<Ending> => told(world, async () => {
  const { salvage } = await import('./store/sqlite/salvage.ts');
  for (const { table, copied, senseless, unreadable } of salvage(resolve(from), resolve(into))) {
    const lost = [...(unreadable === 0 ? [] : [`${unreadable ?? 'some'} not readable`]), ...(senseless === 0 ? [] : [`${senseless} readable and damaged`])];
    world.out([`${table}: ${copied} copied`, ...lost].join(', '));
  }
  world.out(`${from} is as it was; keep it until you know that nothing is missed. Mail that isn’t as it was stored will be held: look with "acre-to-axle relay held".`);
  return 0;
});

/** Replaces the secrets that can be; those before them are taken for sixty days more. */
export const rotate = (settingsFile: string | undefined, world: World): Promise<Ending> => told(world, async () => {
  const settings = await readSettings(world.env, settingsFile);
  await withSecrets(settings, (file) => rotateKeys(file, clock.now()));
  world.out('replaced; start the relay again to use them');
  return 0;
});
