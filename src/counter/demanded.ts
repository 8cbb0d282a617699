import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { hour, minute, type Clock } from './queue/clock.ts';
import { probe } from './queue/relay.ts';

/** How often the relay is asked which page it takes, and how often while this one isn't [ms]. */
const [usually, whileOutdated] = [hour, 5 * minute];

/** Whether the relay still takes what this page sends. A queue asks only when something waits; this asks all the same. */
export class Demanded implements ReactiveController {
  isOutdated = false;
  private relay: string | undefined;
  private callOff = () => {};
  private stopped = new AbortController();

  /** @param outdated  looks for a newer page */
  constructor(private readonly host: ReactiveControllerHost, private readonly clock: Clock, private readonly outdated: () => void) {
    host.addController(this);
  }

  hostConnected() {
    this.stopped = new AbortController();
    window.addEventListener('online', this.look);
  }

  hostDisconnected() {
    this.stopped.abort();
    this.callOff();
    window.removeEventListener('online', this.look);
  }

  begin(relay: string) {
    this.relay = relay;
    this.look();
  }

  readonly look = () => void this.ask();

  private async ask() {
    this.callOff();
    const { relay, stopped: { signal } } = this;
    if (relay === undefined) return;
    const trouble = await probe(relay, { fetch: globalThis.fetch.bind(globalThis), signal });
    if (signal.aborted) return;
    // Who isn't heard has not changed his mind.
    if (trouble === undefined || trouble === 'outdated') this.isOutdated = trouble === 'outdated';
    if (this.isOutdated) this.outdated();
    this.callOff();
    this.callOff = this.clock.after(this.isOutdated ? whileOutdated : usually, this.look);
    this.host.requestUpdate();
  }
}
