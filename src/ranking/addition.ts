import type { Quantity } from '../units/quantity.ts';

/** Something bought to make a candidate satisfy the needs. */
export interface Addition {
  what: 'loader' | 'deck' | 'mid-pto' | 'cab' | 'backhoe' | 'implement' | 'rear-ballast' | 'front-ballast' | 'feature';
  /** Id of the loader, deck, cab or implement in the catalogue, or the wish a feature answers. */
  id?: string;
  /** In the dealer's currency; absent where it must be asked. */
  price?: number;
  labourHours?: number;
  /** It is fitted later, and nobody said how long that takes: the labour must be asked. */
  labourAsked?: true;
  mass?: Quantity<'mass'>;
  /** Ids of the needs it is for. */
  for: readonly string[];
}

/** The heaviest of one sort among what is bought, or nothing [kg]. */
export const heaviest = (additions: readonly Addition[], what: Addition['what']) =>
  additions.reduce((most, each) => (each.what === what ? Math.max(most, each.mass ?? 0) : most), 0);
