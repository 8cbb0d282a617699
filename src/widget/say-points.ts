import type { Reader } from '../units/show.ts';

/** A share of the score as points of a hundred. */
export const sayPoints = (share: number, { locale }: Reader) => new Intl.NumberFormat(locale, { maximumFractionDigits: 0 }).format(100 * share);
