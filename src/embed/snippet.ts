/** What a page needs to show the wizard: the script by its address and hash, the tag, and what stands there without it. */
export interface Embedding {
  /** Address of the script. */
  script: string;
  /** Hash of the script as `integrity` takes it; a script of several files can't be held to one and has none. */
  integrity?: string | undefined;
  /** Attributes of the tag, by name; one without a value is left out. */
  attributes: Readonly<Record<string, string | undefined>>;
  /** JSON of a catalogue that stands inside the tag, for a site that takes no such file. */
  catalogue?: string | undefined;
  /** Words shown where the script doesn't run, each a paragraph; a link where it has an address. */
  fallback: readonly { text: string; href?: string | undefined }[];
}

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string) => text.replace(/[&<>"]/g, (mark) => escapes[mark]!);

const attributesOf = (attributes: Readonly<Record<string, string | undefined>>) =>
  Object.entries(attributes).flatMap(([name, value]) => (value === undefined ? [] : [` ${name}="${escaped(value)}"`])).join('');

/** @returns HTML to paste into a page, as lines. */
export function snippet({ script, integrity, attributes, catalogue, fallback }: Embedding): string {
  const told = fallback.map(({ text, href }) => `  <p>${href === undefined ? escaped(text) : `<a href="${escaped(href)}">${escaped(text)}</a>`}</p>`);
  return [
    `<script type="module"${attributesOf({ src: script, integrity, crossorigin: integrity && 'anonymous' })}></script>`,
    '',
    `<acre-to-axle${attributesOf(attributes)}>`,
    // Nothing a catalogue says may end the script it stands in.
    ...(catalogue === undefined ? [] : [`  <script type="application/json">${catalogue.replaceAll('<', String.raw`\u003c`)}</script>`]),
    ...told,
    '</acre-to-axle>',
    '',
  ].join('\n');
}

/** @returns the directives a strict content security policy needs for it, the rest of the page's own aside. */
export function policyFor({ script, catalogue, ownFile }: { script: string; catalogue: string; ownFile: boolean }): string {
  const source = (address: string) => (/^https?:\/\//.test(address) ? new URL(address).origin : "'self'");
  return [
    `script-src ${source(script)}`,
    "style-src 'self'",
    `connect-src ${source(catalogue)}`,
    "require-trusted-types-for 'script'",
    `trusted-types lit-html${ownFile ? ' acre-to-axle' : ''}`,
  ].join('; ');
}
