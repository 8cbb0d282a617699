import { html, nothing } from 'lit';
import { hour, minute } from './queue/clock.ts';
import { nextToGo, type Parking } from './parking.ts';
import { sayTime } from './say-time.ts';
import type { CounterWords } from './words/words.ts';

export interface ParkingView {
  parking: Parking;
  own: CounterWords;
  now: number;
  locale: string;
  /** The one on the screen. */
  openId: string | undefined;
  resume(id: string): void;
}

function faultText({ parking: { fault }, own: { pin }, now }: ParkingView): string {
  if (!fault) return '';
  if ('is' in fault) return pin[fault.is];
  return fault.kind === 'wrong' ? pin.wrong(fault.left) : pin.locked(Math.ceil((fault.until - now) / minute));
}

/** What staff type their PIN in, or make it. */
export function pinTemplate(view: ParkingView) {
  const { parking, own: { pin } } = view;
  const { asking } = parking;
  if (!asking) return nothing;
  const submitted = (event: Event) => {
    event.preventDefault();
    const form = event.currentTarget as HTMLFormElement;
    const [first, second] = [...form.querySelectorAll('input')].map(({ value }) => value);
    form.reset();
    void parking.answer(first ?? '', second ?? '');
    form.querySelector('input')?.focus();
  };
  const cancelled = (event: Event) => {
    event.preventDefault();
    parking.stopAsking();
  };
  // A text field drawn as dots: one for passwords would have the browser offer to keep it.
  const field = (id: string, label: string) => html`<div class="box"><label for=${id}>${label}</label>
    <input class="hidden-text" type="text" id=${id} inputmode="numeric" autocomplete="off" autocorrect="off" spellcheck="false" aria-describedby="pin-fault" /></div>`;
  return html`
    <dialog class="pin" aria-labelledby="pin-heading" @cancel=${cancelled}>
      <h2 id="pin-heading">${pin.heading[asking]}</h2>
      <p>${pin.explained[asking]}</p>
      <form class="stack" novalidate autocomplete="off" @submit=${submitted}>
        ${field('pin', pin.label)}${asking === 'unlock' ? nothing : field('pin-again', pin.again)}
        <p class="fault" id="pin-fault" role="alert">${faultText(view)}</p>
        <div class="actions"><button class="main" type="submit">${asking === 'unlock' ? pin.unlock : pin.set}</button><button type="button" @click=${() => parking.stopAsking()}>${pin.cancel}</button></div>
      </form>
      ${asking === 'unlock' ? html`<details><summary>${pin.forgotten}</summary><div class="actions"><button type="button" @click=${() => parking.ask('anew')}>${pin.wipe}</button></div></details>` : nothing}
    </dialog>`;
}

/** How many are thrown away next, and by when: above everything once that is soon, and beside them before. */
export function goingTemplate({ parking: { ends }, own: { intake: words }, locale, now }: Pick<ParkingView, 'parking' | 'own' | 'locale' | 'now'>, when: 'soon' | 'later') {
  const next = nextToGo(ends);
  if (!next || (when === 'soon') !== (next.from - now <= hour)) return nothing;
  return html`<p class=${when === 'soon' ? 'notice old' : 'lesser'} data-going role=${when === 'soon' ? 'status' : nothing}>${words.goes(next.count, sayTime(locale, next.by))}</p>`;
}

/** Who is parked: how many to anybody, by name once it is unlocked. */
export function parkedTemplate(view: ParkingView) {
  const { parking, own: { intake: words, pin, storage }, openId, resume } = view;
  const { entries, count, thrown, trouble } = parking;
  const others = entries?.filter(({ id }) => id !== openId);
  return html`
    <section class="close" aria-labelledby="parked-heading">
      <h2 class="lesser-heading" id="parked-heading">${words.parked(others?.length ?? count)}</h2>
      ${thrown > 0 ? html`<p role="status" data-thrown>${words.thrown(thrown)}</p>` : nothing}
      ${goingTemplate(view, 'later')}
      ${trouble ? html`<p class="fault">${storage[trouble]}</p>` : nothing}
      ${!others && count > 0 ? html`<div class="actions"><button type="button" data-show-parked @click=${() => parking.show()}>${words.showParked}</button></div>` : nothing}
      ${others && others.length > 0 ? html`
        <ul class="parked">${others.map(({ id, label, is }) => {
          const name = label || words.unnamed;
          return html`<li class="actions">${is === 'sound' ? html`<button type="button" data-resume=${id} @click=${() => resume(id)}>${words.resume(name)}</button>` : html`<span>${words.unreadable}</span>`}
            <button class="text" type="button" @click=${() => parking.remove(id)}>${words.remove(name)}</button></li>`;
        })}</ul>
        <div class="actions"><button class="text" type="button" @click=${() => parking.shut()}>${pin.lock}</button></div>` : nothing}
    </section>`;
}
