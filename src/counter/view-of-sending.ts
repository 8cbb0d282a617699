import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { longestAddress } from '../documents/mail-address.ts';
import { goodTimes, longest, type GoodTime } from '../request/names.ts';
import { nearAddress } from '../widget/mail/near-address.ts';
import { languageNames, languageTags, type LanguageTag } from './languages.ts';
import { masked, type SendFault, type SendFields, type Sending } from './sending.ts';
import type { CounterWords } from './words/words.ts';

export interface SendingView {
  sending: Sending;
  own: CounterWords;
  dealer: string;
  key: string;
  /** Of the mail. */
  language: LanguageTag;
  speak(language: LanguageTag): void;
  send(): void;
  again(): void;
  /** Whether the page makes room for the next customer by itself, or was about to until somebody touched it. */
  isClearing: boolean;
  /** Seconds until the page makes room for the next customer; undefined where it doesn’t. */
  left: number | undefined;
}

const valueOf = (event: Event) => (event.target as HTMLInputElement).value;
const faultsIn = ({ sending: { state } }: SendingView): readonly SendFault[] => (state.at === 'typing' ? state.faults : []);

function textTemplate(view: SendingView, field: 'address' | 'name' | 'phone', { label, hint, fault, most, mode }: { label: string; hint?: string; fault: string | undefined; most: number; mode: 'email' | 'tel' | 'text' }) {
  const { sending, key } = view;
  const id = `send-${field}`;
  const described = [hint && `${id}-hint`, fault && `${id}-fault`].filter(Boolean).join(' ');
  // What is typed stands there only as long as the field has the focus: others look at the same glass.
  const cover = ({ target }: Event) => { (target as HTMLInputElement).value = masked(sending.fields[field]); };
  const uncover = ({ target }: Event) => { (target as HTMLInputElement).value = sending.fields[field]; };
  const isCovered = field === 'address';
  return html`
    <div class="box ${fault ? 'wrong' : ''}" data-box=${field}>
      <label for=${id}>${label}</label>
      ${hint ? html`<p class="below" id="${id}-hint">${hint}</p>` : nothing}
      <input type="text" id=${id} name="${key}-${id}" inputmode=${mode} autocomplete="off" autocorrect="off" autocapitalize="off" spellcheck="false" maxlength=${most * 2}
        aria-describedby=${described || nothing} aria-invalid=${fault ? 'true' : nothing} .defaultValue=${isCovered ? masked(sending.fields[field]) : sending.fields[field]}
        @input=${(event: Event) => sending.set({ [field]: valueOf(event) })} @focus=${isCovered ? uncover : nothing} @blur=${isCovered ? cover : nothing} />
      ${fault ? html`<p class="fault" id="${id}-fault">${fault}</p>` : nothing}
    </div>`;
}

const tickTemplate = (name: keyof SendFields & ('mail' | 'dealerCopy' | 'statistics' | 'initials'), label: string, { sending, key }: SendingView, fault?: string) => html`
  <label class="option"><input type="checkbox" name="${key}-${name}" data-consent=${name} .checked=${live(sending.fields[name])} aria-describedby=${fault ? `${name}-fault` : nothing}
    @change=${({ target }: Event) => sending.set({ [name]: (target as HTMLInputElement).checked })} /><span>${label}</span></label>
  ${fault ? html`<p class="fault" id="${name}-fault">${fault}</p>` : nothing}`;

function contactTemplate(view: SendingView) {
  const { sending, own: { send }, key } = view;
  const faults = faultsIn(view);
  return html`
    <fieldset class="inset stack"><legend>${send.contact}</legend><p class="hint">${send.contactHint}</p>
      ${textTemplate(view, 'name', { label: send.name, fault: faults.includes('name') ? send.nameFault : undefined, most: longest.name, mode: 'text' })}
      ${sending.fields.name.trim() === '' ? nothing : tickTemplate('initials', send.initials, view)}
      ${textTemplate(view, 'phone', { label: send.phone, fault: faults.includes('phone') ? send.phoneFault : undefined, most: longest.phone, mode: 'tel' })}
      <div class="box"><label for="send-time">${send.goodTime}</label>
        <select id="send-time" name="${key}-time" autocomplete="off" @change=${(event: Event) => sending.set({ goodTime: valueOf(event) as GoodTime })}>
          ${goodTimes.map((time) => html`<option value=${time} ?selected=${sending.fields.goodTime === time}>${send.goodTimes[time]}</option>`)}
        </select></div>
    </fieldset>`;
}

function nearTemplate({ sending, own: { send } }: SendingView) {
  const near = nearAddress(sending.fields.address.trim());
  return near ? html`<div class="actions"><button type="button" @click=${() => sending.set({ address: near })}>${send.near(near.slice(near.lastIndexOf('@')))}</button></div>` : nothing;
}

function formTemplate(view: SendingView) {
  const { sending, own: { send }, dealer, language, key } = view;
  const faults = faultsIn(view);
  const submitted = (event: Event) => {
    event.preventDefault();
    view.send();
  };
  const addressFault = faults.includes('address-missing') ? send.addressFault.missing : faults.includes('address-wrong') ? send.addressFault.wrong : undefined;
  return html`
    <form class="stack narrow" novalidate autocomplete="off" @submit=${submitted}>
      <p>${send.explained}</p>
      ${textTemplate(view, 'address', { label: send.address, hint: send.addressHint, fault: addressFault, most: longestAddress, mode: 'email' })}
      ${nearTemplate(view)}
      <fieldset><legend>${send.consentHeading}</legend>
        <div class="options">
          ${tickTemplate('mail', send.consent.mail(dealer), view, faults.includes('mail') ? send.consentFault : undefined)}
          ${tickTemplate('dealerCopy', send.consent.dealerCopy(dealer), view)}
          ${tickTemplate('statistics', send.consent.statistics(dealer), view)}
        </div>
      </fieldset>
      ${sending.fields.dealerCopy ? contactTemplate(view) : nothing}
      <div class="box"><label for="send-language">${send.language}</label>
        <select id="send-language" name="${key}-language" autocomplete="off" @change=${(event: Event) => view.speak(valueOf(event) as LanguageTag)}>
          ${languageTags.map((tag) => html`<option value=${tag} lang=${tag} ?selected=${tag === language}>${languageNames[tag]}</option>`)}
        </select></div>
      <p class="lesser">${send.privacy}</p>
      <div class="actions"><button class="main" type="submit" data-send ?disabled=${sending.state.at === 'keeping'}>${send.keep}</button></div>
    </form>`;
}

function notKeptTemplate({ sending: { state }, own, again }: SendingView) {
  if (state.at !== 'not-kept') return nothing;
  const { send, storage } = own;
  if (state.why === 'no-key') return html`<p class="fault">${send.noKey}</p>`;
  return html`<p class="fault">${send.notKept} ${storage[state.why as keyof typeof storage] ?? ''}</p>
    ${state.waiting ? html`<div class="actions"><button class="main" type="button" @click=${again}>${own.trouble.tryAgain}</button></div>` : nothing}`;
}

/** Hidden, and its room kept: the touch that stops it must find what it was meant for where it was. */
const freeIf = (isStopped: boolean) => (isStopped ? 'kept-free' : '');

/** What can be done after sending; the seconds are seen and not read out one by one. */
const keptTemplate = ({ sending, own: { send }, isClearing, left }: SendingView) => html`
  ${isClearing ? html`<p class="left ${freeIf(left === undefined)}" role="timer" aria-live="off" ?data-clears=${left !== undefined}>${send.clearsIn(left ?? 0)}</p>` : nothing}
  <div class="actions"><button type="button" data-another @click=${() => sending.clear()}>${send.another}</button></div>`;

/** The form by which a customer's shortlist is sent, and what came of it. */
export function sendingTemplate(view: SendingView) {
  const { sending, own: { send } } = view;
  const { state } = sending;
  return html`
    <section class="sending stack" aria-labelledby="sending-heading">
      <h2 id="sending-heading" tabindex="-1">${send.heading}</h2>
      <div role="status" class="stack">
        ${state.at === 'keeping' ? html`<p>${send.keeping}</p>` : nothing}
        ${state.at === 'kept' ? html`<p><strong>${send.kept(state.last)}</strong></p><p>${send.keptExplained}</p>${view.isClearing ? html`<p class=${freeIf(view.left === undefined)}>${send.clears}</p>` : nothing}` : nothing}
        ${notKeptTemplate(view)}
      </div>
      ${state.at === 'kept' ? keptTemplate(view) : nothing}
      ${state.at === 'typing' || state.at === 'keeping' || (state.at === 'not-kept' && !state.waiting) ? formTemplate(view) : nothing}
    </section>`;
}
