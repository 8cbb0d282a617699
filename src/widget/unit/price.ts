import { html, nothing } from 'lit';
import { lacksOf, sayLack } from '../../lot/lacks.ts';
import { quotation, type Quotation } from '../../lot/quotation/quotation.ts';
import { sayQuotation } from '../../lot/quotation/say.ts';
import { toSi, type Quantity } from '../../units/quantity.ts';
import { unitWord } from '../../units/show.ts';
import { tradeInKinds, type Buyer } from './buyer.ts';
import { boxTemplate, listTemplate } from './field.ts';
import { linesTemplate, loansTemplate } from './lines.ts';
import { quotationPaper } from './paper.ts';
import { printAlone } from './print.ts';
import { distanceField, typedIn } from './typed.ts';
import type { UnitView } from './view.ts';

const distanceIn = ({ buyer, words, voice }: UnitView) => typedIn(distanceField, buyer.distance, words.price.distance, voice);

/** What a unit costs delivered, as the buyer wants it. */
export function quotationOf(view: UnitView): Quotation {
  const { candidate, considered: { evaluationOf, world }, catalogue: { asOf }, buyer, words, read: { budget } } = view;
  const delivered = buyer.how === 'delivered';
  const typed = distanceIn(view);
  const far = 'value' in typed && typeof typed.value === 'object' && 'unit' in typed.value ? typed.value : undefined;
  const owed = budget?.tradeIn?.owed;
  return quotation({
    evaluation: evaluationOf(candidate), world, asOf, delivered,
    ...(delivered && far && { distance: toSi(far as { value: number; unit: 'km' }) as Quantity<'length'> }),
    ...(buyer.tradeIn && { tradeIn: { kind: words.price.tradeIns[buyer.tradeIn], ...(owed && { owed }) } }),
    // Who pays at once is told of no loan.
    ...(budget?.pay === 'cash' && { finance: [] }),
  });
}

function wishesTemplate(view: UnitView) {
  const { key, buyer, say, words: { price }, voice: { reader } } = view;
  const fault = distanceIn(view);
  const way = (how: Buyer['how']) => html`
    <label class="option"><input type="radio" name="how ${key}" .checked=${buyer.how === how} @change=${() => say({ how })} /><span>${price[how]}</span></label>`;
  return html`
    <fieldset><legend>${price.how}</legend><div class="options ways">${way('delivered')}${way('fetched')}</div></fieldset>
    ${buyer.how === 'delivered' ? boxTemplate({
      id: `distance ${key}`.replaceAll(' ', '-'), label: price.distance, hint: unitWord(distanceField[reader.units], reader), value: buyer.distance,
      fault: 'fault' in fault ? fault.fault : undefined, typed: (distance) => say({ distance }),
    }) : nothing}
    ${listTemplate({
      id: `trade-in ${key}`.replaceAll(' ', '-'), label: price.tradeIn, chosen: buyer.tradeIn, choose: (kind) => say({ tradeIn: kind as Buyer['tradeIn'] }),
      options: [{ value: '', text: price.noTradeIn }, ...tradeInKinds.map((kind) => ({ value: kind, text: price.tradeIns[kind] }))],
    })}
    <p class="lesser">${price.tradeInHint}</p>`;
}

function lacksTemplate({ candidate, considered: { world }, voice, words: { lot } }: UnitView) {
  const lacks = lacksOf(candidate, world);
  return lacks.length === 0 ? nothing : html`
    <div class="close"><h4>${lot.lacks.heading}</h4><ul class="plain">${lacks.map((lack) => html`<li>${sayLack(lack, voice, lot)}</li>`)}</ul></div>`;
}

/** What one unit comes to, delivered: what the buyer wishes, the lines, what is missing, and that it is no offer. */
export function priceTemplate(view: UnitView) {
  const { words, voice, candidate } = view;
  const said = sayQuotation(quotationOf(view), { voice, lot: words.lot });
  return html`
    <div class="stack" part="delivered-price">
      ${candidate.unit ? nothing : html`<p>${words.price.typical}</p>`}
      ${wishesTemplate(view)}
      <p><strong>${said.noOffer}</strong></p>
      <div role="status" class="close">${linesTemplate(said, words)}</div>
      ${loansTemplate(said, view)}
      ${candidate.unit ? lacksTemplate(view) : nothing}
      <p class="lesser">${said.asOf}</p>
      <div class="actions"><button type="button" part="print-price" @click=${() => printAlone(quotationPaper(view, said), voice, view.paper)}>${words.print}</button></div>
    </div>`;
}
