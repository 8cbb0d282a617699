import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { handOver } from '../widget/hand-over.ts';
import type { Queue } from './queue/queue.ts';
import type { Retired } from './queue/retire.ts';
import type { Listed, WaitingFile } from './queue/staff-desk.ts';
import { removeFiles } from './shell/remove-files.ts';
import { minute } from './queue/clock.ts';
import { troubleOf, type StorageWhy } from './queue/storage-trouble.ts';

/** What was done last, to be said. */
export type Done = { is: 'saved' } | { is: 'read'; taken: number; faults: number } | { is: 'set-up'; hasKey: boolean };

/** What waits to be sent, as staff see it. */
export class Outbox implements ReactiveController {
  entries: readonly Listed[] = [];
  done: Done | undefined;
  trouble: StorageWhy | undefined;
  queue: Queue | undefined;
  /** How leaving the device went, once it was asked for. */
  retired: Retired | undefined;
  /** What staff saved: what is in it may go. */
  private file: WaitingFile | undefined;
  private timer: ReturnType<typeof setInterval> | undefined;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostConnected() {}

  hostDisconnected() {
    clearInterval(this.timer);
    this.queue?.stop();
    this.queue = undefined;
  }

  async begin(queue: Queue) {
    this.queue = queue;
    queue.addEventListener('change', () => void this.look());
    // How long something has waited is told as it is now.
    this.timer = setInterval(() => this.host.requestUpdate(), minute);
    await this.trying(async () => {
      await queue.start();
      // A key is what a counter needs most: it is fetched unasked, where there is a network.
      if (await queue.keyRing.current() === undefined) await queue.setUp();
    });
    await this.look();
  }

  async look() {
    await this.trying(async () => { this.entries = await this.queue!.desk.list(); });
  }

  async setUp() {
    await this.trying(async () => { this.done = { is: 'set-up', hasKey: await this.queue!.setUp() }; });
  }

  async sendNow() {
    await this.queue!.sendNow();
    this.host.requestUpdate();
  }

  /** A file with all that waits; it goes on waiting here until it is sent. */
  async save() {
    await this.trying(async () => {
      this.file = await this.queue!.desk.toFile();
      handOver('waiting.json', 'application/json', this.file.text);
      this.done = { is: 'saved' };
    });
  }

  async read(file: File) {
    await this.trying(async () => {
      const { taken, faults } = await this.queue!.desk.fromFile(await file.text());
      this.done = { is: 'read', taken, faults: faults.length };
    });
    await this.look();
  }

  /** Takes the counter off this device, where nothing is lost by it: what waits, its keys and the page's own files. */
  async retire(dropParked: boolean) {
    await this.trying(async () => {
      this.retired = await this.queue!.desk.retire({ dropParked, ...(this.file && { saved: this.file }) });
      if (this.retired.kind === 'retired') await removeFiles();
    });
  }

  async again(id: string) {
    await this.trying(() => this.queue!.desk.again(id));
  }

  async remove(place: number) {
    await this.trying(() => this.queue!.desk.remove(place));
    await this.look();
  }

  private async trying(work: () => Promise<unknown>) {
    this.trouble = undefined;
    try {
      await work();
    } catch (thrown) {
      this.trouble = troubleOf(thrown).why;
    }
    this.host.requestUpdate();
  }
}
