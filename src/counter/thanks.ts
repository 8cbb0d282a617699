import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { watchPresence } from './presence.ts';
import { second, type Clock } from './queue/clock.ts';

/** How long the end of a number stands there after sending before the page makes room for the next customer [ms]. */
export const shownFor = 15 * second;

/**
 * Clears the page after sending, by the clock on the wall. Whoever touches anything stops it for good: the time is short
 * only because it can be turned off so easily, and because nothing is lost with it (WCAG 2.2.1).
 */
export class Thanks implements ReactiveController {
  /** Seconds left; undefined where nothing will be cleared. */
  left: number | undefined;
  /** Whether there is something to clear, or was until somebody touched the page. */
  isFollowing = false;
  private until: number | undefined;
  private callOff = () => {};
  private endWatch = () => {};

  /** @param over  clears */
  constructor(private readonly host: ReactiveControllerHost, private readonly clock: Clock, private readonly over: () => void) {
    host.addController(this);
  }

  hostConnected() {
    this.endWatch = watchPresence(this.touched, this.look);
  }

  hostDisconnected() {
    this.endWatch();
    this.stop();
  }

  /** Told each time the page is drawn whether it was sent. */
  follow(isSent: boolean) {
    if (isSent === this.isFollowing) return;
    this.isFollowing = isSent;
    this.stop();
    if (!isSent) return;
    this.until = this.clock.now() + shownFor;
    this.look();
  }

  private readonly touched = () => {
    if (this.until === undefined) return;
    this.stop();
    this.host.requestUpdate();
  };

  private stop() {
    this.callOff();
    this.until = undefined;
    this.left = undefined;
  }

  private readonly look = () => {
    if (this.until === undefined) return;
    this.callOff();
    const left = this.until - this.clock.now();
    if (left <= 0) {
      this.stop();
      this.over();
      return;
    }
    const seconds = Math.ceil(left / second);
    if (seconds !== this.left) {
      this.left = seconds;
      this.host.requestUpdate();
    }
    this.callOff = this.clock.after(Math.min(left, second), this.look);
  };
}
