import { html, nothing } from 'lit';
import { headingsOf, type Heading, type SheetKind } from '../sheets/sheets.ts';
import type { View } from './view.ts';
import { usualFrames } from './frames.ts';
import type { Spoken } from './languages.ts';
import { wordsOf } from './mends.ts';

export interface AddingView {
  spoken: Spoken;
  view: View | undefined;
  /** Forms whose lesser fields are asked for too. */
  unfolded: ReadonlySet<SheetKind>;
  /** The row that was added last, and to which table. */
  added: { sheet: SheetKind; row: number } | undefined;
  unfold(sheet: SheetKind): void;
  add(sheet: SheetKind, values: Readonly<Record<string, string>>, form: HTMLFormElement): void;
}

/** Fields asked for first: those no row can do without, and those most reasons hang on. */
const first: Readonly<Record<SheetKind, readonly string[]>> = {
  machines: [
    'name', 'make', 'frame', 'tier', 'years.from', 'years.to', 'years.meant', 'id', 'mass', 'tyres[].widthOverRear', 'tyres[].type', 'engine.power', 'engine.ptoPower', 'hitch.lift610',
    'loaders[].id', 'loaders[].ratings.pins', 'loaders[].ratings.ahead500', 'loaders[].fullHeight', 'height.ropsUp', 'rops.kind',
  ],
  units: ['machine', 'id', 'year', 'hours', 'price', 'status', 'fitted.loader', 'loader', 'rops.kind', 'rops.certified', 'rops.altered', 'seatBelt', 'ptoShield', 'recallOpen', 'notes'],
};

const withNumber = (field: string) => field.replace('[]', '[1]');

/** An id isn't asked of who adds a row by hand: it can be made. */
const isAsked = ({ field, needed }: Heading) => needed === true && field !== 'id';

/** What may be written into a field that names something there is already. */
function namesFor(sheet: SheetKind, field: string, view: View | undefined): readonly string[] | undefined {
  if (sheet === 'machines' && field === 'frame') return view?.base.frames.map(({ id }) => id) ?? usualFrames;
  return sheet === 'units' && field === 'machine' ? view?.machineIds : undefined;
}

function fieldTemplate(sheet: SheetKind, heading: Heading, { spoken: { own }, view }: AddingView) {
  const { field, example } = heading;
  const [words, names, list] = [wordsOf(heading), namesFor(sheet, field, view), `names-${sheet}-${field}`];
  return html`
    <div>
      <label><span>${heading.heading}</span>
        ${words
    ? html`<select name=${withNumber(field)} ?required=${isAsked(heading)}><option value=""></option>${words.map((word) => html`<option value=${word}>${word}</option>`)}</select>`
    : html`<input type="text" name=${withNumber(field)} autocomplete="off" list=${names ? list : nothing} ?required=${isAsked(heading)} />`}
        ${words ? nothing : html`<span class="lesser">${field === 'id' ? own.files.idMade : own.files.such(example)}</span>`}
      </label>
      ${names ? html`<datalist id=${list}>${names.map((name) => html`<option value=${name}></option>`)}</datalist>` : nothing}
    </div>`;
}

/** A form for one row more; its fields are the documented headings, those that matter most first. */
export function addingTemplate(sheet: SheetKind, shown: AddingView) {
  const { spoken: { own }, unfolded, added } = shown;
  const all = headingsOf(sheet);
  const asked = first[sheet].flatMap((field) => all.find((heading) => heading.field === field) ?? []);
  const others = all.filter((heading) => !asked.includes(heading));
  const submitted = (event: Event) => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const typed = [...new FormData(form)].flatMap(([field, text]) => (typeof text === 'string' && text.trim() !== '' ? [[field, text.trim()] as const] : []));
    shown.add(sheet, Object.fromEntries(typed), form);
  };
  return html`
    <details data-add=${sheet}>
      <summary>${own.files.addHeading(own.sheets[sheet])}</summary>
      <form class="close" @submit=${submitted}>
        <p class="lesser">${own.files.addExplained}</p>
        <div class="fields">${asked.map((heading) => fieldTemplate(sheet, heading, shown))}</div>
        ${unfolded.has(sheet) ? html`<div class="fields">${others.map((heading) => fieldTemplate(sheet, heading, shown))}</div>`
    : html`<div><button class="text" type="button" @click=${() => shown.unfold(sheet)}>${own.files.more} (${others.length})</button></div>`}
        <div class="actions"><button type="submit">${own.files.add}</button><span role="status">${added?.sheet === sheet ? own.files.added(added.row) : ''}</span></div>
      </form>
    </details>`;
}
