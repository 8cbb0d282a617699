import type { Customer, Part } from './customer.ts';
import { holdsAnything, type Way } from './intake.ts';
import type { LanguageTag } from './languages.ts';
import type { Opened } from './opening/opening.ts';
import { sayNotCarried } from './opening/view.ts';
import type { Parts } from './parts.ts';
import { cover, loadAnew, uncover } from './residue.ts';
import { goToStart } from './view-of-sheet.ts';

/** What staff do with customers: one after the other, put aside and taken up again, asked in one way or another. */
export class Serving {
  /** The page is about to be loaded anew: nothing of it is lost that anybody has to be warned of. */
  isLeaving = false;

  constructor(private readonly parts: Parts) {}

  /** All that is in sight goes at once, and then the page itself. */
  nextCustomer() {
    this.isLeaving = true;
    this.clear();
    void this.parts.draft.drop().then(() => loadAnew());
  }

  leftAlone() {
    cover('left-alone');
    this.parts.screen.set({ covered: 'left-alone' });
    this.nextCustomer();
  }

  /** Whoever was parked, and is done with, isn't parked any more. */
  async done() {
    const { parking, screen: { parkedAs } } = this.parts;
    if (parkedAs !== undefined && parking.entries) await parking.remove(parkedAs);
    this.nextCustomer();
  }

  begin(from: Parameters<Customer['begin']>[0] = {}) {
    const { sending, steps, side, customer, screen } = this.parts;
    sending.clear();
    steps.forget();
    side.forget();
    customer.begin(from);
    screen.set({ parkedAs: undefined, said: undefined, place: 'work' });
    this.goToStart();
  }

  opened(opened: Opened) {
    this.begin({ answers: opened.answers });
    const { opening, words } = this.parts.equipment.spoken!;
    this.parts.screen.set({ note: sayNotCarried(opened, opening, words.list) });
  }

  async park() {
    const { customer: { intake }, parking, screen } = this.parts;
    if (intake) await parking.park(intake, screen.parkedAs, () => this.nextCustomer());
  }

  async resume(id: string) {
    const reopened = await this.parts.parking.open(id);
    if (!reopened) return;
    this.begin(reopened.intake);
    this.parts.screen.set({ note: undefined, parkedAs: reopened.id });
  }

  /** What a page that went away left. */
  async bringBack() {
    const intake = await this.parts.draft.take();
    if (intake) this.begin(intake);
    else this.parts.screen.set({ isDraftGone: true });
  }

  /** To the next of those who are parked; the one on the screen is parked first. */
  async turnTo(direction: number) {
    const { parking, customer: { intake }, screen: { parkedAs } } = this.parts;
    const { entries } = parking;
    if (!entries) return parking.count > 0 ? parking.show() : undefined;
    const ids = entries.filter(({ is }) => is === 'sound').map(({ id }) => id);
    const at = parkedAs === undefined ? (direction > 0 ? -1 : 0) : ids.indexOf(parkedAs);
    const next = ids[(at + direction + ids.length) % ids.length];
    if (next === undefined || next === parkedAs) return;
    const go = () => void this.resume(next);
    if (intake && holdsAnything(intake)) await parking.park(intake, parkedAs, go);
    else go();
  }

  async ask(way: Way) {
    if (way === 'sheet') await this.parts.steps.leave();
    this.parts.customer.ask(way);
    if (way === 'sheet') this.goToStart();
  }

  async show(part: Part) {
    const { customer, steps } = this.parts;
    if (customer.intake?.way === 'steps') await steps.leave();
    customer.show(part);
  }

  async showWhole() {
    const { customer, steps, page } = this.parts;
    customer.show('ask');
    customer.ask('steps');
    await page.updateComplete;
    await steps.showResult();
  }

  coverScreen() {
    this.parts.parking.shut();
    cover('by-hand');
    this.parts.screen.set({ covered: 'by-hand', focusNext: '[data-uncover]' });
  }

  showStart() {
    uncover();
    this.parts.screen.set({ covered: undefined, focusNext: '[data-begin]' });
  }

  async speak(tag: LanguageTag) {
    const { equipment, customer } = this.parts;
    const before = equipment.typing();
    await equipment.speak(tag);
    customer.reread(before);
  }

  changeVersion() {
    const { customer, screen, registration } = this.parts;
    if (customer.intake && !screen.isUpdateAsked) screen.set({ isUpdateAsked: true });
    else registration.change();
  }

  private clear() {
    const { customer, sending, reckoning, steps, side, opening, parking, screen } = this.parts;
    customer.leave();
    sending.clear();
    reckoning.forget();
    steps.forget();
    side.forget();
    opening.close();
    parking.shut();
    screen.set({ place: 'work', note: undefined, said: undefined, parkedAs: undefined });
  }

  private goToStart() {
    const { page } = this.parts;
    void page.updateComplete.then(() => goToStart(page.renderRoot));
  }
}
