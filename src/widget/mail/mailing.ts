import { isAddress } from '../../documents/mail-address.ts';
import type { RequestDocument } from '../../request/schema.ts';
import { handIn, type HandedIn } from '../../request/hand-in.ts';
import { requestFormat, type GoodTime, type RequestKind } from '../../request/names.ts';
import { isName, isPhone } from '../../request/typed.ts';
import { askTicket, type Ticket } from './ticket.ts';
import { doWork } from './work.ts';

/** What stands in the form. */
export interface MailFields {
  address: string;
  dealerCopy: boolean;
  statistics: boolean;
  name: string;
  phone: string;
  goodTime: GoodTime;
  /** What no person sees. */
  leftEmpty: string;
}

export type FaultyField = 'address' | 'name' | 'phone';

/** How far it is: nothing but the first and the last two stands still. */
export type MailState =
  | { at: 'typing'; faults: readonly { field: FaultyField; why: 'missing' | 'wrong' }[] }
  | { at: 'working' | 'sending' }
  | { at: 'later'; why: 'busy' | 'unreachable'; again: number | undefined }
  | { at: 'refused'; code: string }
  | { at: 'sent'; address: string };

/** What the page says besides: all of it from closed lists. */
export type MailFrame = Pick<RequestDocument, 'dealer' | 'answers' | 'language' | 'units' | 'seen'>;

const blank: MailFields = { address: '', dealerCopy: false, statistics: false, name: '', phone: '', goodTime: 'any', leftEmpty: '' };
/** Attempts made without being asked again, and the wait before each where the relay names none [s]. */
const waits = [4, 15, 45];
/** Longest wait a relay can impose on a page that is looked at [s]. */
const longestWait = 120;
/** How far a wait may lie beside what is said, either way, so that not all come back at once. */
const jitter = 0.3;

const faultsOf = ({ address, name, phone, dealerCopy }: MailFields) => [
  ...(address.trim() === '' ? [{ field: 'address' as const, why: 'missing' as const }] : []),
  ...(address.trim() !== '' && !isAddress(address.trim()) ? [{ field: 'address' as const, why: 'wrong' as const }] : []),
  ...(dealerCopy && name.trim() !== '' && !isName(name) ? [{ field: 'name' as const, why: 'wrong' as const }] : []),
  ...(dealerCopy && phone.trim() !== '' && !isPhone(phone) ? [{ field: 'phone' as const, why: 'wrong' as const }] : []),
];

function contactOf({ name, phone, goodTime, dealerCopy }: MailFields): Pick<RequestDocument, 'contact'> {
  const contact = { ...(name.trim() && { name: name.trim() }), ...(phone.trim() && { phone: phone.trim(), goodTime }) };
  return dealerCopy && Object.keys(contact).length > 0 ? { contact } : {};
}

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

  constructor(private readonly relay: string, readonly kind: RequestKind, private readonly frame: () => MailFrame, private readonly changed: () => void) {
    this.ticket = askTicket(relay, frame().dealer);
  }

  set(fields: Partial<MailFields>) {
    this.fields = { ...this.fields, ...fields };
    this.changed();
  }

  /** @returns whether nothing that is typed is wrong; what is, is told at its field */
  check(): boolean {
    const faults = faultsOf(this.fields);
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

  private body(): RequestDocument {
    const { address, dealerCopy, statistics, leftEmpty } = this.fields;
    return {
      format: requestFormat, kind: this.kind, ...this.frame(), address: address.trim(),
      consent: { mail: true, dealerCopy: dealerCopy || this.kind === 'notify', statistics },
      ...contactOf({ ...this.fields, dealerCopy: dealerCopy || this.kind === 'notify' }),
      ...(leftEmpty && { leftEmpty }),
    };
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
