import { even, type Coder, type Odds } from './numeral.ts';

/** Significant digits of a number, none of zero; beyond the most a number has, one counted in sixtieths. */
const digitOdds: Odds = [1, 40, 46, 16, 8, 4, 2, 2, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 2];
const inSixtieths = digitOdds.length - 1;

/** Powers of ten behind the digits, as people type them, the likeliest first; the last stands for any other. */
const commonPowers = [0, 3, 1, 2, -1, -2, 4, -3, 5, -4] as const;
const powerOdds: Odds = [16, 10, 10, 10, 10, 4, 4, 1, 1, 1, 1];
/** The powers a number of a document may have: from the least that is told from zero. */
const leastPower = -324;
const otherPowers = even(308 - leastPower + 1);

/** Parts of an inch or of an hour are typed with twelve digits' worth of exactness. */
const typedPrecision = 12;
const parts = 60;
const worthIt = 7;

const ofSixtieths = (count: number) => Number((count / parts).toPrecision(typedPrecision));

/** The shortest digits that give the number back, and the power of ten behind them. */
function digitsOf(value: number) {
  const [mantissa, exponent] = value.toExponential().split('e') as [string, string];
  const digits = value === 0 ? '' : mantissa.replace('.', '');
  return { digits, power: Number(exponent) - digits.length + 1 };
}

function codeDigit(coder: Coder, place: number, count: number, digit: string | undefined): string {
  // Neither the first digit nor the last is a nought: the power says how many stand behind.
  const least = place === 0 || place === count - 1 ? 1 : 0;
  return String(least + coder.choose(even(10 - least), digit === undefined ? undefined : Number(digit) - least));
}

function codePower(coder: Coder, power: number | undefined): number {
  const found = power === undefined ? undefined : (commonPowers as readonly number[]).indexOf(power);
  const index = coder.choose(powerOdds, found === -1 ? commonPowers.length : found);
  return commonPowers[index] ?? leastPower + coder.choose(otherPowers, power === undefined ? undefined : power - leastPower);
}

/**
 * A number of zero or more, to its last digit: six feet eight, kept as 6.66666666667 ft, is counted in sixtieths.
 *
 * @param value  undefined while reading
 * @returns a number that isn't finite only where what is read was never written
 */
export function codeNumber(coder: Coder, value: number | undefined): number {
  const written = value === undefined ? undefined : digitsOf(value);
  const sixtieths = value === undefined ? 0 : Math.round(value * parts);
  const isShorter = written !== undefined && written.digits.length >= worthIt && ofSixtieths(sixtieths) === value && digitsOf(sixtieths).digits.length < worthIt;
  const count = coder.choose(digitOdds, isShorter ? inSixtieths : written?.digits.length);
  if (count === inSixtieths) return ofSixtieths(codeNumber(coder, value === undefined ? undefined : sixtieths));
  if (count === 0) return 0;
  let digits = '';
  for (let place = 0; place < count; place++) digits += codeDigit(coder, place, count, written?.digits[place]);
  return Number(`${digits}e${codePower(coder, written?.power)}`);
}
