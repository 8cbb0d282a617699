/** A piece of HTML that is right as it stands. */
export class Markup {
  constructor(readonly text: string) {}
}

type Part = string | number | Markup | undefined | readonly Part[];

const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };
/** No page may hold these, nor what turns the direction of the text around it. */
const unwritable = /[\p{Cc}\p{Cs}\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu;

export const escaped = (text: string) => text.replaceAll(unwritable, '\ufffd').replaceAll(/[&<>"']/g, (sign) => signs[sign]!);

function written(part: Part): string {
  if (part === undefined) return '';
  if (part instanceof Markup) return part.text;
  return typeof part === 'object' ? part.map(written).join('') : escaped(String(part));
}

/**
 * HTML with what is put in escaped, for text and for attributes in double quotes alike.
 * @example html`<p title="${title}">${text}</p>`
 */
export const html = (fixed: TemplateStringsArray, ...parts: readonly Part[]) =>
  new Markup(fixed.map((text, index) => text + written(parts[index])).join(''));
