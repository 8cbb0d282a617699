import { adoptStyles, html, LitElement, nothing, unsafeCSS, type PropertyValues } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { noAnswers } from '../answers/names.ts';
import { questionOf, questions, type QuestionId } from '../answers/questions.ts';
import type { Typing } from '../answers/read-typed.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { Fault } from '../documents/fault.ts';
import { answered } from '../guide/answered.ts';
import type { Place, VisitActor, Wish } from '../guide/guide.ts';
import { openQuestions, pathOf, progressOf, questionBefore, skippedOf, type Visit } from '../guide/next-question.ts';
import { ours } from '../handoff/in-fragment.ts';
import { readerFor, type AskingVoice } from '../reasons/asking-voice.ts';
import type { Ranking } from '../ranking/rank.ts';
import type { Voice } from '../reasons/say.ts';
import type { Shortlist } from '../reasons/schema.ts';
import type { SteerId } from '../reasons/steers.ts';
import type { AskingWords, Words } from '../reasons/words/words.ts';
import { afterPaint } from './after-paint.ts';
import { boxesOf, readBoxes, type Box, type Boxes, type StepFault } from './box.ts';
import type { ByMail } from './by-mail.ts';
import { Counting, type Counted } from './counting.ts';
import { acreEvent } from './events.ts';
import { whenIdle } from './in-slices.ts';
import { languageFor, languageNames, languageTags, ownAsking, ownLanguage, partsOf, type LanguageTag, type Parts } from './languages.ts';
import { look } from './look.ts';
import { missingTemplate } from './missing.ts';
import { Nearing } from './nearing.ts';
import { Proving } from './proving.ts';
import type { Ready, Reckoner } from './ready.ts';
import type { Delivered, Stock } from './stock.ts';
import type { Steered } from './steers.ts';
import { stepTemplate } from './step.ts';
import type { TakingAlong } from './taking-along.ts';
import type { Folds } from './unit/folds.ts';
import { Trail } from './trail.ts';
import { isTrouble, type CatalogueTrouble } from './trouble.ts';
import { version } from './version.ts';

/** CSS pixels: from where the picture stands beside the question, what the question takes, what lies round a picture, and the least that it is. */
const [besideFrom, besideQuestion, aroundPicture, leastPicture] = [960, 560, 70, 260];

/** CSS pixels that lie round a picture within a unit of the result. */
const aroundUnit = 110;

/** CSS pixels that a question's own picture takes at most: its column beside the line-up. */
const mostPicture = 420;

/** CSS pixels from which machines stand side by side in a table. */
const tableFrom = 560;

/** Longest wait for the page to name its line-up [ms]: what builds it may still be at work. */
const longestUnnamed = 8_000;

/** What of the result is unfolded, and what was done there. */
interface Page {
  all: boolean;
  compared: readonly string[] | undefined;
  steered: Steered | undefined;
}

const unfolded: Page = { all: false, compared: undefined, steered: undefined };

const inWords = ({ place, read, expected }: Fault) => `${place}: read ${read}, expected ${expected}`;

/**
 * The wizard: asks a buyer about land, work, budget and storage, and shows which machines of a dealer's
 * line-up fit, with reasons, drawbacks and the figures behind them.
 *
 * @attr lang - language of the words: `en`, `de`, `es`, `fr`; without it, that of the page
 * @slot - what stands in the page until the wizard does: the dealer's phone, a link to the stock
 * @slot intro - the dealer's own words above the first question
 * @slot result - his own words below the result
 * @slot privacy - what he says of privacy, on every step
 * @slot footer - whatever else is to stand below, on every step
 * @csspart question - a question with its options and buttons
 * @csspart progress - how far of how much
 * @csspart picture - the picture of what a question asks
 * @csspart continue - the button that goes on
 * @csspart unsure - the button that leaves a question open
 * @csspart back - the button to the question before
 * @csspart see-result - the button to the result, before all questions are answered
 * @csspart fault-summary - what is wrong with what was typed, above the question
 * @csspart line-up - the machines to scale
 * @csspart check - the page of all answers before the result
 * @csspart result - the result
 * @csspart resume - the button back to the questions that are left
 * @csspart machine - a machine of the result, with its reasons
 * @csspart steers - the wishes that change one answer
 * @csspart comparison - machines side by side
 * @csspart score-chart - what the points of each machine are made of
 * @csspart not-cleared - what heads the result, for it wasn't cleared
 * @csspart ask-dealer - the machines with a figure to ask for
 * @csspart conflicts - needs that no machine meets together
 * @csspart ways-out - what would bring a machine back
 * @csspart ruled-out - the machines that can't do it, and why
 * @csspart cautions - what to mind
 * @csspart terms - what the result is and isn't
 * @csspart contact - how to reach the dealer
 * @csspart answers - the answers, read back
 * @csspart start-again - the button that clears all answers
 * @csspart bring-back - the button that brings them back
 * @csspart stock - what is to be known of an old list or an empty lot
 * @csspart photo - a photo of a unit
 * @csspart try-again - the button that fetches the list once more
 * @csspart closer - what folds away one unit, closer
 * @csspart delivered-price - what it comes to, delivered
 * @csspart print-price - the button that prints that
 * @csspart inspection - what to look at on it
 * @csspart print-inspection - the button that prints that
 * @csspart costs - what it costs over the years beside another
 * @csspart asking - its asking price beside others of the dealer
 * @csspart hand-on - the section by which answers and shortlist are taken along
 * @csspart opened - what came of a link with answers
 * @csspart by-mail - the button that has the form shown by which a shortlist is mailed
 * @csspart mail - that form, and what came of it
 * @csspart send-mail - the button that sends it
 */
export class AcreToAxle extends LitElement {
  /** Version of the script that registered the element. */
  static readonly version: string = version;

  static override styles = look;

  static override properties = {
    catalogue: {},
    keepCatalogue: { type: Boolean, attribute: 'keep-catalogue' },
    loading: {},
    units: {},
    theme: { reflect: true },
    lang: {},
    history: {},
    languages: {},
    linkPage: { attribute: 'link-page' },
    fromLink: { type: Boolean, attribute: 'from-link' },
    relay: {},
    words: { state: true },
    telling: { state: true },
    reckoner: { state: true },
    trouble: { state: true },
    document: { state: true },
    flaws: { state: true },
    boxes: { state: true },
    faults: { state: true },
    page: { state: true },
    side: { state: true },
    pointed: { state: true },
    unfolded: { state: true },
    room: { state: true },
  };

  /** Address of the catalogue; as a property also the document itself. Without either, a `<script type="application/json">` inside the tag is read. */
  declare catalogue: string | CatalogueDocument | undefined;
  /** Keeps the last catalogue that could be used in the browser, for when the next can't be had; off by default. */
  declare keepCatalogue: boolean;
  /** `eager` where everything is to be fetched at once; by default nothing is until the element is nearly seen or has the focus. */
  declare loading: 'lazy' | 'eager' | undefined;
  /** Units to type and show in; without it, the dealer's. What the buyer chooses is written here. */
  declare units: 'us' | 'metric' | undefined;
  /** Colours: the page's by default; `contrast` for the strongest there are. */
  declare theme: 'auto' | 'light' | 'dark' | 'contrast' | undefined;
  /**
   * `push` where the browser's Back is to lead through the questions, each an entry of the page's history at the
   * same address; `none` by default. Two wizards of one page need an `id` each.
   */
  declare history: 'none' | 'push' | undefined;
  /** Languages the buyer may choose from, such as `en es`; all by default, one alone offers no choice. */
  declare languages: string | undefined;
  /** Address of the page that links and codes with a buyer's answers lead to; without it this page's own, without query and fragment. That page's wizard needs `from-link`. */
  declare linkPage: string | undefined;
  /** Begins with the answers that stand in the fragment of this page's address, where a link with answers led here; off by default, for the address is the page's. It is read alone, never written. */
  declare fromLink: boolean;
  /** Address of the relay that mails the shortlist, such as `https://mail.example/`; without it no mail is offered. */
  declare relay: string | undefined;

  private declare words: AskingWords;
  /** All words of the language, once there may be a result to tell. */
  private declare telling: Words | undefined;
  /** What reckons: fetched while the first question is read. */
  private declare reckoner: Reckoner | undefined;
  private declare trouble: CatalogueTrouble | undefined;
  private declare document: CatalogueDocument | undefined;
  /** What is the matter with the line-up that can be used all the same. */
  private declare flaws: readonly CatalogueTrouble['code'][];
  private inSi: Catalogue | undefined;
  private declare boxes: Boxes;
  private declare faults: readonly StepFault[];
  private declare page: Page;
  /** From where the line-up is seen, of which machine it tells, whether it is unfolded on a narrow page, and how wide the page is. */
  private declare side: 'side' | 'rear';
  private declare pointed: string | undefined;
  private declare unfolded: boolean;
  private declare room: number;

  /** There once there is something to reckon with; until then the first question needs none. */
  private visit: VisitActor | undefined;
  /** What the buyer did before that, to be done then. */
  private held: (() => void) | undefined;
  private trail: Trail | undefined;
  private readonly nearing = new Nearing(this);
  private loaded: Promise<void> | undefined;
  private spoken: Promise<void> | undefined;
  /** The language the buyer chose, until the page is told another. */
  private chosenLanguage: LanguageTag | undefined;
  private parts: Parts | undefined;
  private worn = false;
  private readonly proving = new Proving();
  private unknownTasks: readonly string[] = [];
  /** Answers set before there was anything to check them with. */
  private waiting: AnswersDocument | undefined;
  private along: TakingAlong | undefined;
  private byMail: ByMail | undefined;
  private folds: Folds | undefined;
  private fetching: AbortController | undefined;
  /** Where the focus goes once the page shows what the buyer caused; nowhere on first load. */
  private focusNext: 'heading' | 'summary' | undefined;
  private readonly counting = new Counting(async () => {
    const ready = this.readied;
    if (!ready || !this.isConnected) return;
    this.counting.now(ready, this.answers);
    this.requestUpdate();
    await super.getUpdateComplete();
  });
  private reckoned: { of: AnswersDocument; for: CatalogueDocument; result: Shortlist } | undefined;

  constructor() {
    super();
    this.words = ownAsking;
    this.boxes = {};
    this.faults = [];
    this.flaws = [];
    this.keepCatalogue = false;
    this.fromLink = false;
    this.page = unfolded;
    this.side = 'side';
    this.unfolded = false;
    this.room = 0;
    this.takeEarly();
  }

  /** Answers set before the script was there lie on the element itself and would hide the property. */
  private takeEarly() {
    const early = Object.getOwnPropertyDescriptor(this, 'answers');
    if (!early) return;
    Reflect.deleteProperty(this, 'answers');
    this.answers = early.value as AnswersDocument;
  }

  // In the next frame, for what is drawn anew changes the height that is watched as well.
  private readonly watch = new ResizeObserver(([entry]) => {
    requestAnimationFrame(() => { this.room = Math.floor(entry!.borderBoxSize[0]!.inlineSize); });
  });
  private watched: Element | null = null;

  /** What the buyer said so far: a document that may be kept, sent on or set again. */
  get answers(): AnswersDocument {
    return this.visit?.getSnapshot().context.answers ?? noAnswers;
  }

  /**
   * Keys and tasks of a newer version are no fault here: a page that holds on to an older widget survives
   * them. An unknown task becomes a caution of the result. Set before the element is {@link ready}, answers
   * wait until then, and their faults are told by `acre-error`.
   *
   * @throws TypeError where the document has faults, naming them all
   */
  set answers(answers: AnswersDocument) {
    if (!this.reckoner) {
      this.waiting = answers;
      return;
    }
    const { value, faults, unknownKeys, unknownTasks } = this.reckoner.readAnswers(answers);
    if (!value) throw new TypeError(faults.map(inWords).join('; '));
    if (unknownKeys.length > 0) console.warn(`acre-to-axle: ${unknownKeys.map(inWords).join('; ')}`);
    this.visit?.stop();
    this.visit = this.reckoner.beginVisit(value);
    this.unknownTasks = unknownTasks;
    this.reckoned = undefined;
    this.page = unfolded;
    this.settle();
  }

  /** Resolves once questions can be answered and a result be reckoned, or it is known why not. Whoever asks doesn't want it to wait until it is seen. */
  get ready(): Promise<void> {
    this.nearing.now();
    return this.whenReady();
  }

  private async whenReady() {
    await this.updateComplete;
    await Promise.all([this.loaded, this.spoken]);
    await this.updateComplete;
  }

  /** The shortlist for the answers so far; undefined until there is a catalogue. */
  get shortlist(): Shortlist | undefined {
    const { document, answers, reckoner } = this;
    if (!document || !reckoner) return undefined;
    if (this.reckoned?.of !== answers || this.reckoned.for !== document) {
      this.reckoned = { of: answers, for: document, result: reckoner.shortlist(document, answers, this.unknownTasks, this.inSi) };
    }
    return this.reckoned.result;
  }

  override disconnectedCallback() {
    super.disconnectedCallback();
    this.watch.disconnect();
    this.watched = null;
    this.trail?.stop();
    this.trail = undefined;
    this.proving.stop();
    this.fetching?.abort();
    this.nearing.stop();
  }

  override connectedCallback() {
    super.connectedCallback();
    this.nearing.start(this.loading === 'eager');
    if (this.hasUpdated) this.watchSheet();
    if (this.hasUpdated && !this.document) this.loaded = this.load();
    if (!this.lang) this.spoken = this.speak();
  }

  protected override willUpdate(changed: PropertyValues) {
    if (changed.has('catalogue') || !this.hasUpdated) this.loaded = this.load();
    if (this.loading === 'eager') this.nearing.now();
    if (changed.has('lang')) {
      this.chosenLanguage = undefined;
      this.spoken = this.speak();
    }
  }

  protected override updated() {
    const held = this.readied && this.held;
    if (held) {
      this.held = undefined;
      held();
    }
    // Taken out of the page meanwhile, it is to hold on to nothing.
    if (!this.isConnected) return;
    const ready = this.readied;
    this.proving.prove(ready && this.prospect(ready), ready);
    this.watchSheet();
    if (this.place === 'check') whenIdle(() => this.shortlist);
    const target = this.focusNext && this.renderRoot.querySelector<HTMLElement>(`#${this.focusNext}`);
    this.focusNext = undefined;
    target?.focus();
  }

  /** The sheet and not the element, which a host may have made a part of a line. */
  private watchSheet() {
    const sheet = this.renderRoot.querySelector('.sheet');
    if (sheet === this.watched) return;
    this.watch.disconnect();
    this.watched = sheet;
    if (sheet) this.watch.observe(sheet);
  }

  /** The nearest language said: on the element, on one around it, or on the page. */
  private async speak() {
    const language = this.chosenLanguage ?? languageFor(this.lang || this.closest<HTMLElement>('[lang]')?.lang || ownLanguage);
    const parts = partsOf(language);
    this.parts = parts;
    try {
      await this.speakWith(parts);
    } catch (trouble) {
      if (this.parts === parts) await this.speakAsBefore(language, String(trouble));
    }
  }

  private async speakWith(parts: Parts) {
    await this.nearing.near;
    const words = await parts.asking();
    if (this.parts !== parts) return;
    this.words = words;
    if (this.document) this.settle();
    await afterPaint();
    const all = { ...words, ...(await parts.telling()) };
    if (this.parts === parts) this.telling = all;
  }

  /** A language that can't be had keeps nobody from going on in the one there is. */
  private async speakAsBefore(missing: LanguageTag, why: string) {
    const before = languageFor(this.telling?.language ?? ownLanguage);
    if (before === missing) return this.receive({ document: undefined, troubles: [{ code: 'script.missing', details: [why] }] }, undefined);
    this.complain('language.missing', [why]);
    this.chosenLanguage = before;
    return this.speak();
  }

  /** Fetches what reckons and the line-up at once; the first question stands there meanwhile. */
  private async load() {
    this.fetching?.abort();
    const fetching = new AbortController();
    this.fetching = fetching;
    this.trouble = undefined;
    await this.nearing.near;
    const missing = (trouble: unknown): CatalogueTrouble => ({ code: 'script.missing', details: [String(trouble)] });
    if (!this.named) await new Promise((late) => { setTimeout(late, longestUnnamed); });
    if (fetching.signal.aborted) return;
    if (!this.named) return this.receive({ document: undefined, troubles: [{ code: 'catalogue.unnamed', details: ['set the attribute or the property catalogue, or put a <script type="application/json"> inside the tag'] }] }, undefined);
    const [reckoner, delivered] = await Promise.all([
      afterPaint().then(() => import('./reckoner.ts')).catch(missing), afterPaint().then(() => this.deliver(fetching.signal)).catch(missing),
    ]);
    if (fetching.signal.aborted) return;
    if (isTrouble(reckoner)) return this.receive({ document: undefined, troubles: [reckoner] }, undefined);
    const keptAt = this.keepCatalogue && typeof this.catalogue === 'string' ? this.catalogue : undefined;
    const stock = await reckoner.stockOf(delivered, keptAt, new Date());
    if (fetching.signal.aborted) return;
    this.reckoner = reckoner;
    this.visit ??= reckoner.beginVisit(noAnswers);
    this.wear(reckoner);
    this.receive(stock, reckoner);
    this.takeWaiting();
    this.byMail ??= new reckoner.ByMail(this);
    this.folds ??= new reckoner.Folds(this);
    this.along ??= new reckoner.TakingAlong(this, (answers) => this.takeOver(answers));
    await this.along.opened;
  }

  /** Answers that a link brought are shown with what they come to, as they were when it was made. */
  private takeOver(answers: AnswersDocument) {
    this.answers = answers;
    this.visit!.send({ type: 'result.asked' });
    this.settle();
    this.tellResult();
  }

  /** Whether answers are on their way by a link, so that no question is worth showing yet. */
  private get isLinked() {
    return this.fromLink && !this.along?.isRead && ours.test(location.hash);
  }

  /** A catalogue written inside the tag, for hosts that can do no more than write a page. */
  private get inside() {
    return this.querySelector(':scope > script[type="application/json"]');
  }

  /** Whether anything says where the line-up is. */
  private get named() {
    return Boolean(this.catalogue ?? this.inside);
  }

  private async deliver(stopped: AbortSignal): Promise<Delivered> {
    const { catalogue } = this;
    if (typeof catalogue === 'string') return (await import('./delivery.ts')).fetched(catalogue, stopped);
    return catalogue ? { json: catalogue } : { text: this.inside?.textContent ?? '' };
  }

  /** By Lit's own way: sheets, which a strict policy allows, or style elements with `litNonce` where a browser knows none. */
  private wear({ laterLook, lineUpStyle }: Reckoner) {
    if (this.worn) return;
    this.worn = true;
    adoptStyles(this.renderRoot as ShadowRoot, [look, laterLook, unsafeCSS(lineUpStyle)]);
  }

  private takeWaiting() {
    const { waiting } = this;
    this.waiting = undefined;
    if (!waiting) return;
    try {
      this.answers = waiting;
    } catch (fault) {
      this.complain('answers.faulty', [String(fault)]);
    }
  }

  private receive({ document, troubles }: Stock, reckoner: Reckoner | undefined) {
    this.document = document;
    this.inSi = document && reckoner?.catalogueOf(document);
    this.trouble = document ? undefined : troubles[0];
    this.flaws = troubles.map(({ code }) => code);
    for (const { code, details } of troubles) this.complain(code, details);
    // What was ticked of the first question while the line-up was on its way stays ticked.
    if (document && this.place !== questions[0].id) this.settle();
  }

  private complain(code: CatalogueTrouble['code'], details: readonly string[]) {
    console.warn(`acre-to-axle: ${code}\n${details.join('\n')}`);
    this.dispatchEvent(acreEvent('acre-error', { code }));
  }

  private get typing(): Typing {
    const dealer = this.document?.dealer;
    return { units: this.units ?? dealer?.units ?? 'us', decimalMark: this.words.decimalMark, currency: dealer?.currency ?? 'USD' };
  }

  private get askingVoice(): AskingVoice {
    const { locale = 'en-US', currency = 'USD' } = this.document?.dealer ?? {};
    return { words: this.words, reader: readerFor(this.words, this.typing.units, locale, currency) };
  }

  private get voice(): Voice {
    const { reader } = this.askingVoice;
    return { words: this.telling!, reader, nameOf: this.reckoner!.namesIn(this.document!, reader) };
  }

  /** Where the visit is; before it began, at the first question. */
  private get place(): Place {
    const snapshot = this.visit?.getSnapshot();
    if (!snapshot) return questions[0].id;
    if (snapshot.matches('checking')) return 'check';
    return snapshot.matches('result') ? 'result' : snapshot.context.at!;
  }

  /** The question on show; none on the pages that follow them. */
  private get at(): QuestionId | undefined {
    const { place } = this;
    return place === 'check' || place === 'result' ? undefined : place;
  }

  /** Fills the boxes from the answers of the question now on show. */
  private settle() {
    const { at } = this;
    this.faults = [];
    this.boxes = at ? boxesOf(questionOf(at), this.answers, this.typing) : {};
    this.requestUpdate();
  }

  private wish(wish: Wish) {
    if (!this.readied) {
      this.held = () => this.wish(wish);
      this.requestUpdate();
      return;
    }
    const from = this.place;
    this.visit!.send(wish);
    if (this.history === 'push' && this.place !== from && wish.type !== 'place.revisited') this.trailed.moved(from, this.place);
    this.arrive();
  }

  private get trailed(): Trail {
    if (!this.trail) {
      this.trail = new Trail(`acre-to-axle${this.id && `#${this.id}`}`, (place) => this.wish({ type: 'place.revisited', place }));
      this.trail.start();
    }
    return this.trail;
  }

  /** The page shows another place, because the buyer wished so. */
  private arrive() {
    this.settle();
    this.focusNext = 'heading';
    this.page = unfolded;
    this.along?.goOn();
    this.tellResult();
  }

  private tellResult() {
    if (this.place !== 'result') return;
    const { shortlist: standing = [], askDealer = [] } = this.shortlist ?? {};
    const ids = (entries: readonly { machine: string }[]) => entries.map(({ machine }) => machine);
    this.dispatchEvent(acreEvent('acre-result-shown', { machines: ids(standing), toAsk: ids(askDealer) }));
  }

  private back() {
    const before = questionBefore(this.visit!.getSnapshot().context, this.at);
    if (before && this.trail?.wentBackTo(before)) return;
    this.wish({ type: 'step.back' });
  }

  private answer(unsure: boolean) {
    const { at } = this;
    if (!at) return;
    const read = unsure ? 'unsure' : readBoxes(questionOf(at), this.boxes, this.typing);
    if (read !== 'unsure' && 'faults' in read) {
      this.faults = read.faults;
      this.focusNext = 'summary';
      return;
    }
    const values = read === 'unsure' ? undefined : read.values;
    if (!this.visit || !this.readied) {
      this.held = () => this.answer(unsure);
      this.requestUpdate();
      return;
    }
    const skips = this.proving.of(answered(this.visit.getSnapshot().context, at, values));
    this.wish(values ? { type: 'answer.given', values, skips } : { type: 'answer.unsure', skips });
    this.dispatchEvent(acreEvent('acre-answered', { question: at, unsure: values === undefined }));
  }

  /** The visit as it will be, should the buyer go on with what stands in the boxes. */
  private prospect({ visit }: Ready): Visit | undefined {
    const { at } = this;
    if (!at) return undefined;
    const { context } = visit.getSnapshot();
    const read = readBoxes(questionOf(at), this.boxes, this.typing);
    if (read === 'unsure') return answered(context, at, undefined);
    if (!('faults' in read)) return answered(context, at, read.values);
    return read.faults.every(({ fault }) => fault === 'nothing-chosen') ? answered(context, at, undefined) : undefined;
  }

  private changeBox(at: string, box: Box) {
    this.boxes = { ...this.boxes, [at]: box };
  }

  private rankingOf(ready: Ready): Ranking {
    return this.counting.now(ready, this.answers).ranking;
  }

  /** The page is whole once it shows how the machines stand. */
  protected override async getUpdateComplete(): Promise<boolean> {
    const whole = await super.getUpdateComplete();
    await this.counting.shown;
    return whole;
  }

  private standingText(counted: Counted | undefined): string {
    return counted ? this.words.wizard.standing(counted.ranking.standing.length, counted.for.machines.length) : '';
  }

  /** What is there once everything has come. */
  private get readied(): Ready | undefined {
    const { visit, document, inSi, reckoner, telling } = this;
    return visit && document && inSi && reckoner && telling ? { visit, document, inSi, reckoner } : undefined;
  }

  /** Drawn anew only where what it shows has changed, and not for each letter that is typed. */
  private lineUp(ready: Ready) {
    const counted = this.place === 'result' ? this.counting.now(ready, this.answers) : this.counting.last(ready, this.answers);
    if (!counted) return nothing;
    const shows = [counted, this.telling, this.typing.units, this.side, this.pointed, this.unfolded, this.room, this.at !== undefined];
    return guard(shows, () => this.lineUpTemplate(ready, counted));
  }

  private get beside() {
    return this.room >= besideFrom && this.at !== undefined;
  }

  /** The line-up beside the question; on a narrow page, and above the result, one tap away. */
  private lineUpTemplate({ inSi, reckoner }: Ready, { of, ranking }: Counted) {
    const { voice } = this;
    const { beside } = this;
    const view = {
      catalogue: inSi, answers: reckoner.answersOf(of), book: ranking.world.book, needs: ranking.needs, voice,
      standing: reckoner.standingSoFar(ranking), units: this.typing.units, side: this.side, pointed: this.pointed,
      width: Math.max(leastPicture, this.room - (beside ? besideQuestion : aroundPicture)),
      turn: (side: 'side' | 'rear') => { this.side = side; },
      point: (machine: string) => { this.pointed = machine; },
    };
    return beside ? reckoner.lineUpTemplate(view) : reckoner.foldedLineUpTemplate(view, voice, this.unfolded, (open) => { this.unfolded = open; });
  }

  private chooseUnits(units: 'us' | 'metric') {
    this.units = units;
    this.settle();
  }

  private languageTemplate() {
    const offered = languageTags.filter((tag) => !this.languages || this.languages.split(/[\s,]+/).includes(tag));
    if (offered.length < 2) return nothing;
    const chosen = async ({ target }: Event) => {
      const select = target as HTMLSelectElement;
      this.chosenLanguage = select.value as LanguageTag;
      this.spoken = this.speak();
      await this.spoken;
      select.value = this.words.language;
    };
    return html`
      <label class="language">${this.words.wizard.languageLabel}
        <select @change=${chosen}>${offered.map((tag) => html`<option value=${tag} lang=${tag} ?selected=${tag === this.words.language}>${languageNames[tag]}</option>`)}</select>
      </label>`;
  }

  private unitsTemplate() {
    const { wizard } = this.words;
    const choice = (units: 'us' | 'metric', label: string) => html`
      <label><input type="radio" name="units" .checked=${this.typing.units === units} @change=${() => this.chooseUnits(units)} />${label}</label>`;
    return html`<fieldset class="units"><legend>${wizard.unitsLabel}</legend>${choice('us', wizard.unitsUs)}${choice('metric', wizard.unitsMetric)}</fieldset>`;
  }

  private stage() {
    const { at } = this;
    const ready = this.readied;
    // The first question needs nothing of the dealer's; all others go by his units and his money.
    if (at && !this.waiting && !this.isLinked && !this.held && (ready || at === questions[0].id)) return this.step(at, ready);
    if (!ready) return html`<p role="status">${this.words.wizard.loading}</p>`;
    return this.place === 'check' ? this.check(ready) : this.result(ready);
  }

  private step(at: QuestionId, ready: Ready | undefined) {
    const visit: Visit = this.visit?.getSnapshot().context ?? { answers: noAnswers, seen: [] };
    return stepTemplate({
      question: questionOf(at), answers: this.answers, boxes: this.boxes, faults: this.faults, voice: this.askingVoice, typing: this.typing,
      progress: progressOf(visit, at), standing: this.standingText(ready && this.counting.last(ready, this.answers)), canGoBack: questionBefore(visit, at) !== undefined,
      picture: ready && this.picture(at, ready),
      change: (path, box) => this.changeBox(path, box), submit: () => this.answer(false), unsure: () => this.answer(true),
      back: () => this.back(), seeResult: () => this.wish({ type: 'result.asked' }),
    });
  }

  /** As wide as the text of a step, and drawn anew only where what it shows has changed. */
  private picture(question: QuestionId, ready: Ready) {
    const book = this.counting.last(ready, this.answers)?.ranking.world.book;
    if (!book || !ready.reckoner.hasPicture(question)) return undefined;
    const answers = this.prospect(ready)?.answers ?? this.answers;
    const width = Math.min(mostPicture, Math.max(leastPicture, this.room - aroundPicture));
    return guard([question, JSON.stringify(answers), this.telling, this.typing.units, width], () =>
      ready.reckoner.pictureTemplate({ question, answers, book, voice: this.voice, width }));
  }

  /** What the pages after the questions read back, and how they change it. */
  private readBack({ visit }: Ready) {
    const { context } = visit.getSnapshot();
    return {
      answers: this.answers, voice: this.voice, path: pathOf(context), skipped: skippedOf(context),
      change: (question: QuestionId) => this.wish({ type: 'step.chosen', question }),
    };
  }

  private check(ready: Ready) {
    return ready.reckoner.checkTemplate({ ...this.readBack(ready), checked: () => this.wish({ type: 'answers.checked' }), back: () => this.back() });
  }

  private result(ready: Ready) {
    const { context } = ready.visit.getSnapshot();
    const closer = { answers: this.answers, shortlist: this.shortlist!, catalogue: ready.document, inSi: ready.inSi, voice: this.voice, width: Math.max(leastPicture, this.room - aroundUnit) };
    return ready.reckoner.resultTemplate({
      ...this.readBack(ready), ...this.page, shortlist: this.shortlist!, catalogue: ready.document, flaws: this.flaws, ranking: this.rankingOf(ready), wide: this.room >= tableFrom,
      questionsLeft: openQuestions(context).length > 0, canUndo: context.before !== undefined, unsteered: context.unsteered?.answers,
      byMail: this.byMail!.fold({ answers: this.answers, shortlist: this.shortlist!, catalogue: ready.document, voice: this.voice }),
      takeAlong: this.along!.fold({ answers: this.answers, shortlist: this.shortlist!, catalogue: ready.document, voice: this.voice }),
      closer: (named, facts, stands) => this.folds!.fold(named, facts, stands, closer),
      showAll: () => { this.page = { ...this.page, all: true }; },
      compare: (compared) => { this.page = { ...this.page, compared }; },
      steer: (to) => this.steer(ready, to), undoSteer: () => this.undoSteer(ready),
      resume: () => this.wish({ type: 'questions.resumed' }),
      clear: () => { this.folds?.forget(); this.wish({ type: 'visit.cleared' }); },
      restore: () => this.wish({ type: 'visit.restored' }),
    });
  }

  /** Changes one answer so that another machine comes first, and tells what moved; or that none is as wished. */
  private steer(ready: Ready, to: SteerId) {
    const { answers, shortlist: stood } = this;
    const steer = ready.reckoner.steerTo(to, answers, this.rankingOf(ready), ready.inSi, this.typing.units);
    if (!steer) {
      this.page = { ...this.page, steered: { to } };
      return;
    }
    ready.visit.send({ type: 'result.steered', ...steer });
    this.page = { ...this.page, steered: { to, question: steer.question, moves: ready.reckoner.movesBetween(stood!, this.shortlist!) } };
  }

  private undoSteer({ visit }: Ready) {
    visit.send({ type: 'steer.undone' });
    this.page = { ...this.page, steered: undefined };
  }

  /** What was put inside the tag later than the element was there. */
  private sought() {
    if (this.named) this.retry();
  }

  private retry() {
    this.loaded = this.load();
    this.requestUpdate();
  }

  private troubled({ code }: CatalogueTrouble) {
    const { wizard } = this.words;
    const told = { 'catalogue.empty': wizard.catalogueEmpty, 'catalogue.faulty': wizard.catalogueFaulty, 'catalogue.newer': wizard.catalogueFaulty, 'catalogue.too-large': wizard.catalogueFaulty, 'catalogue.not-json': wizard.catalogueFaulty };
    return html`
      <div class="sheet" lang=${this.words.language} dir=${this.words.direction}>
        ${missingTemplate(told[code as keyof typeof told] ?? wizard.catalogueMissing, wizard.tryAgain, () => this.retry())}
        <slot></slot>
      </div>`;
  }

  protected override render() {
    const { wizard } = this.words;
    if (this.trouble) return this.troubled(this.trouble);
    if (!this.named) return html`<div class="sheet"><p>${wizard.loading}</p><slot @slotchange=${() => this.sought()}></slot></div>`;
    const ready = this.readied;
    return html`
      <div class="sheet" lang=${this.words.language} dir=${this.words.direction}>
        ${this.place === questions[0].id ? html`<slot name="intro"></slot>` : nothing}
        ${this.along?.notice(this.words.language) ?? nothing}
        <div class="stage ${this.beside ? 'wide' : ''}">
          ${this.stage()}
          ${ready ? html`<div class="beside">${this.lineUp(ready)}</div>` : nothing}
        </div>
        <div class="foot">${this.unitsTemplate()}${this.languageTemplate()}</div>
        <slot name="privacy"></slot>
        <slot name="footer"></slot>
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'acre-to-axle': AcreToAxle;
  }
}
