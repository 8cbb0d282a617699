import { figures } from '../record.ts';

export const owning = figures({
});
