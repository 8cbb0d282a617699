/** Columns of the table behind the chart. */
const rowsOfTable = 7;

export interface ChartPoint {
  hoursPerYear: number;
  perYear: number;
  low: number;
  high: number;
}

/** What each of several costs a year by the hours run in it, in the dealer's currency. */
export interface OwningChart {
  /** By candidate in the order compared; all over the same hours. */
  series: readonly (readonly ChartPoint[])[];
  /** The buyer's own hours a year. */
  own: number;
  /** Hours a year at which two change places. */
  crossings: readonly number[];
}

/** One row for each number of hours: what each costs a year, and an hour. */
export interface ChartRow {
  hoursPerYear: number;
  costs: readonly { perYear: number; perHour: number; low: number; high: number }[];
}

/** Round hours over a range, the buyer's own and the changes of order among them. */
export function hoursOfChart(from: number, to: number, own: number, crossings: readonly number[]): number[] {
  const step = (to - from) / (rowsOfTable - 1);
  const even = Array.from({ length: rowsOfTable }, (_, row) => from + step * row);
  return [...new Set([...even, own, ...crossings])].filter((hours) => hours > 0).sort((a, b) => a - b);
}

/** The table behind a chart: it says all the chart shows. */
export const tableOf = ({ series }: OwningChart): ChartRow[] => (series[0] ?? []).map(({ hoursPerYear }, row) => ({
  hoursPerYear,
  costs: series.map((points) => {
    const { perYear, low, high } = points[row]!;
    return { perYear, perHour: perYear / hoursPerYear, low, high };
  }),
}));
