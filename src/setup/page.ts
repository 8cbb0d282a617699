import { html, LitElement, nothing } from 'lit';
import type { PrintedWords } from '../reasons/words/words.ts';
import { csvOf, headingsOf, type SheetKind } from '../sheets/sheets.ts';
import type { FigureId } from '../trade/book.ts';
import type { Change } from './calls.ts';
import { framesWith } from './frames.ts';
import { handOverTable } from './hand-over-table.ts';
import { english, languageNames, languages, languageTags, type LanguageTag, type Spoken } from './languages.ts';
import { look } from './look.ts';
import { Takeaway } from './takeaway.ts';
import { columnsTemplate } from './view-of-columns.ts';
import { dealerTemplate } from './view-of-dealer.ts';
import { figuresAtATime, figuresTemplate, withFigure } from './view-of-figures.ts';
import { filesTemplate } from './view-of-files.ts';
import { findingsTemplate } from './view-of-findings.ts';
import { savingTemplate } from './view-of-saving.ts';
import { hasTables, stepsTemplate, type Step } from './view-of-steps.ts';
import { Work } from './work.ts';

const state = { state: true };

/** A set with one more in it. */
const and = <T>(set: ReadonlySet<T>, one: T): ReadonlySet<T> => new Set([...set, one]);

/**
 * The dealer's set-up page: from his tables to a catalogue and the lines to paste. It keeps nothing and sends nothing.
 *
 * @attr demo - address of a catalogue to begin with
 * @attr files - address of the list of the wizard's files with their hashes, which lie beside it
 */
export class AcreSetUp extends LitElement {
  static override styles = look;
  static override properties = {
    demo: {}, files: {},
    spoken: state, words: state, unfolded: state, changing: state, asking: state, added: state, kept: state, lines: state, page: state,
    searched: state, most: state, refusedFigures: state,
  };

  /** Address of a catalogue to begin with. */
  declare demo: string | undefined;
  /** Address of the list of the wizard's files with their hashes, which lie beside it. */
  declare files: string | undefined;

  private declare spoken: Spoken;
  private declare words: PrintedWords | undefined;
  private declare unfolded: ReadonlySet<SheetKind>;
  private declare changing: ReadonlySet<string>;
  private declare asking: ReadonlySet<SheetKind>;
  private declare added: { sheet: SheetKind; row: number } | undefined;
  private declare kept: ReadonlySet<string>;
  private declare lines: ReadonlyMap<string, string>;
  private declare page: number;
  private declare searched: string;
  private declare most: number;
  private declare refusedFigures: ReadonlySet<string>;

  private readonly work = new Work(this, languageTags);
  private readonly takeaway = new Takeaway(this, this.work);

  constructor() {
    super();
    this.spoken = english;
    this.unfolded = new Set();
    this.asking = new Set();
    this.refusedFigures = new Set();
    this.searched = '';
    this.most = figuresAtATime;
    this.startOver();
  }

  /** Resolves once all that was asked for is done and shown. */
  get settled(): Promise<void> {
    return this.work.settled.then(() => this.updateComplete).then(() => undefined);
  }

  override connectedCallback() {
    super.connectedCallback();
    void this.speak((document.documentElement.lang.slice(0, 2) || 'en') as LanguageTag);
  }

  private async speak(tag: LanguageTag) {
    const { speak, usual } = languages[tag] ?? languages.en;
    this.spoken = await speak();
    await this.work.begin(usual);
    this.words = await this.spoken.rules();
    await this.takeaway.findScript(this.files);
  }

  /** What was said of findings is of the tables they were found in. */
  private startOver() {
    this.page = 0;
    this.kept = new Set();
    this.lines = new Map();
    this.changing = new Set();
  }

  private async do(change: Change): Promise<boolean> {
    const isDone = await this.work.do(change);
    if (isDone) await this.takeaway.renew();
    return isDone;
  }

  private async take(files: Iterable<File>, as?: SheetKind) {
    const isJson = ({ name }: File) => /\.json$/i.test(name);
    // What the dealer says of himself settles how his tables are read.
    for (const file of [...files].sort((a, b) => Number(isJson(b)) - Number(isJson(a)))) {
      const bytes = new Uint8Array(await file.arrayBuffer());
      if (isJson(file)) await this.do({ call: 'document', name: file.name, bytes });
      else await this.do({ call: 'open', sheet: as, name: file.name, bytes });
    }
    this.startOver();
    await this.takeaway.findScript(this.files);
  }

  private async fromDemo() {
    try {
      const answer = await fetch(this.demo ?? '');
      await this.do({ call: 'document', name: 'catalogue.json', bytes: new Uint8Array(await answer.arrayBuffer()) });
      this.startOver();
    } catch (trouble) {
      this.work.fail(trouble);
    }
  }

  private async addRow(sheet: SheetKind, values: Readonly<Record<string, string>>, form: HTMLFormElement) {
    if (!(await this.do({ call: 'add', sheet, values }))) return;
    form.reset();
    this.added = { sheet, row: (this.work.view?.sheets[sheet]?.lastRow ?? 0) };
    form.querySelector<HTMLElement>('input, select')?.focus();
  }

  /** Whoever mends goes on with what stands in its place then. */
  private async mend(key: string, change: Change) {
    const at = [...this.findings].findIndex((finding) => finding.dataset.key === key);
    const { lines } = this;
    this.lines = new Map([...lines].filter(([each]) => each !== key));
    await this.do(change);
    await this.goOnAt(at);
  }

  private get findings() {
    return this.renderRoot.querySelectorAll<HTMLElement>('#look > .findings > .finding');
  }

  private async goOnAt(at: number) {
    await this.updateComplete;
    const left = this.findings;
    (left[Math.min(at, left.length - 1)] ?? this.headingOf('look'))?.focus();
  }

  private headingOf(step: Step) {
    return this.renderRoot.querySelector<HTMLElement>(`#heading-${step}`);
  }

  private keep(key: string) {
    const at = [...this.findings].findIndex((finding) => finding.dataset.key === key);
    this.kept = and(this.kept, key);
    void this.goOnAt(at);
  }

  private readonly go = (step: Step) => {
    const heading = this.headingOf(step);
    heading?.scrollIntoView({ block: 'start' });
    heading?.focus({ preventScroll: true });
  };

  private async set(...changed: Parameters<Work['set']>) {
    if (await this.work.set(...changed)) await this.takeaway.renew();
    await this.takeaway.findScript(this.files);
  }

  private setFigure(id: FigureId, text: string) {
    const rules = withFigure(this.work.base.rules ?? {}, id, text);
    const others = [...this.refusedFigures].filter((each) => each !== id);
    this.refusedFigures = new Set(rules ? others : [...others, id]);
    if (rules) void this.set({ rules });
  }

  private async showLine(key: string, sheet: SheetKind, row: number) {
    const line = await this.work.fetch({ call: 'line', sheet, row });
    if (line !== undefined) this.lines = new Map([...this.lines, [key, line]]);
  }

  private section(id: Step, content: unknown) {
    return html`<section id=${id} aria-labelledby="heading-${id}"><h2 id="heading-${id}" tabindex="-1">${this.spoken.own.headings[id]}</h2>${content}</section>`;
  }

  private filesSection() {
    const { spoken, work } = this;
    const { view, progress, refused, failed } = work;
    return filesTemplate({
      spoken, view, progress, refused, failed, unfolded: this.asking, added: this.added,
      take: (files, as) => void this.take(files, as), demo: () => void this.fromDemo(), stop: () => work.stop(),
      unfold: (sheet) => { this.asking = and(this.asking, sheet); }, add: (sheet, values, form) => void this.addRow(sheet, values, form),
      template: (sheet) => handOverTable(sheet, csvOf([headingsOf(sheet).map(({ heading }) => heading)])),
    });
  }

  private columnsSection(view: NonNullable<Work['view']>) {
    return columnsTemplate({
      spoken: this.spoken, view, unfolded: this.unfolded, changing: this.changing,
      unfold: (sheet, open) => { if (this.unfolded.has(sheet) !== open) this.unfolded = open ? and(this.unfolded, sheet) : new Set([...this.unfolded].filter((each) => each !== sheet)); },
      change: (column) => { this.changing = and(this.changing, column); },
      map: (sheet, mapping) => void this.do({ call: 'map', sheet, mapping }), part: (sheet, separator) => void this.do({ call: 'part', sheet, separator }),
      decimals: (sheet, mark) => void this.do({ call: 'decimals', sheet, mark }), swap: (sheet) => void this.do({ call: 'swap', sheet }),
    });
  }

  private findingsSection(view: NonNullable<Work['view']>) {
    const { spoken, page, kept, lines, work } = this;
    return findingsTemplate({
      spoken, view, page, kept, lines,
      turn: (to) => { this.page = to; void this.goOnAt(0); }, undo: () => void this.do({ call: 'undo' }),
      mend: (key, change) => void this.mend(key, change), keep: (key) => this.keep(key), showLine: (key, sheet, row) => void this.showLine(key, sheet, row),
      addFrame: (_, id) => void this.set({ frames: framesWith(work.base.frames, [id]) }).then(() => this.goOnAt(0)), toTerms: () => this.go('dealer'),
    });
  }

  private savingSection() {
    const { spoken, work, takeaway } = this;
    const { places, script, scripts, offered, inside, tried, copied } = takeaway;
    return savingTemplate({
      spoken, view: work.view, withoutSold: work.withoutSold, places, script, scripts, offered, inside, tried, copied,
      offer: (tag, isOffered) => takeaway.offer(tag, isOffered),
      place: (changed) => takeaway.place(changed), putInside: (isInside) => void takeaway.putInside(isInside), tryIt: () => void takeaway.tryIt(),
      leaveOutSold: (isLeftOut) => void this.set({}, work.asOf, isLeftOut), saveCatalogue: () => void takeaway.saveCatalogue(), saveTable: (sheet) => void takeaway.saveTable(sheet),
      saveScript: (file) => void takeaway.saveScript(file), saveLines: (text) => takeaway.saveLines(text),
      copy: (text) => void takeaway.copy(text, this.renderRoot.querySelector('[data-snippet]')!),
    });
  }

  protected override render() {
    const { spoken, words, work } = this;
    const { own } = spoken;
    const { view, base, asOf } = work;
    return html`
      <div class="page" lang=${own.language}>
        <header>
          <h1>${own.title}</h1>
          <p>${own.lead}</p>
          <label class="language">${own.languageLabel}
            <select data-language @change=${({ target }: Event) => this.speak((target as HTMLSelectElement).value as LanguageTag)}>
              ${languageTags.map((tag) => html`<option value=${tag} lang=${tag} ?selected=${tag === own.language}>${languageNames[tag]}</option>`)}
            </select>
          </label>
          ${stepsTemplate(spoken, work, this.kept, this.go)}
        </header>
        ${this.section('files', this.filesSection())}
        ${hasTables(view) ? html`${this.section('columns', this.columnsSection(view))}${this.section('look', this.findingsSection(view))}` : nothing}
        ${this.section('dealer', dealerTemplate({ spoken, base, asOf, set: (changed, day) => void this.set(changed, day) }))}
        ${this.section('figures', figuresTemplate({
          spoken, words, rules: base.rules ?? {}, searched: this.searched, most: this.most, refused: this.refusedFigures,
          search: (text) => { this.searched = text; this.most = figuresAtATime; }, more: () => { this.most += figuresAtATime; }, set: (id, text) => this.setFigure(id, text),
        }))}
        ${this.section('save', this.savingSection())}
      </div>`;
  }
}
