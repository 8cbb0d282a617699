import { html, nothing } from 'lit';
import type { ItemId } from '../../lot/inspection/items.ts';
import type { Unit } from '../../catalogue/catalogue.ts';
import { listOf, type SaidList } from './list.ts';
import { inspectionPaper } from './paper.ts';
import { printAlone } from './print.ts';
import type { UnitView } from './view.ts';

/** What was ticked of one unit's list: kept as long as the page is open, and nowhere else. */
export interface Looked {
  done: Set<ItemId>;
  bad: Set<ItemId>;
}

/** Whatever a buyer finds there himself, it rules a unit out as it does where the dealer says so. */
const gates: readonly ItemId[] = ['rops', 'seat-belt', 'recall', 'exhaust'];

export interface LookedView {
  looked: Looked;
  changed(): void;
}

function tick({ looked: { done, bad }, changed }: LookedView, id: ItemId, which: 'done' | 'bad', on: boolean) {
  const set = which === 'done' ? done : bad;
  if (on) set.add(id);
  else set.delete(id);
  // What was found bad was looked at; what wasn't looked at wasn't found bad.
  if (on && which === 'bad') done.add(id);
  if (!on && which === 'done') bad.delete(id);
  changed();
}

function foundTemplate({ items }: SaidList, { looked: { bad } }: LookedView, { words: { look, lot }, voice }: UnitView) {
  const found = items.filter(({ id }) => bad.has(id));
  if (found.length === 0) return nothing;
  const out = found.filter(({ id }) => gates.includes(id));
  const names = (some: typeof found) => voice.words.list(some.map(({ name }) => name));
  return html`
    <div class="notice">
      <p>${look.foundBad(names(found))}</p>
      ${out.length > 0 ? html`<p><strong>${names(out)}: ${lot.inspection.ruledOut}</strong></p>` : nothing}
      <p>${look.mend}</p>
    </div>`;
}

function itemTemplate({ id, name, when, why, how, notes }: SaidList['items'][number], looked: LookedView, { words: { look, lot } }: UnitView) {
  const box = (which: 'done' | 'bad', label: unknown) => html`
    <label class="option"><input type="checkbox" data-item=${id} data-which=${which} .checked=${looked.looked[which].has(id)}
      @change=${({ target }: Event) => tick(looked, id, which, (target as HTMLInputElement).checked)} /><span>${label}</span></label>`;
  return html`
    <li class="close">
      <p><strong>${name}</strong> <span class="tag">${when}</span></p>
      <p>${how}</p>
      <p class="lesser">${[why, ...notes].join(' ')}</p>
      <div class="ticks">
        ${box('done', html`${look.done}<span class="unseen">: ${name}</span>`)}
        ${box('bad', html`${look.bad}<span class="unseen">: ${name}</span>`)}
      </div>
      ${looked.looked.bad.has(id) && gates.includes(id) ? html`<p class="fault">${lot.inspection.ruledOut}</p>` : nothing}
    </li>`;
}

/** What to look at on one unit, to be ticked off beside it, or on paper. */
export function inspectTemplate(view: UnitView, unit: Unit, looked: LookedView) {
  const { words, voice } = view;
  const list = listOf(view, unit);
  const done = list.items.filter(({ id }) => looked.looked.done.has(id)).length;
  return html`
    <div class="stack" part="inspection">
      <p>${list.explained}</p>
      <div class="close"><h4>${list.cautionsHeading}</h4><ul class="plain">${list.cautions.map((each) => html`<li>${each}</li>`)}</ul></div>
      <ol class="looks" role="list">${list.items.map((item) => itemTemplate(item, looked, view))}</ol>
      <div role="status">${foundTemplate(list, looked, view)}</div>
      <p role="status" class="counted"><strong>${words.look.count(done, list.items.length)}</strong></p>
      <p class="lesser">${words.look.notKept}</p>
      <div class="actions"><button type="button" part="print-inspection" @click=${() => printAlone(inspectionPaper(view, list), voice, view.paper)}>${words.print}</button></div>
    </div>`;
}
