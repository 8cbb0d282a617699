import { formulas } from '../record.ts';

export const moneyFormulas = formulas({
});
