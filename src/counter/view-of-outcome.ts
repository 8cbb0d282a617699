import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import { reasonMarks } from '../reasons/reason-marks.ts';
import { sayPackagePrice } from '../reasons/say-package-price.ts';
import { sayTerms } from '../reasons/say-terms.ts';
import { sayBecause, sayCaution, sayFrame, sayReason, type Voice } from '../reasons/say.ts';
import type { Entry, Shortlist, UnitEntry } from '../reasons/schema.ts';
import { formatNumber } from '../units/formats.ts';
import { showAmount } from '../units/show.ts';
import type { Named } from '../widget/unit/view.ts';
import type { Outcome } from './reckoning/reckoning.ts';
import type { CounterWords } from './words/words.ts';

export interface OutcomeView {
  outcome: Outcome | undefined;
  catalogue: CatalogueDocument;
  voice: Voice;
  own: CounterWords;
  /** The machines to scale. */
  lineUp: unknown;
  /** What folds away one unit, closer; or, without one, a machine of which none is on the lot. */
  closer(named: Named, facts: string, stands: boolean): unknown;
  /** The wizard's own page of the result. */
  whole(): void;
}

/** Machines, and reasons of one kind, that are seen without unfolding anything. */
const [shownFirst, shownOfEach] = [5, 1];

function unitTemplate(machine: string, { unit: id, verdict }: UnitEntry, { catalogue, voice: { words: { result }, reader }, closer }: OutcomeView) {
  const unit = catalogue.units?.find((each) => each.id === id);
  if (!unit) return nothing;
  const facts = [unit.year, unit.hours === undefined ? undefined : result.hours(formatNumber(unit.hours, reader.locale)), unit.price ? showAmount(unit.price.value, 'money', reader) : result.priceUnknown, unit.location].filter((fact) => fact !== undefined).join(' · ');
  return html`<li><span class="tag ${verdict}">${result.unitVerdict[verdict]}</span> ${facts}${closer({ machine, unit: id }, facts, verdict === 'stands')}</li>`;
}

const pointsTemplate = (reasons: Entry['reasons'], voice: Voice) => html`
  <ul class="points">${reasons.map((reason) => html`<li class=${reason.kind} data-mark=${reasonMarks[reason.kind]}><span>${sayReason(reason, voice)}</span></li>`)}</ul>`;

function machineTemplate(entry: Entry, isRanked: boolean, view: OutcomeView) {
  const { catalogue, own } = view;
  const voice = { ...view.voice, machine: entry.machine };
  const machine = catalogue.machines.find(({ id }) => id === entry.machine);
  if (!machine) return nothing;
  const of = (...kinds: Entry['reasons'][number]['kind'][]) => entry.reasons.filter(({ kind }) => kinds.includes(kind));
  const first = [...of('for').slice(0, shownOfEach), ...of('against', 'caution', 'unknown').slice(0, shownOfEach)];
  const rest = entry.reasons.filter((each) => !first.includes(each));
  return html`
    <li class="fits" data-machine=${entry.machine}>
      <p class="fits-head"><span class="rank" aria-hidden="true">${isRanked ? entry.rank : '?'}</span> <strong><bdi>${machine.name}</bdi></strong> <strong class="fits-price">${sayPackagePrice(entry.package, voice)}</strong></p>
      <p class="lesser">${sayFrame(machine.frame, voice)} · ${voice.words.tiers[machine.tier]}</p>
      ${pointsTemplate(first, voice)}
      <details><summary>${own.outcome.reasons}</summary>${pointsTemplate(rest, voice)}</details>
      ${entry.units.length > 0 ? html`<details><summary>${own.outcome.units(entry.units.length)}</summary><ul class="plain">${entry.units.map((unit) => unitTemplate(entry.machine, unit, view))}</ul></details>`
      : html`<p class="lesser">${voice.words.result.noUnits}</p>${view.closer({ machine: entry.machine }, '', isRanked)}`}
    </li>`;
}

const listTemplate = (entries: readonly Entry[], isRanked: boolean, view: OutcomeView) =>
  html`<ol class="fit" role="list">${repeat(entries, ({ machine }) => machine, (entry) => machineTemplate(entry, isRanked, view))}</ol>`;

/** The first of those that stand, and the others a press away. */
function standingTemplate(standing: readonly Entry[], view: OutcomeView) {
  const more = standing.slice(shownFirst);
  return html`${listTemplate(standing.slice(0, shownFirst), true, view)}
    ${more.length > 0 ? html`<details><summary>${view.voice.words.result.moreMachines(more.length)}</summary>${listTemplate(more, true, view)}</details>` : nothing}`;
}

function notClearedTemplate({ notCleared }: Shortlist, { words }: Voice) {
  if (notCleared.length === 0) return nothing;
  return html`<div class="notice"><strong>${words.result.notClearedHeading}</strong><ul class="plain">${notCleared.map(({ id, tasks }) =>
    html`<li>${words.notCleared[id as keyof typeof words.notCleared](words.list(tasks.map((task) => words.tasks[task])))}</li>`)}</ul></div>`;
}

function ruledOutTemplate({ ruledOut, needs }: Shortlist, { voice, own }: OutcomeView) {
  if (ruledOut.length === 0) return nothing;
  return html`
    <details><summary>${own.outcome.out(ruledOut.length)}</summary>
      <ul class="plain">${ruledOut.map(({ machine, because: [first] }) => html`<li><strong><bdi>${voice.nameOf(machine)}</bdi></strong>: ${first ? sayBecause(first, 'failed', needs.find(({ id }) => id === first.need)?.task, { ...voice, machine }) : ''}</li>`)}</ul>
    </details>`;
}

function shortlistTemplate(shortlist: Shortlist, view: OutcomeView) {
  const { voice, own, catalogue } = view;
  const { result } = voice.words;
  return html`
    ${notClearedTemplate(shortlist, voice)}
    ${shortlist.shortlist.length > 0 ? standingTemplate(shortlist.shortlist, view) : html`<p><strong>${result.none}</strong></p>`}
    ${shortlist.askDealer.length > 0 ? html`<h3>${own.outcome.ask}</h3>${listTemplate(shortlist.askDealer, false, view)}` : nothing}
    ${ruledOutTemplate(shortlist, view)}
    <div class="actions"><button type="button" data-whole @click=${view.whole}>${own.outcome.whole}</button></div>
    <details><summary>${result.cautionsHeading}</summary><ul class="plain">${shortlist.cautions.map((caution) => html`<li>${sayCaution(caution, voice)}</li>`)}</ul></details>
    <p class="terms" dir="auto">${sayTerms(catalogue.dealer, voice.words)}</p>`;
}

/** What the answers come to, beside them: how many stand, which and why, and what is ruled out. */
export function outcomeTemplate(view: OutcomeView) {
  const { outcome, voice, own, catalogue, lineUp } = view;
  const standing = outcome?.standing.shortlist.length ?? 0;
  return html`
    <section class="outcome" aria-labelledby="outcome-heading">
      <h2 id="outcome-heading">${own.outcome.heading}</h2>
      <p role="status">${!outcome ? own.outcome.reckoning : voice.words.wizard.standing(standing, catalogue.machines.length)}</p>
      ${lineUp}
      ${outcome?.shortlist ? html`<div class="stack" aria-busy=${outcome.isWhole ? nothing : 'true'}>${outcome.of.tasks ? nothing : html`<p class="hint">${own.outcome.nothingYet}</p>`}${shortlistTemplate(outcome.shortlist, view)}</div>` : nothing}
    </section>`;
}
