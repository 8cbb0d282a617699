import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { sayRule, saySource } from '../reasons/say.ts';
import type { PrintedWords } from '../reasons/words/words.ts';
import type { Base } from '../sheets/sheets.ts';
import { figureIds, figureRules, refusalOf, type FigureId, type Override } from '../trade/book.ts';
import type { FigureRule } from '../trade/record.ts';
import { formatNumber } from '../units/formats.ts';
import { unitWord } from '../units/show.ts';
import type { Spoken } from './languages.ts';

type Own = NonNullable<Base['rules']>;

export interface FiguresView {
  spoken: Spoken;
  /** What the rule book says in the language; undefined until it has come. */
  words: PrintedWords | undefined;
  rules: Own;
  searched: string;
  /** Figures whose last value isn't taken. */
  refused: ReadonlySet<string>;
  /** How many are shown of those found. */
  most: number;
  search(text: string): void;
  more(): void;
  set(id: FigureId, text: string): void;
}

/** So many more at a time. */
export const figuresAtATime = 12;

/** A definition and a published figure are nobody's to change. */
const open = figureIds.filter((id) => !['definition', 'published-figure'].includes((figureRules[id] as FigureRule).kind));

/** What a dealer typed for a figure: a number in the book's unit, or one with a unit of its own; undefined where it is neither. */
export function typedFigure(text: string): Override | undefined {
  const [, number, unit] = /^(-?\d+(?:[.,]\d+)?)(?:\s*([^\s\d]\S*))?$/.exec(text.trim()) ?? [];
  if (number === undefined) return undefined;
  const value = Number(number.replace(',', '.'));
  return unit === undefined ? value : { value, unit };
}

const asTyped = (written: Override | undefined) => (written === undefined ? '' : typeof written === 'number' ? String(written) : `${written.value} ${written.unit}`);

/** The dealer's figures with one of them set, or taken away (empty); undefined where it isn't taken. */
export function withFigure(rules: Own, id: FigureId, text: string): Own | undefined {
  const { [id]: _, ...others } = rules;
  if (text.trim() === '') return others;
  const written = typedFigure(text) ?? Number.NaN;
  return refusalOf(id, written) === undefined ? { ...others, [id]: written } : undefined;
}

/** What a figure may be: within what makes sense, and one of safety on the safe side of the book's. */
const boundsOf = ({ value, valid: [least, most], safer }: FigureRule) => [safer === 'more' ? value : least, safer === 'less' ? value : most] as const;

function figureTemplate(id: FigureId, words: PrintedWords, { spoken: { own }, rules, refused, set }: FiguresView) {
  const rule: FigureRule = figureRules[id];
  const inUnit = (...values: readonly number[]) =>
    [...values.map((value) => formatNumber(value, own.language, { maximumSignificantDigits: 12 })), unitWord(rule.unit, { unitWords: words.units, locale: own.language })];
  const [least = '', most = '', word = ''] = inUnit(...boundsOf(rule));
  return html`
    <li>
      <label><span>${sayRule(id, words)}</span>
        <span class="lesser">${own.figures.book(inUnit(rule.value).join(' '))} · ${saySource(rule.source, words)}</span>
        <span>${own.figures.own} <input type="text" inputmode="decimal" class="short" data-figure=${id} .value=${asTyped(rules[id])}
          aria-invalid=${refused.has(id) ? 'true' : nothing} @change=${({ target }: Event) => set(id, (target as HTMLInputElement).value)} /></span>
        ${refused.has(id) ? html`<span class="fault" role="alert">${own.figures.refused(least, most, word)}</span>` : nothing}
      </label>
    </li>`;
}

/** The figures a dealer may set: those he has set, and those he looks for. */
export function figuresTemplate(shown: FiguresView) {
  const { spoken: { own }, words, rules, searched, most, search } = shown;
  if (!words) return nothing;
  const wanted = searched.toLowerCase().split(/\s+/).filter((word) => word !== '');
  const isFound = (id: FigureId) => wanted.every((word) => `${id} ${sayRule(id, words)}`.toLowerCase().includes(word));
  // His own come first, to be seen without a search.
  const found = open.filter(isFound).sort((a, b) => Number(rules[b] !== undefined) - Number(rules[a] !== undefined));
  return html`
    <p>${own.figures.explained}</p>
    <label class="wide"><span>${own.figures.search}</span><input type="search" data-search .value=${searched} @input=${({ target }: Event) => search((target as HTMLInputElement).value)} /></label>
    <p role="status" class="lesser">${own.figures.found(Math.min(most, found.length), open.length)}</p>
    <ul class="figures" role="list">${repeat(found.slice(0, most), (id) => id, (id) => figureTemplate(id, words, shown))}</ul>
    ${found.length > most ? html`<div class="actions"><button type="button" data-more @click=${shown.more}>${own.figures.more}</button></div>` : nothing}
  `;
}
