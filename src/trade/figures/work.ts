import { figures } from '../record.ts';

export const work = figures({
});
