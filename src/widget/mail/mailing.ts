import { blankFields, faultsOf, requestOf, type FieldFault, type RequestFields, type RequestFrame } from '../../request/form.ts';
import { handIn, type HandedIn } from '../../request/hand-in.ts';
import type { RequestKind } from '../../request/names.ts';
import type { RequestDocument } from '../../request/schema.ts';
import { askTicket, type Ticket } from './ticket.ts';
import { doWork } from './work.ts';

/** What stands in the form. */
export interface MailFields extends RequestFields {
  /** What no person sees. */
  leftEmpty: string;
}

/** How far it is: nothing but the first and the last two stands still. */
export type MailState =
  | { at: 'typing'; faults: readonly FieldFault[] }
  | { at: 'working' | 'sending' }
  | { at: 'later'; why: 'busy' | 'unreachable'; again: number | undefined }
  | { at: 'refused'; code: string }
  | { at: 'sent'; address: string };

const blank: MailFields = { ...blankFields, leftEmpty: '' };
/** Attempts made without being asked again, and the wait before each where the relay names none [s]. */
const waits = [4, 15, 45];
/** Longest wait a relay can impose on a page that is looked at [s]. */
const longestWait = 120;
/** How far a wait may lie beside what is said, either way, so that not all come back at once. */
const jitter = 0.3;

/**
 * Sends one shortlist by mail. Keeps nothing anywhere but here; once it is sent, the address is forgotten but for what
 * the page says. A try again is the same request by its key; another address or another answer is another.
 */
export class Mailing {
  fields: MailFields = blank;
  state: MailState = { at: 'typing', faults: [] };
  private key: { of: string; is: string } | undefined;
  private ticket: Promise<Ticket | undefined>;
  private attempts = 0;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private open = true;

  constructor(private readonly relay: string, readonly kind: RequestKind, private readonly frame: () => RequestFrame, private readonly changed: () => void) {
    this.ticket = askTicket(relay, frame().dealer);
  }

  set(fields: Partial<MailFields>) {
    this.fields = { ...this.fields, ...fields };
    this.changed();
  }

  /** @returns whether nothing that is typed is wrong; what is, is told at its field */
  check(): boolean {
    const faults = faultsOf(this.given);
    if (faults.length > 0) this.go({ at: 'typing', faults });
    return faults.length === 0;
  }

  /** Sends what was checked. */
  async send(): Promise<void> {
    this.attempts = 0;
    await this.attempt();
  }

  /** Nothing goes on without the page. */
  stop() {
    this.open = false;
    clearTimeout(this.timer);
  }

  private go(state: MailState) {
    this.state = state;
    if (this.open) this.changed();
  }

  /** Word of a unit is the dealer's to give, so he gets all that is typed; nobody is asked for it then. */
  private get given(): MailFields {
    return { ...this.fields, dealerCopy: this.fields.dealerCopy || this.kind === 'notify' };
  }

  private body(): RequestDocument {
    const { leftEmpty } = this.fields;
    return { ...requestOf(this.kind, this.given, this.frame()), ...(leftEmpty && { leftEmpty }) };
  }

  private async attempt(): Promise<void> {
    clearTimeout(this.timer);
    const body = this.body();
    const of = JSON.stringify(body);
    if (this.key?.of !== of) this.key = { of, is: crypto.randomUUID() };
    const { is } = this.key;
    this.go({ at: 'sending' });
    const ticket = await this.ticket;
    if (ticket?.work) this.go({ at: 'working' });
    const work = ticket?.work && await doWork(ticket.ticket, ticket.work.bits, () => this.open);
    if (!this.open) return;
    this.go({ at: 'sending' });
    this.told(await handIn(this.relay, { ...body, ...(ticket && { ticket: ticket.ticket }), ...(work && { work }) }, is), body);
  }

  private told(outcome: HandedIn, { address }: RequestDocument) {
    if (outcome.kind === 'accepted') {
      this.fields = blank;
      this.key = undefined;
      this.go({ at: 'sent', address });
    } else if (outcome.kind === 'refused') {
      this.go({ at: 'refused', code: outcome.code });
    } else {
      this.again(outcome);
    }
  }

  private again({ why, after }: Extract<HandedIn, { kind: 'later' }>) {
    const wait = waits[this.attempts];
    const said = wait === undefined || (after ?? 0) > longestWait ? undefined : Math.ceil(Math.max(wait, after ?? 0) * (1 + jitter * Math.random()));
    this.attempts += 1;
    this.go({ at: 'later', why: why === 'busy' ? 'busy' : 'unreachable', again: said });
    if (said !== undefined && this.open) this.timer = setTimeout(() => this.attempt(), said * 1000);
  }
}
