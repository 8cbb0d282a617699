/** What to look at on a used tractor before it is bought: common practice, no source. */
export const checkIds = [
  'hours', 'service-record', 'serial-plate', 'rops', 'seat-belt', 'hydraulics', 'loader-pins', 'clutch', 'pto', 'tyres', 'recalls', 'liens',
] as const;
export type CheckId = (typeof checkIds)[number];

/** What only paper says in a language. What is missing fails the type check. */
export interface PaperWords {
  language: string;
  /** Under the code with the answers, and before its typed form. */
  scan: string;
  type: string;
  /** Said beside the line-up: how many times smaller than the machines it is. */
  scale(ratio: string): string;
  /** Heading of the sums that tell the machines apart. */
  deciding: string;
  gives(result: string): string;
  source(source: string): string;
  onlyNamed: {
    /** Machines that stand, or are to be asked about, and have no room of their own. */
    machines(names: string, count: number): string;
    reasons(count: number): string;
    drawbacks(count: number): string;
    sums(count: number): string;
    units(count: number): string;
    /** Said at the head where anything is left out. */
    sheet: Readonly<Record<'withCode' | 'alone', string>>;
  };
  checksHeading: string;
  checks: Readonly<Record<CheckId, string>>;
  form: {
    title: string;
    explained: string;
    /** Says what a second box, with a thick edge, is for. */
    secondBox: string;
    onlyIf(options: string): string;
    /** How options are put in order by pen. */
    number(places: string): string;
  };
}
