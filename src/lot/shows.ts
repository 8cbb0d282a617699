import type { Dealer } from '../catalogue/catalogue.ts';

/** What sets a dealer's own prices beside each other, and buyers see only where he switched it on. */
export const shownToBuyers = ({ shows }: Pick<Dealer, 'shows'>, what: 'owningComparison' | 'askingContext'): boolean => shows?.[what] === true;
