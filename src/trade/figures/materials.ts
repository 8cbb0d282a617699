import { figures } from '../record.ts';

export const materials = figures({
});
