import type { WorkedCase } from '../worked-case.ts';

export const moneyAndOperator: WorkedCase[] = [
];
