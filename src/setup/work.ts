import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Base, Finding, Progress } from '../sheets/sheets.ts';
import type { Change, Wanted } from './calls.ts';
import { blankBase } from './blank.ts';
import { Colleague } from './colleague.ts';
import type { View } from './view.ts';

/** Changes that begin with something new: nothing of the dealer's own is lost with it. */
const opening: readonly Change['call'][] = ['open', 'document'];

/** The day by the clock of whoever sits there, not by that of Greenwich. */
export const dayOf = (now: Date) => [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');

/** All that is true of the dealer's work, as the page shows it; the desk itself is in a worker. */
export class Work implements ReactiveController {
  view: View | undefined;
  base: Base = blankBase;
  asOf = dayOf(new Date());
  withoutSold = false;
  progress: Progress | undefined;
  /** Why the file that was opened last isn't taken. */
  refused: readonly Finding[] = [];
  failed = false;

  private readonly host: ReactiveControllerHost;
  private readonly languages: readonly string[];
  private colleague: Colleague | undefined;
  /** Whether something was done by hand since the catalogue was saved last. */
  private unsaved = false;
  private asked: Promise<unknown> = Promise.resolve();
  /** Changes that were asked for and aren't done yet. */
  private pending = 0;

  constructor(host: ReactiveControllerHost, languages: readonly string[]) {
    this.host = host;
    this.languages = languages;
    host.addController(this);
  }

  hostConnected() {
    this.colleague = new Colleague(this.asOf, this.languages);
    window.addEventListener('beforeunload', this.warn);
  }

  hostDisconnected() {
    this.colleague?.end();
    window.removeEventListener('beforeunload', this.warn);
  }

  private readonly warn = (event: Event) => { if (this.unsaved) event.preventDefault(); };

  /** Resolves once all that was asked for so far is done. */
  get settled(): Promise<unknown> {
    return this.asked;
  }

  /** @returns whether it was done; where it was stopped or failed, what was there before is still there */
  do(change: Change): Promise<boolean> {
    const work = this.done(change);
    this.asked = Promise.all([this.asked, work]);
    return work;
  }

  private async done(change: Change): Promise<boolean> {
    this.failed = false;
    this.pending += 1;
    try {
      const outcome = await this.colleague!.ask(change, (progress) => {
        this.progress = progress;
        this.host.requestUpdate();
      });
      if (!('view' in outcome)) return false;
      this.view = outcome.view;
      this.refused = outcome.refused;
      // What was set meanwhile is newer than what this answer knows of.
      if (this.pending === 1) this.base = outcome.view.base;
      if (outcome.refused.length === 0) this.unsaved = this.unsaved || !opening.includes(change.call);
      return outcome.refused.length === 0;
    } catch (trouble) {
      this.fail(trouble);
      return false;
    } finally {
      this.pending -= 1;
      this.progress = undefined;
      this.host.requestUpdate();
    }
  }

  /** A text from the desk. */
  async fetch(wanted: Wanted): Promise<string | undefined> {
    const outcome = await this.colleague!.ask(wanted, () => undefined);
    return 'text' in outcome ? outcome.text : undefined;
  }

  set(base: Partial<Base>, asOf = this.asOf, withoutSold = this.withoutSold): Promise<boolean> {
    this.base = { ...this.base, ...base };
    Object.assign(this, { asOf, withoutSold });
    const { id, dealer } = this.base;
    return this.do({ call: 'set', base: { id, dealer, ...base }, asOf, withoutSold });
  }

  /** Takes what is usual where a language is read, while the dealer has neither said nor opened anything. */
  async begin(usual: Pick<Base['dealer'], 'currency' | 'units' | 'locale'>) {
    if (this.unsaved || this.pending > 0 || this.base.dealer.name !== blankBase.dealer.name || Object.keys(this.view?.sheets ?? {}).length > 0) return;
    const { currency, units, locale } = this.base.dealer;
    if (usual.currency === currency && usual.units === units && usual.locale === locale) return;
    await this.set({ dealer: { ...this.base.dealer, ...usual } });
    this.unsaved = false;
  }

  stop() {
    this.colleague?.stop();
  }

  saved() {
    this.unsaved = false;
  }

  fail(trouble: unknown) {
    console.warn(`acre-to-axle: set-up\n${String(trouble)}`);
    this.failed = true;
    this.host.requestUpdate();
  }
}
