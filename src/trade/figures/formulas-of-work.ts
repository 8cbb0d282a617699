import { formulas } from '../record.ts';

export const workFormulas = formulas({
});
