import { policyFor, snippet, type Embedding } from '../embed/snippet.ts';
import type { Base } from '../sheets/sheets.ts';
import { mailUrl, phoneUrl } from '../widget/safe-url.ts';

/** Where the dealer puts things on his own site. */
export interface Places {
  /** Folder of the wizard's files. */
  folder: string;
  catalogue: string;
}

/** The wizard's one file in a language, and its hash. */
export interface Script {
  file: string;
  integrity: string;
}

/** The script of a folder of several files, which no hash holds. */
const severalFiles = 'acre-to-axle.js';

/** What to say and link to where the script doesn't run. */
const fallbackOf = ({ dealer }: Base): Embedding['fallback'] => [
  { text: dealer.name },
  ...(dealer.phone ? [{ text: dealer.phone, href: phoneUrl(dealer.phone) }] : []),
  ...(dealer.email ? [{ text: dealer.email, href: mailUrl(dealer.email) }] : []),
];

const addressOf = ({ folder }: Places, script: Script | undefined) => `${folder.replace(/\/?$/, '/')}${script?.file ?? severalFiles}`;

/**
 * The lines to paste, for a dealer and the places he named.
 *
 * @param offered  languages the buyers may choose from, where those aren't all
 * @param inside  JSON of the catalogue where it stands in the lines themselves
 */
export const pasted = (base: Base, places: Places, script: Script | undefined, offered?: readonly string[], inside?: string) => snippet({
  script: addressOf(places, script), integrity: script?.integrity, catalogue: inside,
  attributes: { catalogue: inside === undefined ? places.catalogue : undefined, lang: base.dealer.locale.slice(0, 2), languages: offered?.join(' ') }, fallback: fallbackOf(base),
});

/** What a strict policy of the page has to allow for them. */
export const policyOf = (places: Places, script: Script | undefined) =>
  policyFor({ script: addressOf(places, script), catalogue: places.catalogue, ownFile: script !== undefined });
