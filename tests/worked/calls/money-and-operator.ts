import type { Working } from '../../../src/trade/working.ts';
import type { Given } from '../given.ts';

/** Names of inputs that only these examples use. */
export type MoneyInput = never;

export const moneyAndOperator = {
} satisfies Record<string, (given: Given) => Working | number>;
