import { createHash } from 'node:crypto';
import type { PageWords, SaidPage } from './words/words.ts';

const escaped = (text: string) => text.replace(/[&<>"']/g, (sign) => `&#${sign.codePointAt(0)};`);

const style = ':root{color-scheme:light dark;font:1.125rem/1.5 system-ui,sans-serif}body{max-inline-size:34rem;margin:10vh auto;padding:0 1rem}h1{font-size:1.5rem;line-height:1.25}button{font:inherit;font-weight:600;min-block-size:2.75rem;padding:.5rem 1.25rem;cursor:pointer}';
const styleHash = `'sha256-${createHash('sha256').update(style).digest('base64')}'`;

/** Nothing but its own style and its own button. */
export const pagePolicy = `default-src 'none'; style-src ${styleHash}; form-action 'self'; base-uri 'none'; frame-ancestors 'none'`;

/** What a provider's button sends, and ours sends as well (RFC 8058, section 3.2). */
const oneClick = '<input type="hidden" name="List-Unsubscribe" value="One-Click">';

/** A page as HTML. Its form goes to the address it was had from: no token stands in it. */
export const pageOf = ({ title, says, button }: SaidPage, { language }: PageWords): string => [
  `<!doctype html><html lang="${language}"><meta charset="utf-8"><meta name="viewport" content="width=device-width">`,
  `<meta name="robots" content="noindex"><title>${escaped(title)}</title><style>${style}</style>`,
  `<main><h1>${escaped(title)}</h1><p>${escaped(says)}</p>`,
  ...(button ? [`<form method="post">${oneClick}<button>${escaped(button)}</button></form>`] : []),
  '</main></html>\n',
].join('');
