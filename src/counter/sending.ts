import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { blankFields, faultsOf, requestOf, type FieldFault, type RequestFields, type RequestFrame } from '../request/form.ts';
import type { RequestDocument } from '../request/schema.ts';
import type { Put } from './queue/queue.ts';
import { initialsOf, type Waiting } from './queue/record.ts';

/** What stands in the form. No box is ticked by anybody but the customer, or as he says. */
export interface SendFields extends RequestFields {
  mail: boolean;
  /** His initials may stand in the list of what waits. */
  initials: boolean;
}

export type SendFault = FieldFault | 'mail';

export type SendState =
  | { at: 'typing'; faults: readonly SendFault[] }
  | { at: 'keeping' }
  /** On disk: all that is left to say of it is the end of its number. */
  | { at: 'kept'; last: string }
  /** Sealed, and in the page alone. */
  | { at: 'not-kept'; why: string; waiting?: Waiting };

const blank: SendFields = { ...blankFields, mail: false, initials: false };
/** Signs of a number that tell one from the next. */
const shownOfNumber = 4;
export const lastOf = (id: string) => id.slice(-shownOfNumber);

/** What is wrong with what is typed, or isn't agreed to. */
export const sendFaultsOf = (fields: SendFields): SendFault[] => [...faultsOf(fields), ...(fields.mail ? [] : ['mail' as const])];

/** An address as it stands on the glass once its field was left: enough to know that something is there. */
export function masked(address: string): string {
  const [local = '', domain = ''] = address.trim().split(/@(?=[^@]*$)/);
  const part = (text: string) => (text === '' ? '' : `${text.slice(0, 1)}•••`);
  return domain === '' ? part(local) : `${part(local)}@${part(domain)}`;
}

/** The form by which a shortlist is sent, and how far it is. What was typed is dropped as soon as it is kept. */
export class Sending implements ReactiveController {
  fields = blank;
  state: SendState = { at: 'typing', faults: [] };
  private id: string = crypto.randomUUID();

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostConnected() {}

  hostDisconnected() {
    this.clear();
  }

  /** Whether anything is typed that would be lost. */
  get holdsAnything() {
    return this.state.at === 'not-kept' || this.fields.address !== '' || this.fields.name !== '' || this.fields.phone !== '';
  }

  set(fields: Partial<SendFields>) {
    this.fields = { ...this.fields, ...fields };
    const { state } = this;
    // What was told is no longer told once it is mended; nothing new is told before it is to be sent.
    if (state.at === 'typing') this.state = { at: 'typing', faults: sendFaultsOf(this.fields).filter((fault) => state.faults.includes(fault)) };
    this.host.requestUpdate();
  }

  clear() {
    this.fields = blank;
    this.id = crypto.randomUUID();
    this.go({ at: 'typing', faults: [] });
  }

  /** @returns whether it was kept */
  async send(frame: RequestFrame, put: (request: RequestDocument, how: { id: string; initials?: string }) => Promise<Put>): Promise<boolean> {
    if (this.state.at === 'keeping') return false;
    const faults = sendFaultsOf(this.fields);
    if (faults.length > 0) {
      this.go({ at: 'typing', faults });
      return false;
    }
    this.go({ at: 'keeping' });
    const { name, initials } = this.fields;
    return this.came(await put(requestOf('shortlist', this.fields, frame), { id: this.id, ...(initials && name.trim() && { initials: initialsOf(name) }) }));
  }

  /** Tries once more to keep what is sealed already. */
  async again(putSealed: (waiting: Waiting) => Promise<Put>): Promise<boolean> {
    const { state } = this;
    if (state.at !== 'not-kept' || !state.waiting) return false;
    this.go({ at: 'keeping' });
    return this.came(await putSealed(state.waiting));
  }

  private came(put: Put): boolean {
    if (put.kind === 'saved') {
      this.fields = blank;
      this.id = crypto.randomUUID();
      this.go({ at: 'kept', last: lastOf(put.waiting.id) });
      return true;
    }
    if (put.kind === 'not-saved') {
      // It is sealed: nothing readable of it is needed any more.
      this.fields = blank;
      this.go({ at: 'not-kept', why: put.why, waiting: put.waiting });
    } else this.go({ at: 'not-kept', why: put.why ?? 'no-key' });
    return false;
  }

  private go(state: SendState) {
    this.state = state;
    this.host.requestUpdate();
  }
}
