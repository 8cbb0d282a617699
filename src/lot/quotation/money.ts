/** Digits a currency is paid in behind the mark, by ISO 4217 as engines know it: 2 for dollars, 0 for yen. */
export const digitsOf = (currency: string) =>
  new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 0;

/** An amount to the coin, halves up. Amounts to the coin are added up by {@link sumOf} and nothing else. */
export function toCoin(amount: number, digits: number): number {
  const coins = Number(`1e${digits}`);
  // A half that a product of decimals misses by its last digit is a half still.
  return Math.round(Number((amount * coins).toPrecision(15))) / coins;
}

/** Sum of amounts to the coin, exact to the coin. */
export function sumOf(amounts: readonly number[], digits: number): number {
  const coins = Number(`1e${digits}`);
  return amounts.reduce((sum, amount) => sum + Math.round(amount * coins), 0) / coins;
}
