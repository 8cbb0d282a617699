import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { Dialogs } from './dialogs.ts';
import { holdsAnything } from './intake.ts';
import { altDigit } from './keys.ts';
import type { LanguageTag } from './languages.ts';
import { look } from './look.ts';
import { Parts } from './parts.ts';
import { hour, pageClock, type Clock } from './queue/clock.ts';
import { Queue } from './queue/queue.ts';
import { neverBroughtBack } from './residue.ts';
import { Serving } from './serving.ts';
import { barTemplate } from './view-of-bar.ts';
import { idleTemplate } from './view-of-idle.ts';
import { goingTemplate, pinTemplate } from './view-of-parking.ts';
import { goToSection } from './view-of-sheet.ts';
import { stageTemplate } from './view-of-stage.ts';

/**
 * The dealer's counter: the same questions for the person behind it, on one sheet or step by step, without a network,
 * and with nothing of the last customer left.
 *
 * @attr settings - address of the dealer's settings
 */
export class AcreCounter extends LitElement {
  static override styles = look;
  static override properties = { settings: {} };

  /** Address of the dealer's settings; `settings.json` beside the page by default. */
  declare settings: string;
  /** The time it goes by; a test hands in one of its own. */
  clock: Clock = pageClock;

  private begun: Promise<void> = Promise.resolve();
  private stopWatching = () => {};
  private readonly dialogs = new Dialogs();
  private readonly parts: Parts = new Parts(this, () => this.serving);
  private readonly serving = new Serving(this.parts);

  constructor() {
    super();
    this.settings = 'settings.json';
  }

  /** Resolves once customers can be served, or it is known why not. */
  get ready(): Promise<void> {
    return this.begun.then(() => this.updateComplete).then(() => undefined);
  }

  override connectedCallback() {
    super.connectedCallback();
    this.stopWatching = neverBroughtBack(() => this.serving.nextCustomer());
    window.addEventListener('keydown', this.byKey);
    window.addEventListener('beforeunload', this.warn);
    this.begun = this.begin();
  }

  override disconnectedCallback() {
    super.disconnectedCallback();
    this.stopWatching();
    window.removeEventListener('keydown', this.byKey);
    window.removeEventListener('beforeunload', this.warn);
    this.parts.lock.lock();
    this.parts.database.close();
  }

  private async begin() {
    const { equipment, registration, database, demanded, outbox, time } = this.parts;
    await equipment.speak(navigator.language);
    await this.load();
    const { language, relay, deviceToken } = equipment.settings ?? {};
    if (language !== undefined) await this.serving.speak(language as LanguageTag);
    void registration.begin(document.baseURI);
    if (!relay) return;
    demanded.begin(relay);
    const queue = new Queue({ database, clock: time, relay, ...(deviceToken && { deviceToken }) });
    queue.addEventListener('change', () => { if (queue.status.trouble?.why === 'outdated' && !demanded.isOutdated) demanded.look(); });
    void outbox.begin(queue);
  }

  private async load() {
    const { equipment, parking, screen } = this.parts;
    await equipment.load(this.settings, this.clock.now());
    const { settings } = equipment;
    if (settings) void parking.keepFor(settings.parkedHours * hour);
    screen.set({ focusNext: '[data-begin], [data-accept], [data-try-again], [data-uncover]' });
  }

  protected override updated(_changed: PropertyValues) {
    const { customer: { intake }, equipment: { settings, stock }, parking, screen, idle, registration, draft, thanks, reckoning, steps, isSent } = this.parts;
    // Names of those who are parked are somebody's too.
    const isSomething = intake !== undefined || parking.entries !== undefined || screen.place === 'opening';
    idle.watch(isSomething && settings && settings.idle !== false ? settings.idle : undefined);
    registration.hold(intake !== undefined);
    draft.follow(intake);
    // Who turned off that the page watches for quiet has turned off this too.
    thanks.follow(isSent && settings?.idle !== false);
    if (intake && stock) reckoning.follow(intake.answers, stock);
    if (intake?.way === 'steps') steps.give(intake.answers);
    this.dialogs.look(this.renderRoot as ShadowRoot);
    const target = screen.focusNext && this.renderRoot.querySelector<HTMLElement>(screen.focusNext);
    if (!target) return;
    screen.focusNext = undefined;
    target.focus();
  }

  private readonly warn = (event: Event) => {
    const { customer: { intake }, sending, outbox } = this.parts;
    if (!this.serving.isLeaving && ((intake && holdsAnything(intake)) || sending.holdsAnything || (outbox.queue?.status.count ?? 0) > 0)) event.preventDefault();
  };

  private readonly byKey = (event: KeyboardEvent) => {
    const { intake, part } = this.parts.customer;
    const digit = altDigit(event);
    if (digit !== undefined && intake?.way === 'sheet' && part === 'ask') {
      event.preventDefault();
      goToSection(this.renderRoot, digit);
    }
    const direction = { PageDown: 1, PageUp: -1 }[event.key];
    if (event.altKey && direction) {
      event.preventDefault();
      void this.serving.turnTo(direction);
    }
  };

  protected override render() {
    const { parts, serving } = this;
    const { equipment: { spoken, stock, locale }, outbox, registration: { isKept, isWaiting }, demanded, parking, screen, idle } = parts;
    if (!spoken) return nothing;
    const { own, words } = spoken;
    const now = this.clock.now();
    const showWaiting = () => {
      screen.set({ place: 'waiting', focusNext: '#waiting-heading' });
      void outbox.look();
    };
    return html`
      <div class="counter" lang=${own.language} dir=${words.direction}>
        ${barTemplate({
          spoken, stock, locale, now, queue: outbox.queue?.status, isKept, isUpdateWaiting: isWaiting, isUpdateAsked: screen.isUpdateAsked, isOutdated: demanded.isOutdated,
          going: goingTemplate({ parking, own, locale, now }, 'soon'), speak: (tag) => void serving.speak(tag), showWaiting, update: () => serving.changeVersion(),
        })}
        <main>${stageTemplate({ parts, serving, load: () => void this.load() })}</main>
        ${pinTemplate({ parking, own, locale, now, openId: screen.parkedAs, resume: (id) => void serving.resume(id) })}
        ${idleTemplate({ own, left: idle.left, stay: () => idle.stay() })}
      </div>`;
  }
}
