import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { toPark, type Intake, type ParkedIntake } from './intake.ts';
import { readParked } from './read-parked.ts';
import { isPin, type StaffLock, type Unlocked } from './queue/staff-lock.ts';
import { hour, minute, type Clock } from './queue/clock.ts';
import type { ParkedEntry, ParkedStore } from './queue/parked-store.ts';
import { troubleOf, type StorageWhy } from './queue/storage-trouble.ts';

/** What staff are asked for: to make a PIN, to type it, or to make a new one in the place of one nobody knows. */
export type Asking = 'set' | 'unlock' | 'anew';

export type PinFault = { is: 'short' } | { is: 'differ' } | Exclude<Unlocked, { kind: 'open' | 'not-set-up' }>;

export interface Reopened {
  id: string;
  intake: ParkedIntake;
}

/** Those who are thrown away together, to whoever counts in hours. */
export interface NextToGo {
  count: number;
  /** The first of them, and the last [ms since 1970]. */
  from: number;
  by: number;
}

/** @param ends  when each is thrown away [ms since 1970], the first first */
export function nextToGo(ends: readonly number[]): NextToGo | undefined {
  const [from] = ends;
  if (from === undefined) return undefined;
  const together = ends.filter((end) => end - from < hour);
  return { count: together.length, from, by: together.at(-1)! };
}

/** Customers put aside, sealed; and the PIN that opens them. */
export class Parking implements ReactiveController {
  count = 0;
  /** While unlocked. */
  entries: readonly ParkedEntry[] | undefined;
  asking: Asking | undefined;
  fault: PinFault | undefined;
  trouble: StorageWhy | undefined;
  /** When they are thrown away [ms since 1970], the first first. */
  ends: readonly number[] = [];
  /** So many were, since the page was opened. */
  thrown = 0;
  private longest: number | undefined;
  private callOff = () => {};
  /** Called when the PIN was right, or is made. */
  private after: (() => void) | undefined;

  constructor(private readonly host: ReactiveControllerHost, private readonly lock: StaffLock, private readonly store: ParkedStore, private readonly clock: Clock) {
    host.addController(this);
  }

  hostConnected() {
    document.addEventListener('visibilitychange', this.woken);
    void this.look();
  }

  hostDisconnected() {
    document.removeEventListener('visibilitychange', this.woken);
    this.callOff();
  }

  /** @param longest  how long one may be parked [ms]; those who are longer, for the page was shut, go at once */
  async keepFor(longest: number) {
    this.longest = longest;
    await this.look();
  }

  /** The page shows something else, or nobody is there: what is parked is shut again. */
  shut() {
    this.lock.lock();
    this.entries = undefined;
    this.stopAsking();
  }

  async look() {
    await this.trying(async () => {
      await this.expire();
      this.count = await this.store.count();
      this.entries = await this.store.list();
    });
  }

  private readonly woken = () => { if (document.visibilityState === 'visible') this.tick(); };
  /** Goes by the clock on the wall each minute: a device that sleeps runs no timers. Unasked, so what trouble there is isn't told. */
  private readonly tick = () => void this.expire().catch(() => undefined);

  private async expire() {
    if (this.longest === undefined) return;
    const { gone, ends } = await this.store.expire(this.longest);
    this.ends = ends;
    this.callOff();
    if (ends.length > 0) this.callOff = this.clock.after(minute, this.tick);
    if (gone > 0) {
      this.thrown += gone;
      this.count = await this.store.count();
      this.entries = await this.store.list();
    }
    this.host.requestUpdate();
  }

  /** @returns undefined where it wasn't; a PIN may be asked for, and then it is tried again */
  async park(intake: Intake, id: string | undefined, done: () => void): Promise<void> {
    await this.trying(async () => {
      const outcome = await this.store.park(intake.name.trim(), toPark(intake), id);
      if (outcome.kind === 'no-lock') return this.ask('set', () => void this.park(intake, id, done));
      if (outcome.kind === 'not-saved') {
        this.trouble = outcome.why;
        return;
      }
      await this.look();
      done();
    });
  }

  /** Does something that is staff's alone: after the PIN, where there is one. */
  async guarded(act: () => void) {
    const publicKey = await this.trying(() => this.lock.publicKey());
    if (publicKey) this.ask('unlock', act);
    else act();
  }

  /** Shows who is parked. */
  show() {
    this.ask('unlock', () => void this.look());
  }

  async open(id: string): Promise<Reopened | undefined> {
    return this.trying(async () => {
      const opened = await this.store.open(id);
      const intake = opened && readParked(opened.draft);
      return intake && { id, intake };
    });
  }

  async remove(id: string) {
    await this.trying(async () => {
      await this.store.remove(id);
      await this.look();
    });
  }

  ask(asking: Asking, after?: () => void) {
    this.asking = asking;
    this.after = after ?? this.after;
    this.fault = undefined;
    this.host.requestUpdate();
  }

  stopAsking() {
    this.asking = undefined;
    this.after = undefined;
    this.fault = undefined;
    this.host.requestUpdate();
  }

  /** @param again  the same once more, where one is made */
  async answer(pin: string, again: string) {
    const fault = await this.trying(() => this.tried(pin, again));
    this.fault = fault ?? undefined;
    if (fault === undefined && this.trouble === undefined && this.asking) {
      const { after } = this;
      this.stopAsking();
      await this.look();
      after?.();
    }
    this.host.requestUpdate();
  }

  private async tried(pin: string, again: string): Promise<PinFault | undefined> {
    if (!isPin(pin)) return { is: 'short' };
    if (this.asking !== 'unlock') {
      if (pin !== again) return { is: 'differ' };
      if (this.asking === 'anew') await this.lock.makeAnew(pin);
      else await this.lock.setUp(pin);
    }
    const outcome = await this.lock.unlock(pin);
    if (outcome.kind === 'not-set-up') {
      this.ask('set');
      return { is: 'short' };
    }
    return outcome.kind === 'open' ? undefined : outcome;
  }

  private async trying<T>(work: () => Promise<T>): Promise<T | undefined> {
    this.trouble = undefined;
    try {
      return await work();
    } catch (thrown) {
      this.trouble = troubleOf(thrown).why;
      return undefined;
    } finally {
      this.host.requestUpdate();
    }
  }
}
