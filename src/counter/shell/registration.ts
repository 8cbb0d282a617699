import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { scriptAddress } from '../scripts.ts';
import { takeOver } from './messages.ts';

/** Held by each window in which an intake is open: no version takes over under it. */
const lock = 'acre-to-axle-counter-intake';
/** How often a page that stays open asks for a new version [ms]. */
const anHour = 3_600_000;

/** Keeps the page's files on the device, and changes to a new version when nobody is at work. */
export class Registration implements ReactiveController {
  /** Whether the page opens without a network. */
  isKept = false;
  /** Whether a new version waits. */
  isWaiting = false;
  private registration: ServiceWorkerRegistration | undefined;
  private timer: ReturnType<typeof setInterval> | undefined;
  private release: (() => void) | undefined;
  private isLocked = false;
  private isWished = false;
  /** Whether it waits for intakes elsewhere to be put away. */
  private isLining = false;

  /**
   * @param isFree  whether nothing would be lost here by loading the page anew
   * @param again   loads it anew
   */
  constructor(private readonly host: ReactiveControllerHost, private readonly isFree: () => boolean, private readonly again: () => void) {
    host.addController(this);
  }

  hostConnected() {}

  hostDisconnected() {
    clearInterval(this.timer);
    this.release?.();
  }

  /** @param base  where the worker lies */
  async begin(base: string) {
    // Off a secure address browsers leave it out, whatever the types say.
    const container = navigator.serviceWorker as ServiceWorkerContainer | undefined;
    if (!container) return;
    let before = container.controller;
    container.addEventListener('controllerchange', () => {
      // The first worker takes over a page that is as new as it is.
      if (before && (this.isFree() || this.isWished)) this.again();
      before = container.controller;
    });
    try {
      const script = scriptAddress(new URL('worker.js', base));
      this.registration = await container.register(script, { scope: new URL('./', base).pathname, updateViaCache: 'none' });
    } catch (trouble) {
      console.warn(`acre-to-axle: ${String(trouble)}`);
      return;
    }
    this.watch(this.registration.installing);
    this.registration.addEventListener('updatefound', () => this.watch(this.registration!.installing));
    this.timer = setInterval(() => void this.look(), anHour);
    this.told();
  }

  /** Asks for a new version; without a network there is none. */
  async look() {
    await this.registration?.update().catch(() => undefined);
  }

  /** An intake is open, or none any more. */
  hold(isOpen: boolean) {
    if (isOpen === this.isLocked) return;
    this.isLocked = isOpen;
    this.release?.();
    this.release = undefined;
    if (!isOpen) {
      void this.changeIfFree();
      return;
    }
    const held = new Promise<void>((release) => { this.release = release; });
    void navigator.locks?.request(lock, { mode: 'shared' }, () => held);
  }

  /** Staff wish it: what is open here is theirs to lose. */
  change() {
    this.isWished = true;
    this.registration?.waiting?.postMessage(takeOver);
  }

  private watch(worker: ServiceWorker | null) {
    worker?.addEventListener('statechange', () => this.told());
  }

  private told() {
    const { active, waiting } = this.registration!;
    this.isKept = active?.state === 'activated';
    this.isWaiting = waiting !== null && active !== null;
    this.host.requestUpdate();
    void this.changeIfFree();
  }

  /** Not under an intake that is open in another window either, nor one that is still being put away: then once it is. */
  private async changeIfFree() {
    if (!this.isWaiting || !this.isFree() || this.isLining || !navigator.locks) return;
    const isOurs = await navigator.locks.request(lock, { ifAvailable: true }, (held) => held !== null && this.isFree() && (this.change(), true));
    if (isOurs || !this.isFree()) return;
    this.isLining = true;
    // Let go of at once: an intake opened meanwhile stands in line behind, and has it before it is looked again.
    await navigator.locks.request(lock, () => undefined);
    this.isLining = false;
    void this.changeIfFree();
  }
}
