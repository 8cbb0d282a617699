import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { watchPresence } from './presence.ts';
import type { Clock } from './queue/clock.ts';

/** How long somebody asked whether he is still there has to say so [ms] (WCAG 2.2.1 asks for 20 seconds and an easy way). */
export const countdown = 20_000;
/** How often the seconds left are shown anew [ms]. */
const tick = 1_000;

/**
 * Watches whether anybody is still there while there is something to see of a customer. It goes by the clock on the
 * wall: a tablet that slept over the end finds it passed when it wakes.
 */
export class Idle implements ReactiveController {
  /** Seconds left to say so; undefined while nothing is asked. */
  left: number | undefined;
  private until: number | undefined;
  private stopTimer = () => {};
  private endWatch = () => {};
  private seconds: number | undefined;
  private connected = false;

  /** @param over  nobody said so: clears what is to be seen */
  constructor(private readonly host: ReactiveControllerHost, private readonly clock: () => Clock, private readonly over: () => void) {
    host.addController(this);
  }

  hostConnected() {
    this.connected = true;
    this.endWatch = watchPresence(this.sign, this.look);
  }

  hostDisconnected() {
    this.connected = false;
    this.endWatch();
    this.stop();
  }

  /** @param seconds  of quiet before it is asked; undefined where nothing is to be watched */
  watch(seconds: number | undefined) {
    if (seconds === this.seconds) return;
    this.seconds = seconds;
    this.begin();
  }

  /** Said by whoever is still there. */
  stay() {
    this.begin();
    this.host.requestUpdate();
  }

  private begin() {
    this.stopTimer();
    this.left = undefined;
    this.until = this.seconds === undefined || !this.connected ? undefined : this.clock().now() + this.seconds * 1000 + countdown;
    if (this.until !== undefined) this.wait(this.seconds! * 1000);
  }

  private stop() {
    this.stopTimer();
    this.until = undefined;
    this.left = undefined;
  }

  private wait(milliseconds: number) {
    this.stopTimer = this.clock().after(milliseconds, this.look);
  }

  /** While it is asked, only an answer to it counts: the question must not go by a hand on the glass. */
  private readonly sign = () => {
    this.look();
    if (this.until !== undefined && this.left === undefined) this.until = this.clock().now() + this.seconds! * 1000 + countdown;
  };

  private readonly look = () => {
    if (this.until === undefined) return;
    const left = this.until - this.clock().now();
    this.stopTimer();
    if (left <= 0) {
      this.stop();
      this.seconds = undefined;
      this.over();
      return;
    }
    if (left > countdown) {
      this.left = undefined;
      this.wait(left - countdown);
      return;
    }
    const seconds = Math.ceil(left / 1000);
    if (seconds !== this.left) {
      this.left = seconds;
      this.host.requestUpdate();
    }
    this.wait(Math.min(tick, left));
  };
}
