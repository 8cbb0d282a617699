import { handOver } from '../widget/hand-over.ts';

/** A byte-order mark tells a spreadsheet that the table is UTF-8. */
const mark = '\uFEFF';
export const handOverTable = (name: string, text: string) => handOver(`${name}.csv`, 'text/csv', `${mark}${text}`);
