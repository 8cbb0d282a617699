import { factors } from '../units/quantity.ts';

const steps = { us: [1, 2, 5, 10, 20].map((feet) => feet * factors.length.ft), metric: [0.5, 1, 2, 5, 10] } as const;
const longest = 130;

/** The longest round length that still makes a short bar [m]. */
export function scaleBar(scale: number, units: 'us' | 'metric') {
  const lengths: readonly number[] = steps[units];
  return lengths.findLast((step) => step * scale <= longest) ?? lengths[0]!;
}
