import type { Working } from '../../../src/trade/working.ts';
import type { Given } from '../given.ts';

/** Names of inputs that only these examples use. */
export type WorkInput = never;

export const workAndLoads = {
} satisfies Record<string, (given: Given) => Working | number>;
