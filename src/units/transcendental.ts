/**
 * The only calls to functions whose last digits engines may compute differently. Each result is cut to
 * 12 significant digits, so that the same answers give the same bytes in every browser and in Node.
 * (`Math.sqrt` is exact by IEEE 754 and needs no such care.)
 */
const steady = (value: number) => Number(value.toPrecision(12));

/** Tangent of an angle in radians. */
export const tan = (angle: number) => steady(Math.tan(angle));
/** Angle in radians whose tangent is given. */
export const atan = (ratio: number) => steady(Math.atan(ratio));
/** Cube root. */
export const cubeRoot = (value: number) => steady(Math.cbrt(value));

/** Natural logarithm of a number above zero. */
export const logarithm = (value: number) => steady(Math.log(value));
/** The number whose natural logarithm is given. */
export const exponential = (value: number) => steady(Math.exp(value));

/** Square and multiply: nothing but multiplications, which IEEE 754 makes the same everywhere. */
function wholePower(base: number, exponent: number): number {
  let [power, square] = [1, base];
  for (let rest = exponent; rest > 0; rest = Math.floor(rest / 2)) {
    if (rest % 2 === 1) power *= square;
    square *= square;
  }
  return power;
}

/**
 * A power of a base above zero: with a whole exponent by multiplication alone, with any other cut as the rest.
 * @example power(1.5, 2) // 2.25
 */
export function power(base: number, exponent: number): number {
  if (!Number.isSafeInteger(exponent)) return steady(base ** exponent);
  return exponent < 0 ? 1 / wholePower(base, -exponent) : wholePower(base, exponent);
}

/**
 * A root of a number from 0 to 1, by Newton's steps down from 1: nothing but sums, products and quotients, the
 * same everywhere.
 * @example root(0.25, 2) // 0.5
 */
export function root(value: number, degree: number): number {
  let before = 2, now = 1;
  while (now < before) {
    before = now;
    let quotient = value;
    for (let factor = 1; factor < degree; factor++) quotient /= before;
    now = ((degree - 1) * before + quotient) / degree;
  }
  return before;
}
