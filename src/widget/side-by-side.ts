import { html, nothing } from 'lit';
import type { Criterion } from '../answers/names.ts';
import { capital } from '../reasons/capital.ts';
import type { Voice } from '../reasons/say.ts';
import type { Cell, ComparedFact, ComparedRow } from '../reasons/side-by-side.ts';
import { showAmount } from '../units/show.ts';
import { sayPoints } from './say-points.ts';

export interface SideBySideView {
  /** Machines that may be compared, in the order of the shortlist, and those that are. */
  machines: readonly string[];
  compared: readonly string[];
  rows: readonly ComparedRow[];
  voice: Voice;
  /** Whether there is room for a table; on less each row is a list. */
  wide: boolean;
  compare(machines: readonly string[]): void;
}

/** As many as can be read side by side. */
const most = 3;

function rowName({ kind, id }: ComparedRow, { words }: Voice): string {
  const { compare } = words.result;
  if (kind === 'fact') return compare.facts[id as ComparedFact];
  return kind === 'points' ? compare.points(words.criteria[id as Criterion]) : capital(words.needs[id] ?? id, words.language);
}

function cellText({ outcome, figure, to }: Cell, kind: ComparedRow['kind'], { words: { result: { compare } }, reader }: Voice): string {
  const show = ({ value, unit }: { value: number; unit: string }) => (kind === 'points' ? sayPoints(value, reader) : showAmount(value, unit, reader));
  const figures = figure && `${show(figure)}${to === undefined ? '' : ` – ${show({ ...figure, value: to })}`}`;
  return [outcome && compare.outcomes[outcome], figures].filter((part) => part !== undefined).join(', ') || compare.notKnown;
}

/** A row as it is read. Machines differ in it where that reads differently: half an inch is no difference to a buyer. */
interface SaidRow {
  name: string;
  cells: string[];
  differs: boolean;
}

function saidRow(row: ComparedRow, voice: Voice): SaidRow {
  const cells = row.cells.map((cell) => cellText(cell, row.kind, voice));
  return { name: rowName(row, voice), cells, differs: new Set(cells).size > 1 };
}

const mark = (differs: boolean, { words }: Voice) => (differs
  ? html` <span class="differs"><span aria-hidden="true">≠</span><span class="unseen">(${words.result.compare.differs})</span></span>` : nothing);

const tableTemplate = (rows: readonly SaidRow[], { compared, voice }: SideBySideView) => html`
  <table class="compared">
    <thead><tr><td></td>${compared.map((machine) => html`<th scope="col">${voice.nameOf(machine)}</th>`)}</tr></thead>
    <tbody>${rows.map(({ name, cells, differs }) => html`
      <tr><th scope="row">${name}${mark(differs, voice)}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
  </table>
`;

const listTemplate = (rows: readonly SaidRow[], { compared, voice }: SideBySideView) => html`
  <dl class="compared">${rows.map(({ name, cells, differs }) => html`
    <div>
      <dt>${name}${mark(differs, voice)}</dt>
      ${cells.map((cell, index) => html`<dd><span class="lesser">${voice.nameOf(compared[index]!)}</span> ${cell}</dd>`)}
    </div>`)}</dl>
`;

/** Two or three machines side by side: where they differ first, and what is the same in all folded away. */
export function sideBySideTemplate(view: SideBySideView) {
  const { machines, compared, voice, wide } = view;
  const { compare } = voice.words.result;
  if (machines.length < 2) return nothing;
  const toggled = (machine: string) => () =>
    view.compare(machines.filter((each) => (each === machine ? !compared.includes(each) : compared.includes(each))));
  const template = wide ? tableTemplate : listTemplate;
  const rows = view.rows.map((row) => saidRow(row, voice));
  const [apart, same] = [rows.filter(({ differs }) => differs), rows.filter(({ differs }) => !differs)];
  return html`
    <details part="comparison">
      <summary>${compare.heading}</summary>
      <div class="stack">
        <fieldset>
          <legend>${compare.explained}</legend>
          <div class="picks">${machines.map((machine) => html`
            <label><input type="checkbox" .checked=${compared.includes(machine)} ?disabled=${!compared.includes(machine) && compared.length >= most}
              @change=${toggled(machine)} />${voice.nameOf(machine)}</label>`)}</div>
        </fieldset>
        ${compared.length < 2 ? nothing : html`
          ${template(apart, view)}
          ${same.length > 0 ? html`<details><summary>${compare.same(same.length)}</summary>${template(same, view)}</details>` : nothing}`}
      </div>
    </details>
  `;
}
