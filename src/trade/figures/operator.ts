import { figures } from '../record.ts';

export const operator = figures({
});
