import { html, nothing } from 'lit';
import type { Outbox } from './outbox.ts';
import { isOverdue } from './queue/status.ts';
import type { Listed } from './queue/staff-desk.ts';
import { sayAge } from './say-age.ts';
import { lastOf } from './sending.ts';
import type { CounterWords } from './words/words.ts';

export interface WaitingView {
  outbox: Outbox;
  own: CounterWords;
  now: number;
  back(): void;
}

function rowTemplate({ id, place, is, createdAt, label, code }: Listed, { outbox, own: { waiting }, now }: WaitingView) {
  const needsStaff = is === 'needs-staff' || is === 'damaged';
  return html`
    <li class="waits">
      <span>${createdAt === undefined ? '' : waiting.row(sayAge(now - createdAt, waiting), lastOf(id ?? ''))}${label ? ` · ${label}` : ''}</span>
      <span class=${needsStaff ? 'fault' : 'lesser'}>${waiting.states[is]}${code ? `. ${waiting.refused(code)}` : ''}</span>
      ${is === 'needs-staff' && id !== undefined ? html`<button type="button" @click=${() => outbox.again(id)}>${waiting.again}</button>` : nothing}
      ${needsStaff ? html`<button type="button" @click=${() => outbox.remove(place)}>${waiting.drop}</button>` : nothing}
    </li>`;
}

function doneText({ outbox: { done }, own: { waiting } }: WaitingView): string {
  if (!done) return '';
  if (done.is === 'saved') return waiting.saved;
  if (done.is === 'set-up') return done.hasKey ? waiting.setUpDone : waiting.setUpFailed;
  return `${waiting.readDone(done.taken)}${done.faults > 0 ? ` ${waiting.readFaults(done.faults)}` : ''}`;
}

/** Taking the counter off a device that is sold or sent in; what would be lost by it is told first. */
function retireTemplate({ outbox, own: { retire } }: WaitingView) {
  const { retired } = outbox;
  const isParked = retired?.kind === 'parked';
  const said = !retired ? retire.explained : retired.kind === 'waiting' ? retire.waiting(retired.count) : isParked ? retire.parked(retired.count) : retire[retired.kind];
  return html`
    <details class="retiring" .open=${retired !== undefined}>
      <summary>${retire.heading}</summary>
      <div class="close">
        <p role="status">${said}</p>
        ${retired?.kind === 'retired' ? nothing : html`<div class="actions"><button type="button" data-retire @click=${() => outbox.retire(isParked)}>${isParked ? retire.withParked : retire.go}</button></div>`}
      </div>
    </details>`;
}

/** What waits to be sent: how much, how long, what keeps it, and what staff can do about it. */
export function waitingTemplate(view: WaitingView) {
  const { outbox, own: { waiting, storage }, now, back } = view;
  const { queue, entries, trouble } = outbox;
  if (!queue) return nothing;
  const { status } = queue;
  const chosen = async ({ target }: Event) => {
    const input = target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (file) await outbox.read(file);
    input.value = '';
  };
  const what = trouble ?? (status.trouble?.of === 'storage' ? status.trouble.why : undefined);
  return html`
    <section class="stack" aria-labelledby="waiting-heading">
      <h2 id="waiting-heading" tabindex="-1">${waiting.heading}</h2>
      <p>${entries.length === 0 ? waiting.none : waiting.explained}</p>
      ${isOverdue(status, now) ? html`<p class="notice" data-overdue>${waiting.overdue}</p>` : nothing}
      ${what ? html`<p class="fault">${storage[what]}</p>` : nothing}
      ${status.trouble?.of === 'relay' && entries.length > 0 ? html`<p>${waiting.way[status.trouble.why]}</p>` : nothing}
      ${status.persisted === false ? html`<p class="lesser">${waiting.notPersisted}</p>` : nothing}
      ${entries.length > 0 ? html`<ol class="waiting">${entries.map((entry) => rowTemplate(entry, view))}</ol>` : nothing}
      <div class="actions">
        <button class="main" type="button" data-send-now @click=${() => outbox.sendNow()}>${waiting.sendNow}</button>
        <button type="button" data-save @click=${() => outbox.save()}>${waiting.save}</button>
        <label class="file">${waiting.read}<input type="file" accept="application/json,.json" data-read @change=${chosen} /></label>
        <button type="button" data-set-up @click=${() => outbox.setUp()}>${waiting.setUp}</button>
      </div>
      <p role="status">${doneText(view)}</p>
      ${retireTemplate(view)}
      <div class="actions"><button type="button" data-back @click=${back}>${waiting.back}</button></div>
    </section>`;
}
