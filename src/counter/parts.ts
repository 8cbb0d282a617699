import type { ReactiveControllerHost } from 'lit';
import type { AcreToAxle } from '../widget/element.ts';
import { Customer } from './customer.ts';
import { Demanded } from './demanded.ts';
import { Draft } from './draft.ts';
import { Equipment } from './equipment.ts';
import { Idle } from './idle.ts';
import type { Intake } from './intake.ts';
import { Opening } from './opening/opening.ts';
import { Outbox } from './outbox.ts';
import { Parking } from './parking.ts';
import type { Clock } from './queue/clock.ts';
import { Database } from './queue/database.ts';
import { DraftStore } from './queue/draft-store.ts';
import { ParkedStore } from './queue/parked-store.ts';
import { StaffLock } from './queue/staff-lock.ts';
import { Reckoning } from './reckoning/reckoning.ts';
import { Screen } from './screen.ts';
import { Sending } from './sending.ts';
import type { Serving } from './serving.ts';
import { Registration } from './shell/registration.ts';
import { SidePanel } from './side-panel.ts';
import { StepByStep } from './step-by-step.ts';
import { Thanks } from './thanks.ts';

/** The element that all of it is put on. */
export interface Page extends ReactiveControllerHost, HTMLElement {
  readonly renderRoot: HTMLElement | DocumentFragment;
  readonly clock: Clock;
}

/** All that a counter is made of, each with one idea; who serves with it hears from it. */
export class Parts {
  readonly screen: Screen;
  /** The page's own at any moment: a test puts another in. */
  readonly time: Clock;
  readonly equipment: Equipment;
  readonly customer: Customer;
  readonly reckoning: Reckoning;
  readonly sending: Sending;
  readonly outbox: Outbox;
  readonly opening: Opening;
  readonly registration: Registration;
  readonly demanded: Demanded;
  readonly idle: Idle;
  readonly side: SidePanel;
  readonly steps: StepByStep;
  readonly database: Database;
  readonly lock: StaffLock;
  readonly parking: Parking;
  readonly draft: Draft;
  readonly thanks: Thanks;

  constructor(readonly page: Page, serving: () => Serving) {
    this.screen = new Screen(page);
    this.time = { now: () => page.clock.now(), after: (wait, run) => page.clock.after(wait, run) };
    this.equipment = new Equipment(page);
    this.customer = new Customer(page, (units) => this.equipment.typing(units));
    this.reckoning = new Reckoning(page);
    this.sending = new Sending(page);
    this.outbox = new Outbox(page);
    this.opening = new Opening(page, (opened) => serving().opened(opened));
    this.registration = new Registration(page, () => this.customer.intake === undefined, () => serving().nextCustomer());
    this.demanded = new Demanded(page, this.time, () => void this.registration.look());
    this.idle = new Idle(page, () => page.clock, () => serving().leftAlone());
    this.side = new SidePanel(page);
    this.steps = new StepByStep(() => page.renderRoot.querySelector<AcreToAxle>('acre-to-axle'), (answers) => this.customer.answer(answers));
    this.database = new Database(this.time);
    this.lock = new StaffLock(this.database, this.time);
    this.parking = new Parking(page, this.lock, new ParkedStore(this.database, this.lock, this.time), this.time);
    this.draft = new Draft(page, new DraftStore(this.database, this.lock, this.time), this.time);
    this.thanks = new Thanks(page, this.time, () => void serving().done());
  }

  /** On the screen stands that it was sent, and no more. */
  get isSent() {
    return this.customer.part === 'send' && this.sending.state.at === 'kept';
  }

  voiceFor({ units }: Intake) {
    return this.equipment.voice(units);
  }
}
