/**
 * Points spread evenly over a cube, by whole numbers alone and so the same everywhere: the first 1,024 of
 * Sobol's sequence in six dimensions.
 *
 * @see Joe and Kuo 2008, Constructing Sobol sequences with better two-dimensional projections
 */
const bits = 10;
/** How many points there are; over a power of two they are spread most evenly. */
export const sobolCount = 1 << bits;

/** Primitive polynomials and first direction numbers, from the second dimension on; the first has none. */
const polynomials = [
  { degree: 1, inner: 0, first: [1] },
  { degree: 2, inner: 1, first: [1, 3] },
  { degree: 3, inner: 1, first: [1, 3, 1] },
  { degree: 3, inner: 2, first: [1, 1, 1] },
  { degree: 4, inner: 1, first: [1, 1, 3, 3] },
];

function directionsOf({ degree, inner, first }: (typeof polynomials)[number]): number[] {
  const numbers = first.map((each, bit) => each << (bits - 1 - bit));
  for (let bit = degree; bit < bits; bit++) {
    let number = numbers[bit - degree]! ^ (numbers[bit - degree]! >> degree);
    for (let back = 1; back < degree; back++) if ((inner >> (degree - 1 - back)) & 1) number ^= numbers[bit - back]!;
    numbers.push(number);
  }
  return numbers;
}

const directions = [Array.from({ length: bits }, (_, bit) => 1 << (bits - 1 - bit)), ...polynomials.map(directionsOf)];

/** By dimension the cell each point lies in, of as many cells as there are points: each once. */
export const sobolCells: readonly Uint16Array[] = directions.map((numbers) => {
  const cells = new Uint16Array(sobolCount);
  for (let point = 1; point < sobolCount; point++) cells[point] = cells[point & (point - 1)]! ^ numbers[31 - Math.clz32(point & -point)]!;
  return cells;
});

/** A coordinate in the middle of its cell, so never 0 nor 1. */
export const middleOf = (cell: number) => (cell + 0.5) / sobolCount;
