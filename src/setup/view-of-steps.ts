import { html } from 'lit';
import { languageTags, type Spoken } from './languages.ts';
import type { Work } from './work.ts';
import { openColumns } from './view-of-columns.ts';
import { countsOf } from './view-of-findings.ts';

export type Step = keyof Spoken['own']['headings'];

/** Whether there is anything to look through. */
export const hasTables = (view: Work['view']): view is NonNullable<Work['view']> => view !== undefined && Object.keys(view.sheets).length > 0;

/** The sections in their order, each with how it stands; pressing one leads there. */
export function stepsTemplate({ own }: Spoken, { view, base }: Work, kept: ReadonlySet<string>, go: (step: Step) => void) {
  const { steps, headings } = own;
  const [faults, queries] = countsOf(view?.groups ?? [], kept);
  const open = openColumns(view?.sheets.machines) + openColumns(view?.sheets.units);
  const said: Readonly<Record<Step, string>> = {
    files: steps.tables(view?.sheets.machines?.rows ?? 0, view?.sheets.units?.rows ?? 0),
    columns: view ? steps.columns(open) : '',
    look: view ? steps.look(faults, queries) : '',
    dealer: steps.terms(languageTags.filter((tag) => !base.dealer.terms?.[tag]).length),
    figures: steps.figures(Object.keys(base.rules ?? {}).length),
    save: steps.save(view?.made !== undefined),
  };
  const shown = (Object.keys(headings) as Step[]).filter((step) => hasTables(view) || (step !== 'columns' && step !== 'look'));
  return html`
    <nav aria-label=${steps.label}>
      <ol class="steps">${shown.map((step) => html`<li><button class="text" type="button" data-step=${step} @click=${() => go(step)}>${headings[step]}</button> <span class="lesser">${said[step]}</span></li>`)}</ol>
    </nav>`;
}
