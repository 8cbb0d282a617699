import { isAddress } from '../../documents/mail-address.ts';
import { shorter, whole } from '../letter/extent.ts';
import { letterOf, type Letter } from '../letter/letter.ts';
import type { Telling } from '../letter/telling.ts';

/** Signs of an address that browsers and mail programs hand on whole. */
export const longestMailto = 2_000;

/** What RFC 6068 wants escaped, and apostrophes besides, which would end an attribute. */
const escaped = (text: string) => encodeURIComponent(text).replaceAll("'", '%27');
/** The at sign stands as it is; whatever else an address may hold is escaped. */
const recipient = (to: string | undefined) => (to !== undefined && isAddress(to) ? to.split('@').map(escaped).join('@') : '');

/** Marks that a typewriter has too: each of the finer ones takes nine signs of a link, in whose room another reason may stand. */
const plainMarks: readonly (readonly [RegExp, string])[] = [[/[\u00a0\u202f]/g, ' '], [/[‘’]/g, "'"], [/[“”„]/g, '"'], [/[–—]/g, '-']];
const plain = (text: string) => plainMarks.reduce((all, [fine, mark]) => all.replace(fine, mark), text);

const linkOf = ({ subject, lines }: Letter, to: string | undefined) =>
  `mailto:${recipient(to)}?subject=${escaped(plain(subject))}&body=${escaped(plain(lines.join('\r\n')))}`;

/** A link that opens a mail, and whether the mail tells less than the whole; or that there is no room for the least. */
export type Mailto = { href: string; isShortened: boolean } | 'no-room';

/**
 * A `mailto:` link (RFC 6068) with the shortlist as text. Where the whole has no room, it tells less and says so; the
 * terms, what isn't cleared and the cautions of all work are never left out.
 *
 * @param to  one address; left out, the mail program asks
 */
export function mailto(telling: Telling, to?: string): Mailto {
  for (const extent of [whole, ...shorter]) {
    const href = linkOf(letterOf(telling, extent), to);
    if (href.length <= longestMailto) return { href, isShortened: extent !== whole };
  }
  return 'no-room';
}
