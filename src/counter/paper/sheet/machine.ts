import { html, nothing } from 'lit';
import { additionTexts } from '../../../handoff/letter/machine.ts';
import { capital } from '../../../reasons/capital.ts';
import { sayTradeOff } from '../../../reasons/say-contrast.ts';
import { sayPackagePrice } from '../../../reasons/say-package-price.ts';
import { sayFrame } from '../../../reasons/say.ts';
import type { Part } from '../paper.ts';
import type { Extent } from './extent.ts';
import type { MachinePlan, Point } from './plan.ts';
import type { SheetView } from './view.ts';

const pointsTemplate = (heading: string, points: readonly Point[]) => (points.length === 0 ? nothing : html`
  <div>
    <h4>${heading}</h4>
    <ul class="points">${points.map(({ mark, text }) => html`<li><span class="mark">${mark}</span><span>${text}</span></li>`)}</ul>
  </div>`);

/** Make, frame, trim and years of a machine. */
function factsOf(id: string, { catalogue, voice }: SheetView): string {
  const { make, frame, tier, years } = catalogue.machines.find((each) => each.id === id)!;
  const made = years.to === years.from ? `${years.from}` : `${years.from}–${years.to ?? ''}`;
  return [make, sayFrame(frame, voice), voice.words.tiers[tier], made].join(' · ');
}

function sumsTemplate({ sums }: MachinePlan, { own, voice: { words: { joins, language } } }: SheetView) {
  if (sums.length === 0) return nothing;
  return html`
    <h4>${own.deciding}</h4>
    <ul class="sums">${sums.map(({ of, statement, terms, result, source }) => html`
      <li>${capital(of, language)}${joins.colon}${statement}${joins.colon}${terms.map(({ name, value }) => `${name} ${value}`).join(', ')}${joins.semicolon}<strong>${own.gives(result)}</strong>. <span class="lesser">${own.source(source)}</span></li>`)}
    </ul>
`;
}

function unitsTemplate({ entry, units }: MachinePlan, { voice: { words: { result } } }: SheetView) {
  if (entry.units.length === 0) return html`<p>${result.noUnits}</p>`;
  return html`
    <h4>${result.unitsHeading(entry.units.length)}</h4>
    <ul class="units">${units.map((unit) => html`<li>${unit}</li>`)}</ul>
`;
}

/** How much more there is of what is told only in part. */
function moreTemplate({ more }: MachinePlan, { own: { onlyNamed } }: SheetView) {
  const kinds = ['reasons', 'drawbacks', 'units', 'sums'] as const;
  const left = kinds.filter((kind) => more[kind] > 0).map((kind) => onlyNamed[kind](more[kind]));
  return left.length > 0 ? html`<p class="lesser more">${left.join(' · ')}</p>` : nothing;
}

/** One machine with its price, what speaks for and against it, its units and the sums that decide. */
export function machinePart(plan: MachinePlan, { asides }: Extent, view: SheetView): Part {
  const { entry, asks, reasons, drawbacks } = plan;
  const { shortlist, voice: { words, nameOf }, voice } = view;
  const { result, joins } = words;
  const told = { ...voice, machine: entry.machine };
  const additions = additionTexts(entry.package, { ...view, own: view.handoff, voice: told });
  return {
    id: `machine-${entry.machine}`,
    body: html`
      <div class="machine">
        <header>
          <span class="rank">${asks ? '?' : entry.rank}</span>
          <div><h3><bdi>${nameOf(entry.machine)}</bdi></h3><p class="lesser"><bdi>${factsOf(entry.machine, view)}</bdi></p></div>
          <p class="price"><span class="lesser">${result.package}</span><br /><strong>${sayPackagePrice(entry.package, voice)}</strong></p>
        </header>
        ${asides ? shortlist.tradeOffs.filter(({ machines }) => machines.includes(entry.machine)).map((each) => html`<p>${sayTradeOff(each, voice)}</p>`) : nothing}
        <div class="two">
          ${pointsTemplate(result.why, reasons)}
          ${pointsTemplate(result.drawbacks, drawbacks)}
        </div>
        ${additions.length > 0 ? html`<p><strong>${result.additionsHeading}</strong>${joins.colon}${additions.join(joins.semicolon)}</p>` : nothing}
        ${unitsTemplate(plan, view)}
        ${sumsTemplate(plan, view)}
        ${moreTemplate(plan, view)}
      </div>`,
  };
}
