import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { holdsAnything, toPark, type Intake, type ParkedIntake } from './intake.ts';
import { minute, second, type Clock } from './queue/clock.ts';
import type { DraftStore, Left } from './queue/draft-store.ts';
import { readParked } from './read-parked.ts';

/** Held by each window that keeps a draft: what lies there under a lock that is free was left by a page that is gone. */
const lockOf = (id: string) => `acre-to-axle-counter-draft ${id}`;

/**
 * What stands on the screen, kept so that staff have it back after a crash, and what such a page left. It is sealed once
 * a second at the most while it changes, when the page goes out of sight, and each minute to tell that the page is there.
 */
export class Draft implements ReactiveController {
  left: Left | undefined;
  private readonly id = crypto.randomUUID();
  private intake: Intake | undefined;
  private isKept = false;
  /** Whether what changed is still to be written. */
  private isDue = false;
  /** Counts what was dropped: a write that was begun before brings nothing of it back. */
  private dropped = 0;
  private callOff = () => {};
  private callOffLeft = () => {};
  /** One write after the other, so that what is dropped isn't written once more. */
  private work: Promise<unknown> = Promise.resolve();
  private stopped = new AbortController();
  private isHeld = false;

  constructor(private readonly host: ReactiveControllerHost, private readonly store: DraftStore, private readonly clock: Clock) {
    host.addController(this);
  }

  hostConnected() {
    this.stopped = new AbortController();
    this.isHeld = false;
    document.addEventListener('visibilitychange', this.hidden);
    void this.look();
  }

  hostDisconnected() {
    this.stopped.abort();
    document.removeEventListener('visibilitychange', this.hidden);
    this.callOff();
    this.callOffLeft();
  }

  /** Told of the customer on the screen each time the page is drawn. */
  follow(intake: Intake | undefined) {
    if (intake === this.intake) return;
    const isWaiting = this.intake !== undefined && this.isDue;
    this.intake = intake;
    if (!intake) void this.drop();
    else if (!isWaiting) this.in(second, true);
  }

  /** Nothing of it is left once this has resolved. It never rejects. */
  drop(): Promise<void> {
    this.callOff();
    this.isDue = false;
    this.dropped += 1;
    const { left } = this;
    this.left = undefined;
    this.callOffLeft();
    return this.after(async () => {
      if (left) await this.store.drop(left.id);
      if (this.isKept) await this.store.drop(this.id);
      this.isKept = false;
    });
  }

  /** What was left, once staff's PIN was right. */
  async take(): Promise<ParkedIntake | undefined> {
    const { left } = this;
    if (!left) return undefined;
    this.left = undefined;
    this.host.requestUpdate();
    return readParked(await this.store.take(left.id).catch(() => undefined));
  }

  private in(wait: number, isDue: boolean) {
    this.callOff();
    this.isDue = isDue;
    this.callOff = this.clock.after(wait, this.write);
  }

  private readonly hidden = () => { if (document.visibilityState === 'hidden' && this.isDue) this.write(); };

  private readonly write = () => {
    const { intake, dropped } = this;
    this.callOff();
    this.isDue = false;
    const isOver = () => this.dropped !== dropped;
    if (!intake || !holdsAnything(intake) || !navigator.locks) return;
    void this.after(async () => {
      if (isOver()) return;
      this.hold();
      this.isKept = true;
      this.isKept = await this.store.keep(this.id, toPark(intake));
      if (!isOver() && !this.isDue) this.in(minute, false);
    });
  };

  private hold() {
    if (this.isHeld) return;
    this.isHeld = true;
    void navigator.locks.request(lockOf(this.id), () => new Promise<void>((release) => { this.stopped.signal.addEventListener('abort', () => release()); }));
  }

  /** What can't be kept isn't, and nobody is told: it is there for a case that hardly comes. */
  private after(work: () => Promise<void>): Promise<void> {
    const done = this.work.then(work).catch(() => undefined);
    this.work = done;
    return done;
  }

  /** Looks what lies there, and waits for the windows it belongs to to be gone. */
  private async look() {
    if (!navigator.locks) return;
    const { signal } = this.stopped;
    const found = await this.store.left().catch(() => []);
    for (const { id } of found) void navigator.locks.request(lockOf(id), { signal }, () => this.offer(id)).catch(() => undefined);
  }

  private async offer(id: string) {
    const left = (await this.store.left()).find((each) => each.id === id);
    if (!left || this.stopped.signal.aborted || (this.left && this.left.until > left.until)) return;
    this.left = left;
    this.callOffLeft();
    this.callOffLeft = this.clock.after(left.until - this.clock.now(), () => {
      this.left = undefined;
      void this.store.left().catch(() => undefined);
      this.host.requestUpdate();
    });
    this.host.requestUpdate();
  }
}
