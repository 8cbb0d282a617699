import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { TaskId } from '../answers/schema.ts';
import { formulaRules } from '../trade/figures/formulas.ts';
import { figureRules, isFigureId, type FormulaId, type RuleId } from '../trade/book.ts';
import type { Source } from '../trade/record.ts';
import { toSi } from '../units/quantity.ts';
import { showAmount, type Reader } from '../units/show.ts';
import type { AskingVoice } from './asking-voice.ts';
import type { CautionId } from './cautions.ts';
import { sayFormula } from './say-formula.ts';
import { saySpecs } from './say-specs.ts';
import type { AdditionEntry, Because, CautionEntry, Entry, Reason, WorkingEntry } from './schema.ts';
import type { PrintedWords, ReasonId, Said, Words } from './words/words.ts';

/** What the words are made with: a language, the reader's units, and the names in the catalogue. */
export interface Voice extends AskingVoice {
  words: Words;
  /** Name of what has an id; a loader or a deck goes by that of its machine. */
  nameOf: (id: string, machine?: string) => string;
  /** The machine the sentences are about. */
  machine?: string;
}

/** Names of everything a catalogue gives an id, for sentences that speak of it; a deck goes by its width. */
export function namesIn(catalogue: CatalogueDocument, reader: Reader): Voice['nameOf'] {
  const names = new Map([
    ...[...catalogue.machines, ...(catalogue.implements ?? []), ...catalogue.frames].map(({ id, name }) => [id, name] as const),
    ...catalogue.machines.flatMap(({ id: machine, loaders = [], decks = [] }) => [
      ...loaders.map(({ id, name }) => [`${machine}/${id}`, name] as const),
      ...decks.map(({ id, width }) => [`${machine}/${id}`, showAmount(toSi(width), 'm', reader)] as const),
    ]),
  ]);
  return (id, machine) => names.get(`${machine}/${id}`) ?? names.get(id) ?? '';
}

const silent: Said = { has: '', wants: '', apart: '', best: '', worst: '', price: '', mass: '', part: '', task: '', year: '', typical: false, passage: 'gate', missing: '', onHitch: false, noCoupling: false, other: '', deposit: '', months: '', rate: '' };

/** The name of a thing by its id: a word of the language, or what the catalogue calls it. */
function nameIn({ words, nameOf, machine }: Voice, id: string): string {
  const known: Readonly<Record<string, string>> = { ...words.implements, ...words.wishes };
  return (Object.hasOwn(known, id) ? known[id] : undefined) ?? nameOf(id, machine);
}

/** A part of a machine among others it can't carry: one of its decks goes by the word and its width. */
function partIn(voice: Voice, id: string): string {
  const { parts } = voice.words;
  if (Object.hasOwn(parts, id)) return parts[id as keyof typeof parts];
  const name = voice.nameOf(id, voice.machine);
  return /^\d/.test(name) ? `${parts.deck} (${name})` : name || parts.cab;
}

function said(reason: Pick<Reason, 'figures' | 'about' | 'missing' | 'need'>, voice: Voice): Said {
  const { words, reader } = voice;
  const { has, wants } = reason.figures;
  const other = (name: string) => (name === 'has' ? wants : name === 'wants' ? has : undefined);
  const figures = Object.fromEntries(
    Object.entries(reason.figures).map(([name, { value, unit }]) => [name, showAmount(value, unit, reader, other(name)?.value)]),
  );
  const { task, id, other: second, year, typical, passage, by } = reason.about ?? {};
  const wish = reason.need?.startsWith('comfort.') ? reason.need.slice('comfort.'.length) : id;
  return {
    ...silent,
    ...figures,
    ...(has && wants && { apart: showAmount(Math.abs(has.value - wants.value), has.unit, reader) }),
    ...(task && { task: words.tasks[task as TaskId] }),
    ...(wish && { part: second ? partIn(voice, wish) : nameIn(voice, wish) }),
    ...(second && { other: partIn(voice, second) }),

    ...(year && { year }),
    typical: typical !== undefined,
    onHitch: by === 'hitch',
    noCoupling: by === 'coupling',
    ...(passage === 'door' && { passage }),
    missing: saySpecs(reason.missing ?? [], words),
  };
}

/** The name of a frame class: the language's own, else the catalogue's. */
export const sayFrame = (frame: string, { words, nameOf }: Voice) => (Object.hasOwn(words.frames, frame) ? words.frames[frame] : undefined) ?? nameOf(frame);

/** A reason in words. */
export function sayReason(reason: Reason, voice: Voice): string {
  const sentence = voice.words.reasons[reason.id as ReasonId](said(reason, voice));
  return reason.about?.['near'] ? `${sentence} ${voice.words.waysOut.near}` : sentence;
}

/** Why a gate is failed or unknown, in words. */
export function sayBecause(because: Because, outcome: 'failed' | 'unknown', task: TaskId | undefined, voice: Voice): string {
  const { has, wants, unit, need, missing, by } = because;
  const figures = {
    ...(has !== undefined && unit && { has: { value: has, unit } }),
    ...(wants !== undefined && unit && { wants: { value: wants, unit } }),
  };
  const reason = { figures, need, ...(missing && { missing }), ...((task || by) && { about: { ...(task && { task }), ...(by && { by }) } }) };
  return voice.words.reasons[`${because.capability}.${outcome}` as ReasonId](said(reason, voice));
}

/** A caution in words; a task this version doesn't know goes by its own id. */
export function sayCaution({ id, about = '', figures = {} }: CautionEntry, { words, reader }: Voice): string {
  const task = Object.hasOwn(words.tasks, about) ? words.tasks[about as TaskId] : about;
  const shown = Object.entries(figures).map(([name, { value, unit }]) => [name, showAmount(value, unit, reader)]);
  return words.cautions[id as CautionId](task, Object.fromEntries(shown));
}

/** An addition in words, without its price. */
export const sayAddition = (addition: AdditionEntry, voice: Voice) =>
  voice.words.additions[addition.what as keyof Words['additions']](said({
    figures: addition.mass === undefined ? {} : { mass: { value: addition.mass, unit: 'kg' } },
    ...(addition.id && { about: { id: addition.id } }),
  }, voice));

/** What a machine costs to own and run, or what is missing to say so. */
export function sayOwning(owning: Entry['owning'], { words, reader }: Voice): string {
  if ('missing' in owning) return words.result.owningUnknown(saySpecs(owning.missing, words));
  const show = (value: number, unit: string) => showAmount(value, unit, reader);
  return words.result.owning(show(owning.perYear, 'money'), show(owning.perHour, 'dealer-currency'), show(owning.years, 'years'), show(owning.hoursPerYear, 'per-year'));
}

/** Where a figure comes from, in words. */
export function saySource(source: Source, { sources, laws }: Words): string {
  switch (source.basis) {
    case 'published':
      return source.read === 'source' ? sources.published(source.title, source.where ?? '') : sources.secondHand(source.title, source.where ?? '');
    case 'derived':
      return sources.derived(laws[source.from]);
    case 'memory':
      return sources.memory(source.title);
    default:
      return sources.commonPractice;
  }
}

/** A sum as a reader follows it: what is reckoned, how, with which figures, to what result, by which source. */
export interface SaidWorking {
  statement: string;
  formula: string;
  /** `source` where the figure is one of the rule book's. */
  terms: { name: string; value: string; source?: string }[];
  result: string;
  source: string;
}

/** The statement of a rule in the reader's language. */
export const sayRule = (id: RuleId, { figures, formulas }: PrintedWords) => (isFigureId(id) ? figures[id] : formulas[id]);

export function sayWorking({ formula, inputs, result }: WorkingEntry, { words, reader }: Voice): SaidWorking {
  const rule = formulaRules[formula as FormulaId];
  const shownTerm = ({ value, unit }: { value: number; unit: string }) => showAmount(value, unit, reader);
  return {
    statement: words.formulas[formula as FormulaId],
    formula: sayFormula(rule.formula, words),
    terms: Object.entries(inputs).map(([name, term]) => ({
      name: words.terms[name] ?? name, value: shownTerm(term), ...(term.rule && { source: saySourceOfRule(term.rule, words) }),
    })),
    result: shownTerm(result),
    source: saySource(rule.source, words),
  };
}

/** Where the figure of a rule comes from, or that of its formula. */
export const saySourceOfRule = (id: string, words: Words) =>
  isFigureId(id) ? saySource(figureRules[id].source, words) : '';
