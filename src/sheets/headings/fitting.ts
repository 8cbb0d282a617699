import { availabilities } from '../../catalogue/schema.ts';
import { amount, choice, money, year, type Heading } from './heading.ts';

/** What is asked of everything a machine can be had with; `thing` is its word in the headings. */
export const fitting = (field: string, thing: string): readonly Heading[] => [
  { field: `${field}.availability`, heading: `${thing} availability`, takes: choice(...availabilities), example: 'field-kit', also: [thing] },
  { field: `${field}.years.from`, heading: `${thing} from year`, takes: year, example: '2018', ifBad: 'row' },
  { field: `${field}.years.to`, heading: `${thing} to year`, takes: year, example: '2022', ifBad: 'row' },
  { field: `${field}.mass`, heading: `${thing} mass`, takes: amount('mass'), example: '431 lb', also: [`${thing} weight`] },
  { field: `${field}.price`, heading: `${thing} price`, takes: money, example: '3350' },
  { field: `${field}.labourHours`, heading: `${thing} fitting hours`, takes: { as: 'hours' }, example: '2.5', also: [`${thing} labour hours`, `${thing} labor hours`] },
];
