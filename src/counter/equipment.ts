import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Typing } from '../answers/read-typed.ts';
import { readerFor } from '../reasons/asking-voice.ts';
import { namesIn, type Voice } from '../reasons/say.ts';
import { languageFor, speak, type LanguageTag, type Spoken } from './languages.ts';
import { settingsAt, type Settings } from './settings.ts';
import { stockList, type StockList } from './stock-list.ts';

/** What is missing, so that nobody can be served. */
export type Missing = 'settings' | 'stock';

/** What stands on the counter before anybody comes: the dealer's settings, his list, the language. */
export class Equipment implements ReactiveController {
  settings: Settings | undefined;
  stock: StockList | undefined;
  spoken: Spoken | undefined;
  missing: Missing | undefined;
  /** A list that is old may be gone by once somebody has said so. */
  isAccepted = false;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostConnected() {}

  /**
   * @param address  of the settings
   * @param now      milliseconds since 1970
   */
  async load(address: string, now: number) {
    this.missing = undefined;
    const base = new URL(address, document.baseURI).href;
    this.settings ??= await settingsAt(base);
    this.stock = this.settings && await stockList(this.settings.catalogue, now);
    this.missing = this.settings ? (this.stock ? undefined : 'stock') : 'settings';
    this.host.requestUpdate();
  }

  async speak(tag: string) {
    this.spoken = await speak(languageFor(tag));
    this.host.requestUpdate();
  }

  accept() {
    this.isAccepted = true;
    this.host.requestUpdate();
  }

  get language(): LanguageTag {
    return languageFor(this.spoken?.own.language ?? 'en');
  }

  get locale(): string {
    return this.spoken ? this.readerIn('us').locale : 'en';
  }

  typing(units?: 'us' | 'metric'): Typing {
    const { units: own = 'us', currency = 'USD' } = this.stock?.document.dealer ?? {};
    return { units: units ?? own, decimalMark: this.spoken!.words.decimalMark, currency };
  }

  /** What all is told with. There has to be a list. */
  voice(units: 'us' | 'metric'): Voice {
    const reader = this.readerIn(units);
    return { words: this.spoken!.words, reader, nameOf: namesIn(this.stock!.document, reader) };
  }

  private readerIn(units: 'us' | 'metric') {
    const { locale = 'en-US', currency = 'USD' } = this.stock?.document.dealer ?? {};
    return readerFor(this.spoken!.words, units, locale, currency);
  }
}
