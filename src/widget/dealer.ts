import { html, nothing } from 'lit';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { Voice } from '../reasons/say.ts';
import { dayIn } from '../units/day.ts';
import { mailUrl, phoneUrl, safeUrl } from './safe-url.ts';
import type { CatalogueTrouble } from './trouble.ts';

/** The day a line-up is of, in words. */
export const dayOf = ({ asOf }: CatalogueDocument, { reader }: Voice) =>
  dayIn(reader.locale, asOf);

const linkTemplate = (url: string | undefined, text: string | undefined) => {
  if (!text) return [];
  return [url ? html`<a href=${url}>${text}</a>` : html`<bdi>${text}</bdi>`];
};

/** How to reach the dealer; nothing where he gave no way. */
export function contactTemplate({ dealer }: CatalogueDocument, { words }: Voice) {
  const site = safeUrl(dealer.url);
  const ways = [
    ...linkTemplate(phoneUrl(dealer.phone), dealer.phone),
    ...linkTemplate(mailUrl(dealer.email), dealer.email),
    ...(site ? linkTemplate(site, new URL(site).host) : []),
  ];
  return ways.length === 0 ? nothing : html`<p part="contact"><strong>${words.result.contact}:</strong> <bdi>${dealer.name}</bdi>${ways.map((way) => html` · ${way}`)}</p>`;
}

/** What a buyer should know of the list before he trusts it: that it is old, or that nothing of it is to be had. */
export function stockTemplate({ catalogue, flaws, voice }: { catalogue: CatalogueDocument; flaws: readonly CatalogueTrouble['code'][]; voice: Voice }) {
  const { stock } = voice.words.result;
  const isOld = flaws.includes('catalogue.stale') || flaws.includes('catalogue.kept');
  const isBare = flaws.includes('catalogue.no-stock');
  if (!isOld && !isBare) return nothing;
  return html`
    <section class="notice" part="stock">
      ${isBare ? html`<p>${stock.none}</p>` : nothing}
      ${isOld ? html`<p>${stock.old(dayOf(catalogue, voice))}</p>` : nothing}
      ${contactTemplate(catalogue, voice)}
    </section>`;
}

/** A picture that can't be had leaves its place bare, so that nothing on the page moves. */
const clear = ({ target }: Event) => { (target as HTMLElement).closest<HTMLElement>('.photo')!.dataset.bare = ''; };

/** A photo of a unit in a box of its own, unfolded to its full size beside the page; nothing where its address isn't one to follow. */
export function photoTemplate(address: string | undefined, what: string, { words }: Voice) {
  const url = safeUrl(address, 'picture');
  if (!url) return nothing;
  return html`
    <a class="photo" part="photo" href=${url} target="_blank" rel="noopener noreferrer">
      <img src=${url} alt=${words.result.stock.photo(what)} referrerpolicy="no-referrer" loading="lazy" decoding="async" @error=${clear} />
    </a>`;
}
