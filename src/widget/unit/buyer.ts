import type { AnswersDocument } from '../../answers/schema.ts';

/** What may be given in exchange: a closed list, for what somebody types gets on no paper. */
export const tradeInKinds = ['compact-tractor', 'larger-tractor', 'lawn-tractor', 'mower', 'utility-vehicle', 'implements', 'vehicle', 'other'] as const;
export type TradeInKind = (typeof tradeInKinds)[number];

/** What a buyer says beside one unit. It holds for all of them, as typed, as long as the page is open. */
export interface Buyer {
  how: 'delivered' | 'fetched';
  distance: string;
  tradeIn: TradeInKind | '';
  /** Undefined until typed: those of the answers count, or the rule book's. */
  years: string | undefined;
  hours: string | undefined;
  /** How he pays in what is compared: `own` at once, or which of the dealer's terms, by its place; undefined until chosen. */
  paying: string | undefined;
}

/** What his answers say of it already. */
export function buyerOf({ haul, budget }: AnswersDocument): Buyer {
  const { delivery } = haul ?? {};
  return {
    how: delivery === undefined && haul?.how === 'own-trailer' ? 'fetched' : 'delivered',
    // A postcode is no distance: then the dealer has to be asked.
    distance: typeof delivery === 'object' ? `${delivery.value} ${delivery.unit}` : '',
    tradeIn: budget?.tradeIn ? 'other' : '',
    years: undefined, hours: undefined, paying: undefined,
  };
}
