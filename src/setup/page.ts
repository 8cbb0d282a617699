import { html, LitElement, nothing } from 'lit';
import type { PrintedWords } from '../reasons/words/words.ts';
import { csvOf, headingsOf, type Base, type Finding, type SheetKind } from '../sheets/sheets.ts';
import type { FigureId } from '../trade/book.ts';
import type { Call } from './calls.ts';
import { Colleague, type Progress } from './colleague.ts';
import { blankBase, type View } from './desk.ts';
import { english, languages, languageTags, type LanguageTag, type Spoken } from './languages.ts';
import { look } from './look.ts';
import { columnsTemplate } from './view-of-columns.ts';
import { dealerTemplate } from './view-of-dealer.ts';
import { figuresTemplate, withFigure } from './view-of-figures.ts';
import { filesTemplate } from './view-of-files.ts';
import { findingsTemplate } from './view-of-findings.ts';
import { savingTemplate, type Places } from './view-of-saving.ts';

/** Hands a text to whoever sits at the page, as a file. */
function handOver(name: string, type: string, text: string) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}

/** A byte-order mark tells a spreadsheet that the table is UTF-8. */
const mark = '\uFEFF';

/** Which table a file is meant to be, by its name. */
const kindOfFile = (name: string): SheetKind => (/unit|lot|stock|bestand|lager|inventar|parc/i.test(name) ? 'units' : 'machines');

const today = () => new Date().toISOString().slice(0, 10);

/**
 * The dealer's set-up page: from his tables to a catalogue and the lines to paste. It keeps nothing and sends nothing.
 *
 * @attr demo - address of a catalogue to begin with
 * @attr files - address of the list of the wizard's files with their hashes
 */
export class AcreSetUp extends LitElement {
  static override styles = look;
  static override properties = {
    demo: {}, files: {},
    spoken: { state: true }, view: { state: true }, base: { state: true }, asOf: { state: true }, progress: { state: true }, refusedFile: { state: true }, failed: { state: true },
    unfolded: { state: true }, page: { state: true }, words: { state: true }, searched: { state: true }, refusedFigures: { state: true }, places: { state: true }, script: { state: true }, tried: { state: true }, copied: { state: true },
  };

  /** Address of a catalogue to begin with. */
  declare demo: string | undefined;
  /** Address of the list of the wizard's files with their hashes. */
  declare files: string | undefined;

  private declare spoken: Spoken;
  private declare view: View | undefined;
  private declare base: Base;
  private declare asOf: string;
  private declare progress: Progress | undefined;
  private declare refusedFile: readonly Finding[];
  private declare failed: boolean;
  private declare unfolded: ReadonlySet<SheetKind>;
  private declare page: number;
  private declare words: PrintedWords | undefined;
  private declare searched: string;
  private declare refusedFigures: ReadonlySet<string>;
  private declare places: Places;
  private declare script: { file: string; integrity: string } | undefined;
  private declare tried: boolean;
  private declare copied: boolean;

  private colleague: Colleague | undefined;
  /** What was done since the catalogue was saved last. */
  private unsaved = false;
  private asked: Promise<unknown> = Promise.resolve();

  constructor() {
    super();
    this.spoken = english;
    this.base = blankBase;
    this.asOf = today();
    this.refusedFile = [];
    this.failed = false;
    this.unfolded = new Set();
    this.page = 0;
    this.searched = '';
    this.refusedFigures = new Set();
    this.places = { folder: '/acre-to-axle/', catalogue: '/acre-to-axle/catalogue.json' };
    this.tried = false;
    this.copied = false;
  }

  /** Resolves once all that was asked for is done and shown. */
  get settled(): Promise<void> {
    return this.asked.then(() => this.updateComplete).then(() => undefined);
  }

  override connectedCallback() {
    super.connectedCallback();
    this.colleague = new Colleague(this.asOf, languageTags);
    window.addEventListener('beforeunload', this.warn);
    void this.speak((document.documentElement.lang.slice(0, 2) || 'en') as LanguageTag);
  }

  override disconnectedCallback() {
    super.disconnectedCallback();
    this.colleague?.end();
    window.removeEventListener('beforeunload', this.warn);
  }

  private readonly warn = (event: Event) => { if (this.unsaved) event.preventDefault(); };

  private async speak(tag: LanguageTag) {
    this.spoken = await (languages[tag] ?? languages.en).speak();
    this.words = await this.spoken.rules();
    await this.findScript();
  }

  private async findScript() {
    if (!this.files) return;
    try {
      const { files } = await (await fetch(this.files)).json() as { files: { file: string; integrity: string }[] };
      this.script = files.find(({ file }) => file === `acre-to-axle.${this.base.dealer.locale.slice(0, 2)}.js`) ?? files.find(({ file }) => file === 'acre-to-axle.en.js');
    } catch {
      // Then the snippet names no hash, and says so.
      this.script = undefined;
    }
  }

  private ask(call: Call): Promise<void> {
    const work = this.answered(call);
    this.asked = Promise.all([this.asked, work]);
    return work;
  }

  private async answered(call: Call) {
    this.failed = false;
    try {
      const outcome = await this.colleague!.ask(call, (progress) => { this.progress = progress; });
      if (!('view' in outcome)) return;
      this.view = outcome.view;
      this.refusedFile = outcome.refused;
      this.base = outcome.view.base;
      this.unsaved = true;
    } catch (trouble) {
      console.warn(`acre-to-axle: set-up\n${String(trouble)}`);
      this.failed = true;
    } finally {
      this.progress = undefined;
    }
  }

  private async take(files: Iterable<File>, as?: SheetKind) {
    for (const file of files) {
      if (/\.json$/i.test(file.name)) await this.ask({ call: 'document', name: file.name, text: await file.text() });
      else await this.ask({ call: 'open', sheet: as ?? kindOfFile(file.name), name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) });
    }
    this.page = 0;
  }

  private async fromDemo() {
    try {
      const answer = await fetch(this.demo ?? '');
      await this.ask({ call: 'document', name: 'catalogue.json', text: await answer.text() });
    } catch {
      this.failed = true;
    }
  }

  private async addRow(sheet: SheetKind, form: HTMLFormElement) {
    const typed = [...new FormData(form)].flatMap(([field, text]) => (typeof text === 'string' && text.trim() !== '' ? [[field, text.trim()] as const] : []));
    await this.ask({ call: 'add', sheet, values: Object.fromEntries(typed) });
    form.reset();
  }

  private setBase(base: Partial<Base> & Pick<Base, 'id' | 'dealer'>, asOf = this.asOf) {
    this.base = { ...this.base, ...base };
    this.asOf = asOf;
    void this.ask({ call: 'set', base, asOf }).then(() => this.findScript());
  }

  private setFigure(id: FigureId, text: string) {
    const rules = withFigure(this.base.rules ?? {}, id, text);
    const others = [...this.refusedFigures].filter((each) => each !== id);
    this.refusedFigures = new Set(rules ? others : [...others, id]);
    if (rules) this.setBase({ id: this.base.id, dealer: this.base.dealer, rules });
  }

  private saveCatalogue() {
    handOver('catalogue.json', 'application/json', `${JSON.stringify(this.view!.catalogue, undefined, 1)}\n`);
    this.unsaved = false;
  }

  private async saveTable(sheet: SheetKind) {
    const outcome = await this.colleague!.ask({ call: 'csv', sheet }, () => undefined);
    if ('text' in outcome) handOver(`${sheet}.csv`, 'text/csv', `${mark}${outcome.text}`);
  }

  private unfold(sheet: SheetKind, open: boolean) {
    if (this.unfolded.has(sheet) === open) return;
    const others = [...this.unfolded].filter((each) => each !== sheet);
    this.unfolded = new Set(open ? [...others, sheet] : others);
  }

  private async tryIt() {
    await import('../widget/define.ts');
    this.tried = true;
  }

  private async copy(text: string) {
    await navigator.clipboard.writeText(text);
    this.copied = true;
  }

  private section(id: keyof Spoken['own']['headings'], content: unknown) {
    return html`<section id=${id} aria-labelledby="heading-${id}"><h2 id="heading-${id}">${this.spoken.own.headings[id]}</h2>${content}</section>`;
  }

  protected override render() {
    const { spoken, view, base } = this;
    const { own } = spoken;
    return html`
      <div class="page" lang=${own.language}>
        <header>
          <h1>${own.title}</h1>
          <p>${own.lead}</p>
          <label class="language">${own.languageLabel}
            <select data-language @change=${({ target }: Event) => this.speak((target as HTMLSelectElement).value as LanguageTag)}>
              ${languageTags.map((tag) => html`<option value=${tag} lang=${tag} ?selected=${tag === own.language}>${languages[tag].name}</option>`)}
            </select>
          </label>
        </header>
        ${this.section('files', filesTemplate({
          spoken, view, progress: this.progress, refused: this.refusedFile, failed: this.failed,
          take: (files, as) => void this.take(files, as), demo: () => void this.fromDemo(), stop: () => this.colleague?.stop(),
          add: (sheet, form) => void this.addRow(sheet, form),
          template: (sheet) => handOver(`${sheet}.csv`, 'text/csv', `${mark}${csvOf([headingsOf(sheet).map(({ heading }) => heading)])}`),
        }))}
        ${view ? html`
          ${this.section('columns', columnsTemplate({ spoken, view, unfolded: this.unfolded, unfold: (sheet, open) => this.unfold(sheet, open), map: (sheet, mapping) => void this.ask({ call: 'map', sheet, mapping }) }))}
          ${this.section('look', findingsTemplate({
            spoken, view, page: this.page, turn: (page) => { this.page = page; },
            mend: (sheet, column, rows, text) => void this.ask({ call: 'mend', sheet, column, rows, text }), undo: () => void this.ask({ call: 'undo' }),
          }))}` : nothing}
        ${this.section('dealer', dealerTemplate({ spoken, base, asOf: this.asOf, set: (changed, asOf) => this.setBase(changed, asOf) }))}
        ${this.section('figures', figuresTemplate({
          spoken, words: this.words, rules: base.rules ?? {}, searched: this.searched, refused: this.refusedFigures,
          search: (text) => { this.searched = text; }, set: (id, text) => this.setFigure(id, text),
        }))}
        ${this.section('save', view ? savingTemplate({
          spoken, view, places: this.places, script: this.script, tried: this.tried, copied: this.copied,
          place: (places) => { this.places = places; this.copied = false; }, saveCatalogue: () => this.saveCatalogue(), saveTable: (sheet) => void this.saveTable(sheet),
          tryIt: () => void this.tryIt(), copy: (text) => void this.copy(text),
        }) : html`<p>${own.save.notYet}</p>`)}
      </div>`;
  }
}
