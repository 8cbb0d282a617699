import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { seenOf, type RequestFrame } from '../request/form.ts';
import type { AcreToAxle } from '../widget/element.ts';
import { Customer, type Part } from './customer.ts';
import { Demanded } from './demanded.ts';
import { Dialogs } from './dialogs.ts';
import { Draft } from './draft.ts';
import { Equipment } from './equipment.ts';
import { Idle } from './idle.ts';
import { holdsAnything, type Intake, type Way } from './intake.ts';
import { altDigit } from './keys.ts';
import type { LanguageTag } from './languages.ts';
import { look } from './look.ts';
import { Opening, type Opened } from './opening/opening.ts';
import { openingTemplate, sayNotCarried } from './opening/view.ts';
import { Outbox } from './outbox.ts';
import { printForm, printSheet } from './printing.ts';
import { Parking } from './parking.ts';
import { hour, pageClock, type Clock } from './queue/clock.ts';
import { Database } from './queue/database.ts';
import { DraftStore } from './queue/draft-store.ts';
import { ParkedStore } from './queue/parked-store.ts';
import { Queue } from './queue/queue.ts';
import { StaffLock } from './queue/staff-lock.ts';
import { Reckoning } from './reckoning/reckoning.ts';
import { cover, coveredBefore, loadAnew, neverBroughtBack, uncover, type Covered } from './residue.ts';
import { Sending } from './sending.ts';
import { Registration } from './shell/registration.ts';
import { SidePanel } from './side-panel.ts';
import { StepByStep } from './step-by-step.ts';
import { Thanks } from './thanks.ts';
import { barTemplate } from './view-of-bar.ts';
import { draftTemplate } from './view-of-draft.ts';
import { idleTemplate } from './view-of-idle.ts';
import { intakeTemplate } from './view-of-intake.ts';
import { goingTemplate, parkedTemplate, pinTemplate } from './view-of-parking.ts';
import { sendingTemplate } from './view-of-sending.ts';
import { goToSection, goToStart, sheetTemplate } from './view-of-sheet.ts';
import { coverTemplate, startTemplate } from './view-of-start.ts';
import { takingTemplate } from './view-of-taking.ts';
import { waitingTemplate } from './view-of-waiting.ts';

const state = { state: true };

/** What is on show; an intake lies under the list of what waits, and is shown again after it. */
type Place = 'work' | 'opening' | 'waiting';

/**
 * The dealer's counter: the same questions for the person behind it, on one sheet or step by step, without a network,
 * and with nothing of the last customer left.
 *
 * @attr settings - address of the dealer's settings
 */
export class AcreCounter extends LitElement {
  static override styles = look;
  static override properties = { settings: {}, place: state, said: state, note: state, covered: state, isUpdateAsked: state, isDraftGone: state };

  /** Address of the dealer's settings; `settings.json` beside the page by default. */
  declare settings: string;
  /** The time it goes by; a test hands in one of its own. */
  clock: Clock = pageClock;

  private declare place: Place;
  private declare said: 'printed' | 'not-fits' | 'mail' | undefined;
  /** Something to be said of the customer on the screen. */
  private declare note: string | undefined;
  private declare covered: Covered | undefined;
  private declare isUpdateAsked: boolean;
  private declare isDraftGone: boolean;
  /** The customer who was asked step by step: the wizard stays, out of sight, with what stands in its boxes. */
  private askedInSteps: string | undefined;
  /** Where the customer on the screen was parked before. */
  private parkedAs: string | undefined;
  private focusNext: string | undefined;
  private isLeaving = false;
  private begun: Promise<void> = Promise.resolve();
  private stopWatching = () => {};
  private readonly dialogs = new Dialogs();
  private readonly time: Clock = { now: () => this.clock.now(), after: (wait, run) => this.clock.after(wait, run) };

  private readonly equipment = new Equipment(this);
  private readonly customer = new Customer(this, (units) => this.equipment.typing(units));
  private readonly reckoning = new Reckoning(this);
  private readonly sending = new Sending(this);
  private readonly outbox = new Outbox(this);
  private readonly opening = new Opening(this, (opened) => this.opened(opened));
  private readonly registration = new Registration(this, () => this.customer.intake === undefined, () => this.nextCustomer());
  private readonly demanded = new Demanded(this, this.time, () => void this.registration.look());
  private readonly idle = new Idle(this, () => this.clock, () => this.leftAlone());
  private readonly side = new SidePanel(this);
  private readonly steps = new StepByStep(() => this.wizard, (answers) => this.customer.answer(answers));
  private readonly database = new Database(this.time);
  private readonly lock = new StaffLock(this.database, this.time);
  private readonly parking = new Parking(this, this.lock, new ParkedStore(this.database, this.lock, this.time), this.time);
  private readonly draft = new Draft(this, new DraftStore(this.database, this.lock, this.time), this.time);
  private readonly thanks = new Thanks(this, this.time, () => void this.done());

  constructor() {
    super();
    this.settings = 'settings.json';
    this.place = 'work';
    this.isUpdateAsked = false;
    this.isDraftGone = false;
    this.covered = coveredBefore();
  }

  /** Resolves once customers can be served, or it is known why not. */
  get ready(): Promise<void> {
    return this.begun.then(() => this.updateComplete).then(() => undefined);
  }

  private get wizard() {
    return this.renderRoot.querySelector<AcreToAxle>('acre-to-axle');
  }

  override connectedCallback() {
    super.connectedCallback();
    this.stopWatching = neverBroughtBack(() => this.nextCustomer());
    window.addEventListener('keydown', this.byKey);
    window.addEventListener('beforeunload', this.warn);
    this.begun = this.begin();
  }

  override disconnectedCallback() {
    super.disconnectedCallback();
    this.stopWatching();
    window.removeEventListener('keydown', this.byKey);
    window.removeEventListener('beforeunload', this.warn);
    this.lock.lock();
    this.database.close();
  }

  private async begin() {
    await this.equipment.speak(navigator.language);
    await this.load();
    const { language } = this.equipment.settings ?? {};
    if (language !== undefined) await this.speak(language as LanguageTag);
    void this.registration.begin(document.baseURI);
    const { relay, deviceToken } = this.equipment.settings ?? {};
    if (!relay) return;
    this.demanded.begin(relay);
    const queue = new Queue({ database: this.database, clock: this.time, relay, ...(deviceToken && { deviceToken }) });
    queue.addEventListener('change', () => { if (queue.status.trouble?.why === 'outdated' && !this.demanded.isOutdated) this.demanded.look(); });
    void this.outbox.begin(queue);
  }

  private async load() {
    await this.equipment.load(this.settings, this.clock.now());
    const { settings } = this.equipment;
    if (settings) void this.parking.keepFor(settings.parkedHours * hour);
    this.focusNext = '[data-begin], [data-accept], [data-try-again], [data-uncover]';
    this.requestUpdate();
  }

  protected override updated(_changed: PropertyValues) {
    const { intake } = this.customer;
    const { settings, stock } = this.equipment;
    // Names of those who are parked are somebody's too.
    const isSomething = intake !== undefined || this.parking.entries !== undefined || this.place === 'opening';
    this.idle.watch(isSomething && settings && settings.idle !== false ? settings.idle : undefined);
    this.registration.hold(intake !== undefined);
    this.draft.follow(intake);
    // Who turned off that the page watches for quiet has turned off this too.
    this.thanks.follow(this.isSent && settings?.idle !== false);
    if (intake && stock) this.reckoning.follow(intake.answers, stock);
    if (intake?.way === 'steps') this.steps.give(intake.answers);
    this.dialogs.look(this.renderRoot as ShadowRoot);
    const target = this.focusNext && this.renderRoot.querySelector<HTMLElement>(this.focusNext);
    if (!target) return;
    this.focusNext = undefined;
    target.focus();
  }

  private readonly warn = (event: Event) => {
    const { intake } = this.customer;
    if (!this.isLeaving && ((intake && holdsAnything(intake)) || this.sending.holdsAnything || (this.outbox.queue?.status.count ?? 0) > 0)) event.preventDefault();
  };

  private readonly byKey = (event: KeyboardEvent) => {
    const { intake, part } = this.customer;
    const digit = altDigit(event);
    if (digit !== undefined && intake?.way === 'sheet' && part === 'ask') {
      event.preventDefault();
      goToSection(this.renderRoot, digit);
    }
    const direction = { PageDown: 1, PageUp: -1 }[event.key];
    if (event.altKey && direction) {
      event.preventDefault();
      void this.turnTo(direction);
    }
  };

  /** All that is in sight goes at once, and then the page itself. */
  private nextCustomer() {
    this.isLeaving = true;
    this.clear();
    void this.draft.drop().then(() => loadAnew());
  }

  /** On the screen stands that it was sent, and no more. */
  private get isSent() {
    return this.customer.part === 'send' && this.sending.state.at === 'kept';
  }

  private clear() {
    this.customer.leave();
    this.sending.clear();
    this.reckoning.forget();
    this.steps.forget();
    this.side.forget();
    this.opening.close();
    this.parking.shut();
    this.place = 'work';
    this.note = undefined;
    this.said = undefined;
    this.parkedAs = undefined;
  }

  private leftAlone() {
    cover('left-alone');
    this.covered = 'left-alone';
    this.nextCustomer();
  }

  /** Whoever was parked, and is done with, isn't parked any more. */
  private async done() {
    if (this.parkedAs !== undefined && this.parking.entries) await this.parking.remove(this.parkedAs);
    this.nextCustomer();
  }

  private beginIntake(from: Parameters<Customer['begin']>[0] = {}) {
    this.parkedAs = undefined;
    this.sending.clear();
    this.steps.forget();
    this.side.forget();
    this.said = undefined;
    this.customer.begin(from);
    this.place = 'work';
    void this.updateComplete.then(() => goToStart(this.renderRoot));
  }

  private opened(opened: Opened) {
    this.beginIntake({ answers: opened.answers });
    const { opening, words } = this.equipment.spoken!;
    this.note = sayNotCarried(opened, opening, words.list);
  }

  private async park() {
    const { intake } = this.customer;
    if (intake) await this.parking.park(intake, this.parkedAs, () => this.nextCustomer());
  }

  private async resume(id: string) {
    const reopened = await this.parking.open(id);
    if (!reopened) return;
    this.note = undefined;
    this.beginIntake(reopened.intake);
    this.parkedAs = reopened.id;
  }

  /** What a page that went away left. */
  private async bringBack() {
    const intake = await this.draft.take();
    if (intake) this.beginIntake(intake);
    else this.isDraftGone = true;
  }

  /** To the next of those who are parked; the one on the screen is parked first. */
  private async turnTo(direction: number) {
    const { entries } = this.parking;
    if (!entries) return this.parking.count > 0 ? this.parking.show() : undefined;
    const ids = entries.filter(({ is }) => is === 'sound').map(({ id }) => id);
    const at = this.parkedAs === undefined ? (direction > 0 ? -1 : 0) : ids.indexOf(this.parkedAs);
    const next = ids[(at + direction + ids.length) % ids.length];
    if (next === undefined || next === this.parkedAs) return;
    const { intake } = this.customer;
    const go = () => void this.resume(next);
    if (intake && holdsAnything(intake)) await this.parking.park(intake, this.parkedAs, go);
    else go();
  }

  private async ask(way: Way) {
    if (way === 'sheet') await this.steps.leave();
    this.customer.ask(way);
    if (way === 'sheet') void this.updateComplete.then(() => goToStart(this.renderRoot));
  }

  private showStart() {
    uncover();
    this.covered = undefined;
    this.focusNext = '[data-begin]';
  }

  private async show(part: Part) {
    if (this.customer.intake?.way === 'steps') await this.steps.leave();
    this.customer.show(part);
  }

  private async showWhole() {
    this.customer.ask('steps');
    await this.updateComplete;
    await this.steps.showResult();
  }

  private async speak(tag: LanguageTag) {
    const before = this.equipment.typing();
    await this.equipment.speak(tag);
    this.customer.reread(before);
  }

  private changeVersion() {
    if (this.customer.intake && !this.isUpdateAsked) this.isUpdateAsked = true;
    else this.registration.change();
  }

  private voiceFor({ units }: Intake) {
    return this.equipment.voice(units);
  }

  private async print() {
    const intake = this.customer.intake!;
    const shortlist = await this.reckoning.whole;
    const { settings, stock, spoken } = this.equipment;
    const { paper, handOn } = spoken!;
    const fits = await printSheet({
      shortlist, catalogue: stock!.document, answers: intake.answers, voice: this.voiceFor(intake), own: paper, handoff: handOn.handoff, size: settings!.paper,
      ...(settings!.page !== undefined && { page: settings!.page }),
    });
    this.said = fits ? 'printed' : 'not-fits';
  }

  private async frame(): Promise<RequestFrame> {
    const { answers, units } = this.customer.intake!;
    const shortlist = await this.reckoning.whole;
    return { dealer: shortlist.catalogue.id, answers, language: this.equipment.language, units, seen: seenOf(shortlist) };
  }

  private async send() {
    const { queue } = this.outbox;
    const isKept = queue && await this.sending.send(await this.frame(), (request, how) => queue.put(request, how));
    if (isKept) void this.draft.drop();
    this.focusNext = isKept ? '#sending-heading' : '.sending [aria-invalid="true"], [data-consent="mail"]';
    this.requestUpdate();
  }

  private asking(intake: Intake) {
    const { own } = this.equipment.spoken!;
    const { settings, stock, language } = this.equipment;
    const sheet = () => sheetTemplate({
      own, answers: intake.answers, boxes: intake.boxes, faults: intake.faults, voice: this.voiceFor(intake), typing: this.equipment.typing(intake.units), key: intake.key,
      change: (question, at, box) => this.customer.enter(question, at, box), left: (field) => this.customer.left(field),
    });
    const steps = () => html`<acre-to-axle loading="eager" ?hidden=${intake.way === 'sheet'} .catalogue=${stock!.document} lang=${language} .units=${intake.units} .linkPage=${settings!.page} .languages=${language}
      @acre-answered=${this.steps.heard} @acre-result-shown=${this.steps.heard} @click=${this.steps.heard}></acre-to-axle>`;
    if (intake.way === 'steps') this.askedInSteps = intake.key;
    return html`${intake.way === 'sheet' ? sheet() : nothing}${this.askedInSteps === intake.key ? steps() : nothing}`;
  }

  private content(intake: Intake) {
    const { spoken, stock, settings, language } = this.equipment;
    const { part } = this.customer;
    if (part === 'ask') return this.asking(intake);
    if (part === 'take') {
      const { outcome } = this.reckoning;
      return takingTemplate({
        spoken: spoken!, voice: this.voiceFor(intake), answers: intake.answers, catalogue: stock!.document, shortlist: outcome?.isWhole ? outcome.shortlist : undefined,
        page: settings!.page, said: this.said, print: () => void this.print(), mailSaved: () => { this.said = 'mail'; },
      });
    }
    if (!this.outbox.queue) return html`<p>${spoken!.own.send.noRelay}</p>`;
    return sendingTemplate({
      sending: this.sending, own: spoken!.own, dealer: stock!.document.dealer.name, key: intake.key, language,
      speak: (tag) => void this.speak(tag), send: () => void this.send(), again: () => void this.sending.again((waiting) => this.outbox.queue!.putSealed(waiting)),
      left: this.thanks.left, next: () => void this.done(),
    });
  }

  /** How many stand, and which is first. */
  private brief(): string {
    const { stock, spoken } = this.equipment;
    const { outcome } = this.reckoning;
    if (!outcome || !stock) return spoken!.own.outcome.reckoning;
    const { shortlist: standing } = outcome.standing;
    const first = stock.document.machines.find(({ id }) => id === standing[0]?.machine);
    return `${spoken!.words.wizard.standing(standing.length, stock.document.machines.length)}${first ? ` · ${first.name}` : ''}`;
  }

  private intake(intake: Intake) {
    const { spoken, stock } = this.equipment;
    const { customer } = this;
    const isBeside = !this.isSent && (customer.part !== 'ask' || intake.way === 'sheet');
    const beside = isBeside ? this.side.template({ stock: stock!, outcome: this.reckoning.outcome, voice: this.voiceFor(intake), own: spoken!.own, paper: this.equipment.settings!.paper, whole: () => { customer.show('ask'); void this.showWhole(); } }) : nothing;
    return keyed(intake.key, intakeTemplate({
      spoken: spoken!, intake, part: customer.part, isSent: this.isSent, note: this.isSent ? undefined : this.note, trouble: this.parking.trouble, content: this.content(intake), beside, brief: this.brief(),
      say: (said) => customer.say(said), ask: (way) => void this.ask(way), show: (part) => void this.show(part), measure: (units) => customer.measure(units),
      park: () => void this.park(), next: () => void this.done(),
    }));
  }

  private stage() {
    const { spoken, stock, missing, isAccepted, locale } = this.equipment;
    const { own, opening, paper, words } = spoken!;
    if (missing) return html`<p role="alert">${own.trouble[missing]}</p><div class="actions"><button class="main" type="button" data-try-again @click=${() => this.load()}>${own.trouble.tryAgain}</button></div>`;
    if (!stock) return html`<p role="status">${own.loading}</p>`;
    if (this.covered) return coverTemplate(own, this.covered, () => void this.parking.guarded(() => this.showStart()));
    if (this.place === 'waiting') return waitingTemplate({ outbox: this.outbox, own, now: this.clock.now(), back: () => { this.place = 'work'; } });
    if (this.place === 'opening') {
      return html`${openingTemplate({ opening: this.opening, words: opening })}<div class="actions"><button type="button" data-back @click=${() => { this.opening.close(); this.place = 'work'; }}>${own.waiting.back}</button></div>`;
    }
    if (this.customer.intake) return this.intake(this.customer.intake);
    return startTemplate({
      own, stock, locale, isAccepted,
      draft: draftTemplate({ left: this.draft.left, isGone: this.isDraftGone, own, locale, take: () => void this.parking.guarded(() => void this.bringBack()) }),
      parked: parkedTemplate({ parking: this.parking, own, locale, now: this.clock.now(), openId: undefined, resume: (id) => void this.resume(id) }),
      accept: () => { this.equipment.accept(); this.focusNext = '[data-begin]'; }, begin: () => this.beginIntake(),
      open: () => { this.place = 'opening'; this.focusNext = '#opening-field'; },
      cover: () => { this.parking.shut(); cover('by-hand'); this.covered = 'by-hand'; this.focusNext = '[data-uncover]'; },
      printForm: () => void printForm({ words, reader: this.equipment.voice(stock.document.dealer.units).reader }, paper, stock.document.dealer, this.equipment.settings!.paper),
    });
  }

  protected override render() {
    const { spoken, stock, locale } = this.equipment;
    if (!spoken) return nothing;
    const { own, words } = spoken;
    const { isKept, isWaiting } = this.registration;
    return html`
      <div class="counter" lang=${own.language} dir=${words.direction}>
        ${barTemplate({
          spoken, stock, locale, now: this.clock.now(), queue: this.outbox.queue?.status, isKept, isUpdateWaiting: isWaiting, isUpdateAsked: this.isUpdateAsked, isOutdated: this.demanded.isOutdated,
          going: goingTemplate({ parking: this.parking, own, locale, now: this.clock.now() }, hour),
          speak: (tag) => void this.speak(tag), showWaiting: () => { this.place = 'waiting'; this.focusNext = '#waiting-heading'; void this.outbox.look(); }, update: () => this.changeVersion(),
        })}
        <main>${this.stage()}</main>
        ${pinTemplate({ parking: this.parking, own, locale, now: this.clock.now(), openId: this.parkedAs, resume: (id) => void this.resume(id) })}
        ${idleTemplate({ own, left: this.idle.left, stay: () => this.idle.stay() })}
      </div>`;
  }
}
