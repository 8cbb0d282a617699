import { second } from '../clock.ts';
import type { Claim, Outcome } from '../store/store.ts';
import { StoreBroken } from '../store/failures.ts';
import { attempt, type Attempted, type AttemptParts } from './attempt.ts';
import { Brake } from './brake.ts';
import { Lanes } from './lanes.ts';
import { Rate, type Rates } from './rate.ts';
import type { SenderMetrics } from './sender-metrics.ts';
import { timers as realTimers, type Timers } from './timers.ts';
import { domainOf } from '../settings/read-settings.ts';
import { newIds } from '../way/messages.ts';

export interface SenderParts extends Omit<AttemptParts, 'chance'> {
  metrics: SenderMetrics;
  rates?: Rates;
  /** Mails on their way at once. */
  most?: number;
  chance?: () => number;
  timers?: Timers;
}

export interface Sender {
  /** Frees what an earlier process left claimed, and begins. */
  start(): Promise<void>;
  /** Begins nothing more, lets what is on its way end for so long [ms], breaks the rest off, and has all of it written. */
  stop(deadline?: number): Promise<void>;
  /** Something new may be sent. */
  wake(): void;
}

const usualMost = 8;
const usualDeadline = 25 * second;
/** After what was on its way was broken off, so long for its outcome to be written [ms]. */
const lastWord = 2 * second;
/** A mail that ended a process so often is looked at by a person. */
const crashesHeld = 3;
/** Signs of life, and the silence after which what another process claimed is taken to be left [ms]. */
const [beatEvery, silentFor] = [10 * second, 60 * second];
/** Shortest and longest sleep [ms], for clocks are put forward and back; where others store too, nobody says that they did. */
const [shortestSleep, longestAlone, longestTogether] = [1 * second, 60 * second, 2 * second];
/** After the store failed, so long until it is asked again [ms]. */
const afterTrouble = 5 * second;

/** Sends what is stored, as much at once as the way out and those it goes to bear. */
export function createSender(parts: SenderParts): Sender {
  const { store, transport, clock, log, metrics, most = usualMost, timers = realTimers, chance = Math.random } = parts;
  const lanes = new Lanes(most);
  const rate = new Rate(parts.rates ?? {});
  const brake = new Brake((what, reason, dealer) => {
    metrics.paused(what, reason);
    log.warn('sending held back', { what, reason, dealer });
  });
  const busy = new Set<Promise<void>>();
  let state: 'new' | 'running' | 'stopping' = 'new';
  const isRunning = () => state === 'running';
  let looping: Promise<void> | undefined;
  /** What was left out when there was nothing else: it needn't be asked for again before something changes. */
  let dryWithout: string | undefined;
  let rouse = () => {};
  let roused = false;

  function wake(): void {
    dryWithout = undefined;
    poke();
  }
  function poke(): void {
    roused = true;
    rouse();
  }

  async function asleep(wait: number): Promise<void> {
    if (roused) return;
    await new Promise<void>((resolve) => {
      const cancel = timers.after(wait, resolve);
      rouse = () => {
        cancel();
        resolve();
      };
    });
    rouse = () => {};
  }

  /** What the next decisions go by. @returns what is written, which a run of refusals may change */
  function judged({ dealer, role }: Claim, { outcome, verdict }: Attempted): Outcome {
    const now = clock.elapsed();
    if (!verdict) return outcome;
    switch (verdict.kind) {
      case 'sent': brake.ended(now, dealer, 'well'); break;
      case 'closed':
        brake.closed(now, verdict.reason);
        log.error('the way out is closed', undefined, { reason: verdict.reason, reply: verdict.reply });
        break;
      case 'unsure':
        log.warn('no answer to a whole mail', { role, dealer });
        brake.unreached(now);
        break;
      case 'later':
        if (verdict.unreached) brake.unreached(now);
        else brake.ended(now, dealer, 'failed');
        break;
      case 'refused':
        brake.ended(now, dealer, verdict.noSuchAddress ? 'nobody' : 'failed');
        if (verdict.ours) {
          log.error('mail refused for what we are', undefined, { reason: verdict.reason, reply: verdict.reply, dealer });
          if (verdict.reason === 'policy' && brake.byPolicy()) {
            brake.closed(now, 'policy');
            return { state: 'queued', at: clock.now(), reason: 'policy' };
          }
        }
        break;
    }
    return outcome;
  }

  async function settle(claim: Claim, outcome: Outcome): Promise<void> {
    metrics.settled(claim.role, outcome.state);
    if (outcome.state === 'expired' || outcome.state === 'held') log.warn('mail not sent', { state: outcome.state, reason: outcome.reason, role: claim.role, dealer: claim.dealer });
    const isLost = claim.role === 'buyer' && (outcome.state === 'refused' || outcome.state === 'expired');
    const word = isLost ? newIds(domainOf(parts.settings)) : undefined;
    if (!await store.settle(claim, outcome, clock.now(), word)) log.warn('somebody else has the mail', { role: claim.role, dealer: claim.dealer });
    // The dealer may have to hear of it.
    if (isLost) wake();
  }

  async function work(claim: Claim, destination: string): Promise<void> {
    let how: Parameters<Lanes['leave']>[1] = 'neither';
    try {
      const attempted = await attempt(claim, { ...parts, chance }, () => state === 'stopping');
      const { verdict } = attempted;
      how = verdict?.kind === 'sent' ? 'well' : verdict?.kind === 'later' && verdict.slower ? 'slower' : 'neither';
      const outcome = judged(claim, attempted);
      if (verdict?.kind === 'refused' && verdict.noSuchAddress && outcome.state === 'refused') await store.suppress(claim.recipient, { dealer: claim.dealer }, 'bounce', clock.now());
      await settle(claim, outcome);
    } catch (error) {
      // It stays claimed, and is freed when a relay starts: what became of it can't be written.
      log.error('outcome not stored', error, { role: claim.role, dealer: claim.dealer });
    } finally {
      lanes.leave(destination, how);
    }
  }

  const destinationOf = ({ role, dealer, document }: Claim) => (role === 'dealer' ? `dealer:${dealer}` : document.address.slice(document.address.lastIndexOf('@') + 1).toLowerCase());

  /** Claims one, where one more may go. @returns how long until it is worth trying again [ms], 0 at once, or undefined: until something happens */
  async function next(): Promise<number | undefined> {
    const now = clock.elapsed();
    const { wait, most: bearable } = brake.all(now);
    const held = Math.max(wait, rate.wait(now));
    if (held > 0) return held;
    if (busy.size >= Math.min(most, bearable)) return undefined;
    const except = { dealers: brake.dealers(now), destinations: lanes.full() };
    const without = JSON.stringify(except);
    const [claim] = without === dryWithout ? [] : await store.claim(1, clock.now(), crashesHeld, except);
    if (claim) {
      rate.take(now);
      const destination = destinationOf(claim);
      lanes.enter(destination);
      const working = work(claim, destination).finally(() => {
        busy.delete(working);
        metrics.busy(busy.size);
        poke();
      });
      busy.add(working);
      metrics.busy(busy.size);
      return 0;
    }
    const due = await store.nextDue();
    if (except.dealers.length + except.destinations.length > 0) dryWithout = without;
    return due === undefined ? undefined : Math.max(shortestSleep, due - clock.now());
  }

  /** Waits for what is on its way, so long at most [ms]. */
  async function ended(most: number): Promise<void> {
    if (busy.size === 0) return;
    let cancel = () => {};
    await Promise.race([Promise.all(busy), new Promise<void>((resolve) => { cancel = timers.after(most, resolve); })]);
    cancel();
  }

  async function loop(): Promise<void> {
    let beatAt = clock.elapsed();
    while (isRunning()) {
      roused = false;
      let wait: number | undefined;
      try {
        if (clock.elapsed() - beatAt >= beatEvery) {
          beatAt = clock.elapsed();
          await store.beat(clock.now());
          if (!isAlone) await store.release(clock.now(), silentFor);
        }
        wait = await next();
      } catch (error) {
        if (error instanceof StoreBroken) return;
        log.error('nothing could be claimed', error);
        wait = afterTrouble;
      }
      if (wait !== 0 && isRunning()) {
        await asleep(Math.min(wait ?? Infinity, isAlone ? longestAlone : longestTogether, busy.size > 0 ? beatEvery : Infinity));
        if (!roused) dryWithout = undefined;
      }
    }
  }

  let isAlone = true;
  return {
    async start() {
      isAlone = (await store.health()).kind === 'sqlite';
      const freed = await store.release(clock.now(), isAlone ? undefined : silentFor);
      if (freed > 0) log.info('mail of an earlier process is tried again', { count: freed });
      state = 'running';
      looping = loop();
    },
    async stop(deadline = usualDeadline) {
      state = 'stopping';
      poke();
      await looping;
      await ended(deadline);
      transport.abort();
      // A mail that is still being made stays claimed, and is freed at the next start.
      await ended(lastWord);
      await transport.close();
    },
    wake,
  };
}
