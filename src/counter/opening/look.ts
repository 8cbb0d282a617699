import { css } from 'lit';
import { handOnLook } from '../../widget/hand-on/look.ts';

/** Stands on the widget's own look. At a counter targets are 48 CSS pixels at least: people stand, hold a tablet and wear gloves. */
export const openingLook = css`
  ${handOnLook}
  .opening :is(button, input) { min-block-size: max(3em, 48px); }
  .opening input { max-inline-size: 34em; font-family: ui-monospace, monospace; }
  .camera { inline-size: min(100%, 30em); aspect-ratio: 4 / 3; object-fit: cover; background: #000; border: 1.5px solid var(--ink); border-radius: var(--radius); }
  .buyer-code .code { inline-size: min(100%, 20em); }
  .buyer-code dt { font-weight: 650; }
  .buyer-code dd + dt { margin-block-start: 0.6em; }
  .line { font-family: ui-monospace, monospace; overflow-wrap: anywhere; user-select: all; }
  .typed { font-size: 1.4em; overflow-wrap: normal; }
  @container (min-width: 38em) {
    .buyer-code .taken { grid-template-columns: 20em minmax(0, 1fr); }
  }
`;
