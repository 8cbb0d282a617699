import { html, nothing } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { qrSvg } from '../../handoff/qr.ts';

/**
 * The QR code of a link, dark on white whatever is around it.
 *
 * @param title  what it is, for who can't see it
 */
export const codeTemplate = (link: string, title: string) => guard([link, title], () => {
  const drawn = qrSvg(link, title);
  return drawn === undefined ? nothing : html`<div class="code">${unsafeSVG(drawn)}</div>`;
});
