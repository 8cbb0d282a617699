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
