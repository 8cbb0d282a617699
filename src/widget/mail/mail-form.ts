import { html, nothing } from 'lit';
import type { FieldFault } from '../../request/form.ts';
import { goodTimes, longest, type GoodTime } from '../../request/names.ts';
import { longestAddress } from '../../documents/mail-address.ts';
import type { Mailing, MailState } from './mailing.ts';
import { nearAddress } from './near-address.ts';
import type { MailWords } from './words/words.ts';

export interface MailFormView {
  mailing: Mailing;
  words: MailWords;
  dealer: string;
  /** The host may have a say before anything is sent. */
  submit(): void;
  close(): void;
}

const valueOf = (event: Event) => (event.target as HTMLInputElement).value;
const isTicked = (event: Event) => (event.target as HTMLInputElement).checked;

const hasFault = ({ state }: Mailing, fault: FieldFault) => state.at === 'typing' && state.faults.includes(fault);

function fieldTemplate(view: MailFormView, field: 'address' | 'name' | 'phone', { label, hint, fault, type, autocomplete, most }: { label: string; hint?: string; fault: string | undefined; type: string; autocomplete: string; most: number }) {
  const { mailing } = view;
  const id = `mail-${field}`;
  const described = [hint && `${id}-hint`, fault && `${id}-fault`].filter(Boolean).join(' ');
  return html`
    <div class="close field ${fault ? 'wrong' : ''}">
      <label for=${id}>${label}</label>
      ${hint ? html`<p class="hint" id="${id}-hint">${hint}</p>` : nothing}
      ${fault ? html`<p class="fault" id="${id}-fault">${fault}</p>` : nothing}
      <input id=${id} type=${type} name=${field} autocomplete=${autocomplete} spellcheck="false" autocapitalize="off" maxlength=${most * 2}
        .value=${mailing.fields[field]} aria-describedby=${described || nothing} aria-invalid=${fault ? 'true' : nothing}
        @input=${(event: Event) => mailing.set({ [field]: valueOf(event) })} />
    </div>`;
}

const tickTemplate = (label: string, ticked: boolean, tick: (to: boolean) => void) => html`
  <label class="option"><input type="checkbox" .checked=${ticked} @change=${(event: Event) => tick(isTicked(event))} /><span>${label}</span></label>`;

function contactTemplate(view: MailFormView) {
  const { mailing, words } = view;
  const { fields } = mailing;
  return html`
    <fieldset class="inset">
      <legend>${words.forTheDealer}</legend>
      <div class="stack">
        ${fieldTemplate(view, 'name', { label: words.name, fault: hasFault(mailing, 'name') ? words.nameFault : undefined, type: 'text', autocomplete: 'name', most: longest.name })}
        ${fieldTemplate(view, 'phone', { label: words.phone, fault: hasFault(mailing, 'phone') ? words.phoneFault : undefined, type: 'tel', autocomplete: 'tel', most: longest.phone })}
        <div class="close field">
          <label for="mail-time">${words.goodTime}</label>
          <select id="mail-time" @change=${(event: Event) => mailing.set({ goodTime: valueOf(event) as GoodTime })}>
            ${goodTimes.map((time) => html`<option value=${time} ?selected=${fields.goodTime === time}>${words.goodTimes[time]}</option>`)}
          </select>
        </div>
      </div>
    </fieldset>`;
}

/** A field for what fills in all fields there are: out of sight and out of the way of whoever reads by ear, with a name no browser fills in. */
const bait = ({ mailing }: MailFormView) => html`
  <div class="bait" aria-hidden="true"><input type="text" name="zq7_b" tabindex="-1" autocomplete="off" .value=${mailing.fields.leftEmpty}
    @input=${(event: Event) => mailing.set({ leftEmpty: valueOf(event).slice(0, 100) })} /></div>`;

function nearTemplate({ mailing, words }: MailFormView) {
  const near = nearAddress(mailing.fields.address.trim());
  return near ? html`<p class="close"><button class="text" type="button" @click=${() => mailing.set({ address: near })}>${words.addressNear(near)}</button></p>` : nothing;
}

function typingTemplate(view: MailFormView) {
  const { mailing, words, dealer } = view;
  const { fields, kind } = mailing;
  const fault = hasFault(mailing, 'address-missing') ? words.addressFault.missing : hasFault(mailing, 'address-wrong') ? words.addressFault.wrong : undefined;
  const submitted = (event: Event) => {
    event.preventDefault();
    view.submit();
  };
  return html`
    <form class="stack" novalidate @submit=${submitted}>
      <p>${kind === 'notify' ? words.notify.what(dealer) : words.shortlist.what}</p>
      ${fieldTemplate(view, 'address', { label: words.address, hint: words.addressHint, fault, type: 'email', autocomplete: 'email', most: longestAddress })}
      ${nearTemplate(view)}
      <div class="options">
        ${kind === 'notify' ? nothing : tickTemplate(words.dealerCopy(dealer), fields.dealerCopy, (dealerCopy) => mailing.set({ dealerCopy }))}
        ${tickTemplate(words.statistics(dealer), fields.statistics, (statistics) => mailing.set({ statistics }))}
      </div>
      ${fields.dealerCopy || kind === 'notify' ? contactTemplate(view) : nothing}
      ${bait(view)}
      <p class="lesser">${words.privacy}</p>
      <div class="actions">
        <button class="main" type="submit" part="send-mail">${words[kind].send}</button>
        <button class="text" type="button" @click=${view.close}>${words.close}</button>
      </div>
    </form>`;
}

function sentTemplate({ mailing, words, dealer, close }: MailFormView, { address }: Extract<MailState, { at: 'sent' }>) {
  const done = mailing.kind === 'notify' ? words.notify.sent(dealer) : words.shortlist.sent;
  return html`<p><strong>${done}</strong></p>
    ${mailing.kind === 'notify' ? nothing : html`<p>${words.sentTo(address)} ${words.mayTake}</p>`}
    <div class="actions"><button type="button" @click=${close}>${words.close}</button></div>`;
}

function laterTemplate({ words: { later, close: closing }, submit, close }: MailFormView, { why, again }: Extract<MailState, { at: 'later' }>) {
  return html`
    <p>${later[why]}${again === undefined ? '' : ` ${later.tryingAgain(again)}`}</p>
    <p>${later.otherWays}</p>
    <div class="actions">
      <button class="main" type="button" @click=${submit}>${later.tryAgain}</button>
      <button class="text" type="button" @click=${close}>${closing}</button>
    </div>`;
}

/** Codes of a relay for what a buyer may have typed; the others are for whoever runs the page. */
const ofTheBuyer = ['not-a-request', 'not-json', 'other-body'];
const sayRefused = ({ refused }: MailWords, code: string) => (ofTheBuyer.includes(code) ? refused.faulty : refused.other(code));

/** The form by which a buyer has the shortlist mailed to him, and what came of it. */
export function mailFormTemplate(view: MailFormView) {
  const { mailing: { state, kind }, words } = view;
  const busy = state.at === 'sending' || state.at === 'working';
  return html`
    <section class="mail" part="mail">
      <h3 id="mail-heading" tabindex="-1">${words[kind].heading}</h3>
            <div role="status" class="stack">
        ${busy ? html`<p>${state.at === 'working' ? words.working : words.sending}</p>` : nothing}
        ${state.at === 'sent' ? sentTemplate(view, state) : nothing}
        ${state.at === 'later' ? laterTemplate(view, state) : nothing}
        ${state.at === 'refused' ? html`<p class="fault">${sayRefused(words, state.code)}</p>` : nothing}
      </div>
      ${state.at === 'typing' || state.at === 'refused' ? typingTemplate(view) : nothing}
    </section>`;
}
