import { formatNumber } from '../units/formats.ts';
import type { Reader } from '../units/show.ts';

/** A share of the score as points of a hundred. */
export const sayPoints = (share: number, { locale }: Reader) => formatNumber(100 * share, locale, { maximumFractionDigits: 0 });
