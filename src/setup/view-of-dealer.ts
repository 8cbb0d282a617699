import { html, nothing } from 'lit';
import type { Base } from '../sheets/sheets.ts';
import { blankBase } from './blank.ts';
import { idOf } from './ids.ts';
import { languageNames, languageTags, type Spoken } from './languages.ts';

type Dealer = Base['dealer'];

export interface DealerView {
  spoken: Spoken;
  base: Base;
  asOf: string;
  set(base: Pick<Base, 'id' | 'dealer'>, asOf: string): void;
}

/** Nobody is called so: it stands there until a dealer says his name. */
export const isNamed = ({ dealer }: Base) => dealer.name !== blankBase.dealer.name;

/** What must hold of a field before it is taken; all else a dealer may write as he likes. */
const isRight: Readonly<Record<string, (text: string) => boolean>> = {
  name: (text) => text !== '',
  currency: (text) => /^[A-Z]{3}$/.test(text),
  url: (text) => text === '' || /^https?:\/\/[^\s]+\.[^\s]+$/.test(text),
  locale: (text) => /^[a-z]{2}-[A-Z]{2}$/.test(text),
  asOf: (text) => /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(Date.parse(text)),
};

/** A copy without a key where there is nothing to say under it. */
const withText = (dealer: Dealer, key: keyof Dealer, text: string): Dealer => {
  const { [key]: _, ...rest } = dealer;
  return (text === '' ? rest : { ...rest, [key]: text }) as Dealer;
};

function withTerms(dealer: Dealer, language: string, guidance: string): Dealer {
  const { [language]: before, ...others } = dealer.terms ?? {};
  return { ...dealer, terms: { ...others, ...(guidance !== '' && { [language]: { ...before, guidance } }) } };
}

/** Who the dealer is, in what he reckons, and the terms that stand under every result. */
export function dealerTemplate({ spoken: { own }, base, asOf, set }: DealerView) {
  const { dealer: words } = own;
  const { dealer } = base;
  type Field = keyof typeof words.fields;
  const changed = (field: Field) => ({ target }: Event) => {
    const input = target as HTMLInputElement;
    const text = input.value.trim();
    const right = isRight[field]?.(text) ?? true;
    input.setCustomValidity(right ? '' : words.wrong[field as keyof typeof words.wrong]);
    input.setAttribute('aria-invalid', String(!right));
    input.parentElement!.querySelector('.fault')!.textContent = right ? '' : words.wrong[field as keyof typeof words.wrong];
    if (!right) return;
    if (field === 'asOf') set(base, text);
    else set({ id: field === 'name' ? idOf(text) : base.id, dealer: withText(dealer, field, text) }, asOf);
  };
  const valueOf = (name: Exclude<Field, 'units'>) => (name === 'asOf' ? asOf : name === 'name' && !isNamed(base) ? '' : (dealer[name] ?? ''));
  const field = (name: Exclude<Field, 'units'>, autocomplete: string) => html`
    <div>
      <label><span>${words.fields[name]}</span><input type="text" data-dealer=${name} autocomplete=${autocomplete} .value=${valueOf(name)} @change=${changed(name)} aria-describedby="fault-${name}" /><span class="fault" id="fault-${name}" role="alert"></span></label>
    </div>`;
  return html`
    <p>${words.explained}</p>
    ${isNamed(base) ? nothing : html`<p class="lesser">${words.noName}</p>`}
    <div class="fields">
      ${field('name', 'organization')}${field('phone', 'tel')}${field('email', 'email')}${field('address', 'street-address')}${field('url', 'url')}
      ${field('currency', 'off')}${field('locale', 'off')}
      <label><span>${words.fields.units}</span>
        <select data-dealer="units" @change=${changed('units')}>
          <option value="us" ?selected=${dealer.units === 'us'}>${words.us}</option>
          <option value="metric" ?selected=${dealer.units === 'metric'}>${words.metric}</option>
        </select>
        <span class="fault"></span>
      </label>
      ${field('asOf', 'off')}
    </div>
    <h3>${words.termsHeading}</h3>
    <p>${words.termsExplained}</p>
    ${languageTags.map((tag) => html`
      <label class="wide"><span>${words.terms(languageNames[tag])}</span>
        <textarea rows="5" lang=${tag} data-terms=${tag} .value=${dealer.terms?.[tag]?.guidance ?? ''} @change=${({ target }: Event) => set({ id: base.id, dealer: withTerms(dealer, tag, (target as HTMLTextAreaElement).value.trim()) }, asOf)}></textarea>
        ${dealer.terms?.[tag] ? nothing : html`<span class="lesser">${words.termsMissing}</span>`}
      </label>`)}
  `;
}
