import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { criteria, type AnswersDocument } from '../answers/schema.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import { reasonMarks } from '../reasons/reason-marks.ts';
import { sayTradeOff, sayWhyBelow } from '../reasons/say-contrast.ts';
import { sayPackagePrice } from '../reasons/say-package-price.ts';
import { sayRobustness, sayWeights } from '../reasons/say-robustness.ts';
import { sayTerms } from '../reasons/say-terms.ts';
import { sayAddition, sayBecause, sayCaution, sayFrame, sayOwning, sayReason, sayWorking, type Voice } from '../reasons/say.ts';
import { owningParts } from '../ranking/owning.ts';
import type { Ranking } from '../ranking/rank.ts';
import { changesTold, sayChange, sayConflict, sayWay } from '../reasons/say-ways-out.ts';
import type { Because, Entry, PackageEntry, Reason, Shortlist, UnitEntry, WayOutEntry, WorkingEntry } from '../reasons/schema.ts';
import { sideBySide } from '../reasons/side-by-side.ts';
import type { SteerId } from '../reasons/steers.ts';
import { formatNumber } from '../units/formats.ts';
import { showAmount } from '../units/show.ts';
import { contactTemplate, dayOf, photoTemplate, stockTemplate } from './dealer.ts';
import { readBackTemplate, type ReadBackView } from './read-back.ts';
import { sayPoints } from './say-points.ts';
import { scoreChartTemplate } from './score-chart.ts';
import { sideBySideTemplate } from './side-by-side.ts';
import { steersTemplate, type Steered } from './steers.ts';
import type { CatalogueTrouble } from './trouble.ts';

export interface ResultView extends ReadBackView {
  shortlist: Shortlist;
  catalogue: CatalogueDocument;
  /** What is the matter with it. */
  flaws: readonly CatalogueTrouble['code'][];
  /** Whether all that stand are shown, or the first three. */
  all: boolean;
  ranking: Ranking;
  /** What has the shortlist mailed. */
  byMail: unknown;
  /** What folds away one unit, closer; or, without one, a machine of which none is on the lot. */
  closer(named: { machine: string; unit?: string }, facts: string, stands: boolean): unknown;
  /** The section by which answers and shortlist are taken along. */
  takeAlong: unknown;
  /** Machines put side by side; undefined until the buyer chose some. */
  compared: readonly string[] | undefined;
  /** Whether there is room for a table of them. */
  wide: boolean;
  steered: Steered | undefined;
  /** What was said before the steer. */
  unsteered: AnswersDocument | undefined;
  questionsLeft: boolean;
  canUndo: boolean;
  showAll(): void;
  compare(machines: readonly string[]): void;
  steer(to: SteerId): void;
  undoSteer(): void;
  resume(): void;
  clear(): void;
  restore(): void;
}

const firstShown = 3;
/** Characters of a catalogue's version, a long number, that tell one from the next. */
const shownOfVersion = 12;

const money = (value: number, { reader }: Voice) => showAmount(value, 'money', reader);

const pointsTemplate = (reasons: readonly Reason[], voice: Voice) => html`
  <ul class="points">${reasons.map((reason) => html`<li class=${reason.kind} data-mark=${reasonMarks[reason.kind]}><span>${sayReason(reason, voice)}</span></li>`)}</ul>
`;

function reasonsTemplate(heading: string, reasons: readonly Reason[], shown: number, voice: Voice) {
  if (reasons.length === 0) return nothing;
  const rest = reasons.slice(shown);
  return html`
    <div class="close">
      <h4>${heading}</h4>
      ${pointsTemplate(reasons.slice(0, shown), voice)}
      ${rest.length > 0 ? html`<details><summary>${voice.words.result.moreReasons(rest.length)}</summary>${pointsTemplate(rest, voice)}</details>` : nothing}
    </div>
  `;
}

/** The comparison on a slope stays a comparison: its angle is never shown, lest it be read as a limit. */
const isShownAsSum = ({ id }: Reason) => !id.startsWith('slope.');

const sumTemplate = (working: WorkingEntry, voice: Voice) => {
  const said = sayWorking(working, voice);
  return html`<div class="working">
    <p>${said.statement}: <strong>${said.result}</strong></p>
    <code>${said.formula}</code>
    <dl>${said.terms.map(({ name, value, source }) => html`<dt class="lesser">${name}</dt><dd>${value}${source ? html` <span class="lesser">(${source})</span>` : nothing}</dd>`)}</dl>
    <p class="lesser">${voice.words.result.workingSource}: ${said.source}</p>
  </div>`;
};

function workingTemplate({ reasons }: Entry, voice: Voice) {
  const { result } = voice.words;
  const sums = reasons.filter((reason) => reason.working && isShownAsSum(reason));
  if (sums.length === 0) return nothing;
  return html`
    <details>
      <summary>${result.working}</summary>
      <div class="stack">${sums.map((reason) => html`
        <div class="close">
          <p><strong>${sayReason(reason, voice)}</strong></p>
          ${reason.working!.map((working) => sumTemplate(working, voice))}
        </div>`)}
      </div>
    </details>
  `;
}

/** What it costs to own, by parts, with the sums: a comparison under the buyer's own years and hours. */
function owningTemplate({ owning }: Entry, voice: Voice) {
  const { result } = voice.words;
  return html`
    <details>
      <summary>${result.owningHeading}</summary>
      <div class="close">
        <p>${sayOwning(owning, voice)}</p>
        ${'missing' in owning ? nothing : html`
          <dl class="facts">${owningParts.map((part) => html`<dt>${result.owningParts[part]}</dt><dd>${money(owning.parts[part]!, voice)}</dd>`)}</dl>
          ${owning.working.map((working) => sumTemplate(working, voice))}`}
      </div>
    </details>
  `;
}

function additionsTemplate({ price, additions, unpriced }: PackageEntry, { voice, catalogue, answers }: ResultView) {
  const { result } = voice.words;
  const { includes } = answers.budget ?? {};
  // What the buyer's limit isn't to include isn't in the price either.
  const counted = additions.filter(({ what }) => what !== 'implement' || !includes || includes.includes('implements'));
  const hours = counted.reduce((sum, { labourHours = 0 }) => sum + labourHours, 0);
  const rate = catalogue.dealer.labourRate;
  if (additions.length === 0) return nothing;
  const asked = (what: string, id: string | undefined) => unpriced.some((each) => each.what === what && each.id === id);
  return html`
    <div class="close">
      <h4>${result.additionsHeading}</h4>
      <ul class="plain">${additions.map((addition) => html`
        <li>${sayAddition(addition, voice)}${addition.price !== undefined ? html` · ${money(addition.price, voice)}` : asked(addition.what, addition.id) ? html` · ${result.priceUnknown}` : nothing}</li>`)}
      </ul>
      ${price ? html`<p class="lesser">${result.machineAlone(price.machineLow === price.machineHigh ? money(price.machineLow, voice) : `${money(price.machineLow, voice)} – ${money(price.machineHigh, voice)}`)}</p>` : nothing}
      ${hours > 0 && rate ? html`<p class="lesser">${result.fitting(formatNumber(hours, voice.reader.locale), money(hours * rate.value, voice))}</p>` : nothing}
    </div>
  `;
}

function becauseTexts(because: readonly Because[], outcome: 'failed' | 'unknown', { shortlist, voice }: ResultView) {
  return because.map((each) => sayBecause(each, outcome, shortlist.needs.find(({ id }) => id === each.need)?.task, voice));
}

function unitTemplate(entry: UnitEntry, view: ResultView) {
  const { voice, catalogue } = view;
  const { result } = voice.words;
  const unit = catalogue.units?.find(({ id }) => id === entry.unit);
  if (!unit) return nothing;
  const facts = [
    unit.year === undefined ? undefined : String(unit.year),
    unit.hours === undefined ? undefined : result.hours(formatNumber(unit.hours, voice.reader.locale)),
    unit.price ? money(unit.price.value, voice) : result.priceUnknown,
    unit.location,
  ].filter((fact) => fact !== undefined);
  const notes = entry.verdict === 'stands'
    ? entry.reasons.filter(({ id }) => id.startsWith('unit.')).map((reason) => sayReason(reason, voice))
    : becauseTexts(entry.because, entry.verdict === 'ask' ? 'unknown' : 'failed', view);
  return html`
    <li class="unit">
      ${photoTemplate(unit.photo, `${voice.nameOf(unit.machine)} ${unit.year ?? ''}`.trim(), voice)}
      <p><span class="tag ${entry.verdict}">${result.unitVerdict[entry.verdict]}</span> ${facts.join(' · ')}</p>
      ${entry.package.additions.length > 0 && entry.verdict !== 'ruled-out' ? html`<p class="lesser">${result.package}: ${sayPackagePrice(entry.package, voice)}</p>` : nothing}
      ${notes.map((note) => html`<p class="lesser">${note}</p>`)}
      ${view.closer({ machine: unit.machine, unit: unit.id }, facts.join(' · '), entry.verdict === 'stands')}
    </li>
  `;
}

function unitsTemplate({ units, machine }: Entry, stands: boolean, view: ResultView) {
  const { result } = view.voice.words;
  if (units.length === 0) return html`<p class="lesser">${result.noUnits}</p>${view.closer({ machine }, '', stands)}`;
  return html`<details class="printed"><summary>${result.unitsHeading(units.length)}</summary><ul class="lot" role="list">${units.map((unit) => unitTemplate(unit, view))}</ul></details>`;
}

/** What it earns of each weight, how firm its place is, and the way to other weights. */
function scoresTemplate(entry: Entry, { shortlist, answers, voice, change }: ResultView) {
  const { contributions } = entry;
  const { words, reader } = voice;
  const rows = criteria.flatMap((criterion) => {
    const contribution = contributions[criterion];
    return contribution ? [{ criterion, ...contribution }] : [];
  });
  return html`
    <details>
      <summary>${words.result.scoreHeading}</summary>
      ${sayRobustness(entry, shortlist.shortlist.length, voice).map((each) => html`<p>${each}</p>`)}
      <p class="lesser">${sayWeights(entry, answers, voice)}</p>
      <table class="scores"><tbody>${rows.map(({ criterion, weight, points }) => html`
        <tr>
          <th scope="row">${words.criteria[criterion]}</th>
          <td>${words.result.points(sayPoints(points, reader), sayPoints(weight, reader))}</td>
          <td><span class="bar" aria-hidden="true"><span .style=${`inline-size:${weight > 0 ? (100 * points) / weight : 0}%`}></span></span></td>
        </tr>`)}</tbody></table>
      <p><button class="text" type="button" @click=${() => change('priorities')}>${words.result.changeOrder}</button></p>
    </details>
  `;
}

/** What the machine gives up for what, in a line. */
const tradeOffTemplate = ({ machine }: Entry, { shortlist: { tradeOffs }, voice }: ResultView) =>
  tradeOffs.filter(({ machines }) => machines.includes(machine)).map((each) => html`<p>${sayTradeOff(each, voice)}</p>`);

/** Why it stands below the first: what costs it its place, what it has ahead all the same, what would bring it level. */
function whyBelowTemplate({ behind }: Entry, voice: Voice) {
  if (!behind) return nothing;
  const { words: { contrast }, nameOf } = voice;
  const { costs, despite, lift } = sayWhyBelow(behind, voice);
  const lines = (texts: readonly string[], kind: 'for' | 'against') => texts.map((text) => html`<li class=${kind} data-mark=${reasonMarks[kind]}><span>${text}</span></li>`);
  return html`
    <details>
      <summary>${contrast.whyBelow(nameOf(behind.above))}</summary>
      <div class="close">
        ${behind.by === 'score' ? nothing : html`<p>${contrast.by[behind.by]}</p>`}
        <ul class="points">${lines(costs, 'against')}${lines(despite, 'for')}</ul>
        ${lift.map((text) => html`<p>${text}</p>`)}
      </div>
    </details>
  `;
}

function machineTemplate(entry: Entry, numbered: boolean, whole: ResultView) {
  const view = { ...whole, voice: { ...whole.voice, machine: entry.machine } };
  const { voice, catalogue } = view;
  const { words } = voice;
  const machine = catalogue.machines.find(({ id }) => id === entry.machine)!;
  const frame = sayFrame(machine.frame, voice);
  const of = (...kinds: Reason['kind'][]) => entry.reasons.filter(({ kind }) => kinds.includes(kind));
  return html`
    <article class="machine ${numbered && entry.rank === 1 ? 'first' : ''}" part="machine" aria-labelledby="machine-${entry.machine}">
      <header>
        <span class="balloon" aria-hidden="true">${numbered ? entry.rank : '?'}</span>
        <div>
          <h3 id="machine-${entry.machine}"><bdi>${machine.name}</bdi></h3>
          <p class="lesser"><bdi>${machine.make}</bdi> · ${frame} · ${words.tiers[machine.tier]}</p>
        </div>
        <p class="price"><span class="lesser">${words.result.package}</span><br /><strong>${sayPackagePrice(entry.package, voice)}</strong></p>
      </header>
      <div class="body">
        ${tradeOffTemplate(entry, view)}
        <div class="columns">
          ${reasonsTemplate(words.result.why, of('for'), firstShown, voice)}
          <div class="stack">
            ${reasonsTemplate(words.result.drawbacks, of('against', 'caution'), firstShown, voice)}
            ${reasonsTemplate(words.result.unknowns, of('unknown'), firstShown, voice)}
          </div>
        </div>
        ${additionsTemplate(entry.package, view)}
        <div class="close">
          ${unitsTemplate(entry, numbered, view)}
          ${whyBelowTemplate(entry, voice)}
          ${workingTemplate(entry, voice)}
          ${owningTemplate(entry, voice)}
          ${scoresTemplate(entry, view)}
        </div>
      </div>
    </article>
  `;
}

function notClearedTemplate({ shortlist, voice }: ResultView) {
  if (shortlist.notCleared.length === 0) return nothing;
  const { words } = voice;
  return html`
    <section class="notice" part="not-cleared" aria-labelledby="not-cleared">
      <h3 id="not-cleared">${words.result.notClearedHeading}</h3>
      <ul>${shortlist.notCleared.map(({ id, tasks }) =>
        html`<li>${words.notCleared[id as keyof typeof words.notCleared](words.list(tasks.map((task) => words.tasks[task])))}</li>`)}</ul>
    </section>
  `;
}

function changesTemplate({ shortlist, voice }: ResultView) {
  // Where nothing fits the ways out say it all.
  if (shortlist.waysOut.length > 0 || shortlist.changes.length === 0) return nothing;
  return html`
    <section class="close">
      <h3>${voice.words.result.changesHeading}</h3>
      <ul class="plain">${changesTold(shortlist).map((change) => html`<li>${sayChange(change, voice)}</li>`)}</ul>
    </section>
  `;
}

const wayTemplate = (entry: WayOutEntry, { shortlist, voice }: ResultView) => {
  const { way, hire } = sayWay(entry, shortlist, voice);
  return html`<li><span>${way}</span>${hire.map((each) => html`<br /><span class="lesser">${each}</span>`)}</li>`;
};

/** Where nothing fits: what stands in the way, and every way out of it, the least first. */
function waysOutTemplate(view: ResultView) {
  const { shortlist: { conflicts: { sets, complete }, waysOut }, voice } = view;
  const { waysOut: words } = voice.words;
  const rest = waysOut.slice(firstShown);
  return html`
    ${sets.length > 0 ? html`
      <section class="close" part="conflicts">
        <h3>${words.conflictsHeading}</h3>
        <ul class="plain">${sets.map((set) => html`<li>${sayConflict(set, voice)}</li>`)}</ul>
        ${complete ? nothing : html`<p class="lesser">${words.moreConflicts}</p>`}
      </section>` : nothing}
    ${waysOut.length > 0 ? html`
      <section class="close" part="ways-out">
        <h3>${words.heading}</h3>
        <p>${words.explained}</p>
        <ol class="plain">${waysOut.slice(0, firstShown).map((entry) => wayTemplate(entry, view))}</ol>
        ${rest.length > 0 ? html`<details><summary>${words.more(rest.length)}</summary><ol class="plain" start=${firstShown + 1}>${rest.map((entry) => wayTemplate(entry, view))}</ol></details>` : nothing}
      </section>` : nothing}
  `;
}

function ruledOutTemplate(view: ResultView) {
  const { shortlist: { ruledOut }, voice } = view;
  if (ruledOut.length === 0) return nothing;
  return html`
    <section class="close" part="ruled-out">
      <h3>${voice.words.result.ruledOutHeading(ruledOut.length)}</h3>
      ${ruledOut.map(({ machine, because }) => html`
        <details class="printed">
          <summary>${voice.nameOf(machine)}</summary>
          <ul class="plain">${becauseTexts(because, 'failed', view).map((text) => html`<li>${text}</li>`)}</ul>
        </details>`)}
    </section>
  `;
}

const answersTemplate = (view: ResultView) => html`
  <section class="close" part="answers">
    <h3>${view.voice.words.result.answersHeading}</h3>
    ${readBackTemplate(view)}
  </section>
`;

function cautionsTemplate({ shortlist, catalogue, voice }: ResultView) {
  const { words } = voice;
  const terms = sayTerms(catalogue.dealer, words);
  return html`
    <section class="close" part="cautions">
      <h3>${words.result.cautionsHeading}</h3>
      <ul class="plain">${shortlist.cautions.map((caution) => html`<li>${sayCaution(caution, voice)}</li>`)}</ul>
    </section>
    <section class="terms" part="terms">
      <h4>${words.result.termsHeading}</h4>
      <p dir="auto">${terms}</p>
      <p class="lesser">${words.result.asOf(dayOf(catalogue, voice))}${catalogue.version ? ` · ${catalogue.version.slice(0, shownOfVersion)}` : nothing}</p>
    </section>
  `;
}

/** The answer in a line: which frame size, and which trim. */
function leadTemplate({ shortlist: { shortlist: [first] }, catalogue, voice }: ResultView) {
  const machine = catalogue.machines.find(({ id }) => id === first?.machine);
  return machine ? html`<p class="lead"><strong>${voice.words.result.lead(sayFrame(machine.frame, voice), voice.words.tiers[machine.tier])}</strong></p>` : nothing;
}

/** The machines told of beside each other: in all that they have, and in what they earn. */
function comparisonTemplate(told: readonly Entry[], { shortlist: { askDealer }, ranking, voice, wide, compared, compare }: ResultView) {
  const machines = [...told, ...askDealer].map(({ machine }) => machine);
  const chosen = compared ?? machines.slice(0, 2);
  return html`
    <div class="close">
      ${sideBySideTemplate({ machines, compared: chosen, rows: sideBySide(ranking, chosen), voice, wide, compare })}
      ${scoreChartTemplate(told, voice)}
    </div>
  `;
}

/** The result: what is not cleared first, then the machines with reasons, and why not the others. */
export function resultTemplate(view: ResultView) {
  const { shortlist, voice, all } = view;
  const { result, wizard } = voice.words;
  const { shortlist: standing, askDealer } = shortlist;
  const shown = all ? standing : standing.slice(0, firstShown);
  const more = standing.length - shown.length;
  return html`
    <div class="stack" part="result">
      <div class="close">
        <h2 id="heading" tabindex="-1">${result.title}</h2>
        ${stockTemplate(view)}
        ${leadTemplate(view)}
        <p>${standing.length > 0 ? result.standing(standing.length) : result.none}</p>
      </div>
      ${view.questionsLeft ? html`<div class="actions"><button class="main" type="button" part="resume" @click=${view.resume}>${wizard.backToQuestions}</button></div>` : nothing}
      ${notClearedTemplate(view)}
      ${repeat(shown, ({ machine }) => machine, (entry) => machineTemplate(entry, true, view))}
      ${more > 0 ? html`<div class="actions"><button type="button" @click=${view.showAll}>${result.moreMachines(more)}</button></div>` : nothing}
      ${view.byMail}
      ${standing.length > 0 ? steersTemplate(view) : nothing}
      ${comparisonTemplate(shown, view)}
      ${askDealer.length > 0 ? html`
        <section class="stack" part="ask-dealer">
          <div class="close"><h3>${result.askHeading}</h3><p>${result.askExplained}</p></div>
          ${repeat(askDealer, ({ machine }) => machine, (entry) => machineTemplate(entry, false, view))}
        </section>` : nothing}
      ${waysOutTemplate(view)}
      ${changesTemplate(view)}
      ${ruledOutTemplate(view)}
      ${contactTemplate(view.catalogue, voice)}
      ${view.takeAlong}
      ${cautionsTemplate(view)}
      ${answersTemplate(view)}
      <slot name="result"></slot>
      <div class="actions apart">
        <button class="text" type="button" part="start-again" @click=${view.clear}>${wizard.startAgain}</button>
        ${view.canUndo ? html`<button class="text" type="button" part="bring-back" @click=${view.restore}>${wizard.undoStartAgain}</button>` : nothing}
      </div>
    </div>
  `;
}
