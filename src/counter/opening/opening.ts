import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { AnswersDocument } from '../../answers/schema.ts';
import { ours } from '../../handoff/in-fragment.ts';
import { readHandedOn } from '../../handoff/link.ts';
import type { Refusal } from '../../handoff/refusal.ts';
import { Camera } from './camera.ts';
import { notCarried, type NotCarried } from './not-carried.ts';

/** A buyer's answers as they came, and what may have been said and couldn't come along. */
export interface Opened {
  answers: AnswersDocument;
  notCarried: readonly NotCarried[];
}

/** What a code that was seen is instead of answers. */
export type Seen = 'other' | 'damaged' | 'newer';

const seenAs = (text: string, { code }: Refusal): Seen => (!ours.test(text) ? 'other' : code === 'newer' ? code : 'damaged');

/** The state of opening a buyer's answers: what stands in the field, why it wasn't taken, and the camera. Keeps nothing of what was opened. */
export class Opening implements ReactiveController {
  text = '';
  refused: Refusal | undefined;
  seen: Seen | undefined;
  readonly camera: Camera;

  constructor(private readonly host: ReactiveControllerHost, private readonly take: (opened: Opened) => void) {
    this.camera = new Camera(() => host.requestUpdate(), (text) => this.scanned(text));
    host.addController(this);
  }

  hostConnected() {
    void this.camera.prepare();
  }

  hostDisconnected() {
    this.camera.leave();
  }

  type(text: string) {
    this.text = text;
    this.host.requestUpdate();
  }

  /** Opens what was pasted or typed. @returns whether it could be */
  open(): boolean {
    const read = readHandedOn(this.text);
    this.refused = 'refused' in read ? read.refused : undefined;
    this.host.requestUpdate();
    if ('answers' in read) this.done(read.answers);
    return 'answers' in read;
  }

  scan() {
    this.seen = undefined;
    return this.camera.start();
  }

  stopScanning() {
    this.seen = undefined;
    this.camera.stop();
  }

  /** The counter shows something else: no camera looks on behind it. */
  close() {
    this.camera.stop();
    this.text = '';
    this.refused = undefined;
    this.seen = undefined;
    this.host.requestUpdate();
  }

  private scanned(text: string): boolean {
    const read = readHandedOn(text);
    if ('answers' in read) {
      this.done(read.answers);
      return true;
    }
    this.seen = seenAs(text, read.refused);
    this.host.requestUpdate();
    return false;
  }

  private done(answers: AnswersDocument) {
    this.close();
    this.take({ answers, notCarried: notCarried(answers) });
  }
}
