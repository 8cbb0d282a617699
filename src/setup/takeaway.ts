import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { SheetKind } from '../sheets/sheets.ts';
import { handOver } from '../widget/hand-over.ts';
import { handOverTable } from './hand-over-table.ts';
import { languageTags } from './languages.ts';
import type { Places, Script } from './pasted.ts';
import type { Work } from './work.ts';

/** What the dealer takes away with him: the catalogue as a file or in the lines to paste, the wizard's script, a try before. */
export class Takeaway implements ReactiveController {
  places: Places = { folder: '/acre-to-axle/', catalogue: '/acre-to-axle/catalogue.json' };
  script: Script | undefined;
  /** Languages the buyers may choose from. */
  offered: ReadonlySet<string> = new Set(languageTags);
  /** JSON of the catalogue, where it is to stand in the lines to paste. */
  inside: string | undefined;
  /** The catalogue the wizard is tried with; undefined until it is. */
  tried: CatalogueDocument | undefined;
  copied: 'copied' | 'marked' | undefined;

  private readonly host: ReactiveControllerHost;
  private readonly work: Work;
  /** The list of the wizard's files, and where it lies. */
  private list: { address: URL; scripts: readonly Script[] } | undefined;

  constructor(host: ReactiveControllerHost, work: Work) {
    this.host = host;
    this.work = work;
    host.addController(this);
  }

  hostConnected() {}

  private show(changed: Partial<Pick<Takeaway, 'places' | 'script' | 'offered' | 'inside' | 'tried' | 'copied'>>) {
    Object.assign(this, { copied: undefined, ...changed });
    this.host.requestUpdate();
  }

  private catalogue(spaced = false) {
    return this.work.fetch({ call: 'catalogue', spaced });
  }

  /**
   * Looks for the wizard's one file in the dealer's language, beside the list of its files.
   *
   * @param listed  address of that list; without one no hash is known, and the snippet says so
   */
  async findScript(listed: string | undefined) {
    if (listed !== undefined && this.list === undefined) {
      const address = new URL(listed, document.baseURI);
      const scripts = await fetch(address).then(async (answer) => ((await answer.json()) as { files: Script[] }).files).catch((): Script[] => []);
      this.list = { address, scripts };
    }
    const named = (tag: string) => this.list?.scripts.find(({ file }) => file === `acre-to-axle.${tag}.js`);
    const script = named(this.work.base.dealer.locale.slice(0, 2)) ?? named('en');
    if (script !== this.script) this.show({ script });
  }

  /** Gives the new catalogue to what shows it. */
  async renew() {
    const { tried, inside } = this;
    if (!tried && inside === undefined) return;
    const text = await this.catalogue();
    this.show({ tried: tried && text ? JSON.parse(text) as CatalogueDocument : undefined, inside: inside === undefined ? undefined : text });
  }

  /** The files to put on a site: the script, and the words of each other language that is offered. */
  get scripts(): readonly Script[] {
    const { script } = this;
    if (!script) return [];
    const words = [...this.offered].map((tag) => [`acre-to-axle.${tag}.js`, `acre-to-axle.words.${tag}.js`] as const).filter(([whole]) => whole !== script.file);
    return [script, ...words.flatMap(([, file]) => this.list!.scripts.find((each) => each.file === file) ?? [])];
  }

  offer(tag: string, isOffered: boolean) {
    this.show({ offered: new Set(languageTags.filter((each) => (each === tag ? isOffered : this.offered.has(each)))) });
  }

  place(places: Places) {
    this.show({ places });
  }

  async putInside(isInside: boolean) {
    this.show({ inside: isInside ? await this.catalogue() : undefined });
  }

  async tryIt() {
    const [text] = await Promise.all([this.catalogue(), import('../widget/define.ts')]);
    this.show({ tried: text ? JSON.parse(text) as CatalogueDocument : undefined });
  }

  async saveCatalogue() {
    const text = await this.catalogue(true);
    if (!text) return;
    handOver('catalogue.json', 'application/json', `${text}\n`);
    this.work.saved();
  }

  async saveTable(sheet: SheetKind) {
    const text = await this.work.fetch({ call: 'csv', sheet });
    if (text !== undefined) handOverTable(sheet, text);
  }

  saveLines(text: string) {
    handOver('acre-to-axle.html', 'text/html', text);
    if (this.inside !== undefined) this.work.saved();
  }

  async saveScript({ file }: Script) {
    const answer = await fetch(new URL(file, this.list!.address));
    if (answer.ok) handOver(file, 'text/javascript', await answer.text());
    else this.work.fail(`${file}: ${answer.status}`);
  }

  /** @param lines  where they stand on the page, to be marked where a page may not copy */
  async copy(text: string, lines: Node) {
    try {
      await navigator.clipboard.writeText(text);
      this.show({ copied: 'copied' });
    } catch {
      // Without a secure address there is no clipboard, and a policy may forbid it.
      getSelection()?.selectAllChildren(lines);
      this.show({ copied: 'marked' });
    }
  }
}
