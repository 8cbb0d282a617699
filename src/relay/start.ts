import { CatalogueKeeper } from './catalogues/keeper.ts';
import { clock as wallClock, day, hour, second, type Clock } from './clock.ts';
import { isTooLong, listenForTasks } from './control/socket.ts';
import type { Log } from './log.ts';
import { serveMetrics } from './metrics-server.ts';
import { Metrics } from './metrics.ts';
import { serverOf } from './server.ts';
import { openStore } from './open-store.ts';
import type { Keys } from './settings/keys.ts';
import { domainOf, SettingsFault, type Settings } from './settings/read-settings.ts';
import type { Sender } from './sender/sender.ts';
import type { Store } from './store/store.ts';
import { Guard } from './way/guard.ts';
import { Intake } from './way/intake.ts';

export interface SenderNeeds {
  store: Store;
  settings: Settings;
  /** What links in mails begin with; ends with a slash. */
  address: string;
  clock: Clock;
  log: Log;
  metrics: Metrics;
}

/** A clock before this is wrong: the relay was written later. */
const writtenOn = Date.UTC(2026, 10, 1);
/** How long mail on its way may take to end when the relay is stopped, and answers on theirs [ms]. */
const [mailEnds, answersEnd] = [25 * second, 10 * second];
/** How long what is over is kept [ms]: bodies, keys and states, catalogues nobody puts up any more, questions nobody answers. */
const keep = { bodies: 7 * day, rows: 30 * day, catalogues: 30 * day, expiresAfter: 7 * day };
const tidyEvery = hour;

export interface Running {
  /** Where it listens, with a slash. */
  address: string;
  port: number;
  metricsPort: number | undefined;
  /** What should be looked at, though it runs. */
  warnings: readonly string[];
  /** Ends it in the order in which nothing taken is lost. Once. */
  stop(): Promise<void>;
  /** Resolves once it has ended; false where the store broke under it. */
  ended: Promise<boolean>;
}

/** What was begun so far, ended last first. */
class Begun {
  readonly #ends: (() => Promise<void> | void)[] = [];
  add(end: () => Promise<void> | void) {
    this.#ends.push(end);
  }
  async end() {
    for (const end of this.#ends.splice(0).reverse()) await end();
  }
}

/**
 * Starts a relay: its store, what sends, what listens.
 *
 * @throws SettingsFault, KeysFault, StoreUnusable, each with what to do; or as Node does where the port can't be had
 */
export async function startRelay(settings: Settings, log: Log, newSender: (needs: SenderNeeds) => Sender, clock: Clock = wallClock): Promise<Running> {
  if (clock.now() < writtenOn) throw new SettingsFault(['the clock of this machine stands before the relay was written; set it']);
  if (isTooLong(settings.data)) throw new SettingsFault([`ACRE_DATA: ${settings.data} is too long a path for a socket in it; choose a shorter one`]);
  const begun = new Begun();
  let broke = () => {};
  let due = () => {};
  const { store, keys } = await openStore(settings, clock, { onBroken: () => broke(), onDue: () => due(), log });
  begun.add(() => store.close());
  try {
    return await begin({ settings, log, clock, keys, store, newSender, begun, onBroken: (end) => { broke = end; }, onDue: (wake) => { due = wake; } });
  } catch (error) {
    await begun.end();
    throw error;
  }
}

interface Beginning {
  settings: Settings;
  log: Log;
  clock: Clock;
  keys: Keys;
  store: Store;
  newSender: (needs: SenderNeeds) => Sender;
  begun: Begun;
  onBroken(end: () => void): void;
  onDue(wake: () => void): void;
}

async function begin({ settings, log, clock, keys, store, newSender, begun, onBroken, onDue }: Beginning): Promise<Running> {
  const { host, port } = settings.listen;
  const address = settings.address ?? `http://${host.includes(':') ? `[${host}]` : host}:${port}/`;
  const guard = new Guard(store, settings);
  const metrics = new Metrics(store, clock, () => guard.closed === undefined);
  const keeper = new CatalogueKeeper({ store, clock, log, dealers: settings.dealers });
  const warnings = await keeper.look();
  keeper.start();
  begun.add(() => keeper.stop());

  const tidying = setInterval(() => void store.tidy(clock.now(), keep).catch((error: unknown) => log.error('not tidied', error)), tidyEvery);
  tidying.unref();
  begun.add(() => clearInterval(tidying));

  const sender = newSender({ store, settings, address, clock, log, metrics });
  const domain = domainOf(settings);
  const intake = new Intake({ store, clock, keys, dealers: settings.dealers, mailsPerDay: settings.mailsPerDay, domain });
  await guard.start();
  begun.add(() => guard.stop());
  const wake = () => sender.wake();
  const tasks = await listenForTasks(settings.data, { store, keys, clock, domain, wake }, log);
  begun.add(() => tasks.close());
  const figures = settings.metrics && await serveMetrics(metrics, settings.metrics);
  if (figures) begun.add(() => figures.close());

  const app = serverOf({ settings, address, store, keys, clock, log, metrics, guard, intake, wake });
  begun.add(() => app.close());
  await app.listen({ host, port });
  await sender.start();
  onDue(wake);
  const bound = (app.server.address() as { port: number }).port;
  log.info('listening', { port: bound, dealers: settings.dealers.size, mail: settings.mail.kind });

  let ended: (whole: boolean) => void = () => {};
  const end = new Promise<boolean>((resolve) => { ended = resolve; });
  let stopping: Promise<void> | undefined;
  const stop = () => {
    stopping ??= (async () => {
      log.info('stopping');
      guard.close();
      // No more is claimed from here on; what is on its way goes on beside the answers that do.
      const sending = sender.stop(mailEnds);
      const cut = setTimeout(() => app.server.closeAllConnections(), answersEnd);
      await app.close();
      clearTimeout(cut);
      await sending;
      await begun.end();
      log.info('stopped');
      ended(true);
    })();
    return stopping;
  };
  onBroken(() => {
    log.error('store broken', undefined);
    guard.close();
    ended(false);
  });
  return { address: settings.address ?? `http://${host.includes(':') ? `[${host}]` : host}:${bound}/`, port: bound, metricsPort: figures?.port, warnings, stop, ended: end };
}
