import type { Base } from '../sheets/sheets.ts';

/** A catalogue to begin with: nobody's, with nothing in it. */
export const blankBase: Base = { format: 'acre-to-axle/catalogue/1', id: 'my-lot', dealer: { name: 'My lot', currency: 'USD', units: 'us', locale: 'en-US' }, frames: [] };
