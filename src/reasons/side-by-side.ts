import { criteria } from '../answers/schema.ts';
import { narrowestTyres } from '../ranking/candidate.ts';
import type { Placed, Ranking } from '../ranking/rank.ts';
import type { Verdict } from '../ranking/verdict.ts';

/** What of a machine stands in a comparison whatever the buyer asked. */
export const comparedFacts = ['package', 'engine', 'pto', 'mass', 'width', 'height', 'length', 'hitch', 'units'] as const;
export type ComparedFact = (typeof comparedFacts)[number];

/** What one machine has in a row: how it was judged, a figure, or from one figure to another; nothing where it isn't known. */
export interface Cell {
  outcome?: Verdict['outcome'];
  figure?: { value: number; unit: string };
  to?: number;
}

/** One thing that machines are compared in; a fact, a need of the buyer's, or what the machine earns for a criterion. */
export interface ComparedRow {
  kind: 'fact' | 'need' | 'points';
  id: string;
  cells: Cell[];
}

const figureIn = (value: number | undefined, unit: string): Cell => (value === undefined ? {} : { figure: { value, unit } });

/** A machine in a row of facts, as it would be bought. */
function factOf(fact: ComparedFact, { machine, best: { build, price }, units }: Placed): Cell {
  switch (fact) {
    case 'package':
      return price ? { figure: { value: price.low, unit: 'money' }, ...(price.high !== price.low && { to: price.high }) } : {};
    case 'engine':
      return figureIn(machine.engine?.power, 'W');
    case 'pto':
      return figureIn(machine.engine?.ptoPower, 'W');
    case 'mass':
      return figureIn(machine.mass, 'kg');
    case 'width':
      return figureIn(narrowestTyres(build)?.widthOverRear, 'm');
    case 'height':
      return figureIn(build.cab ? machine.height?.cab : machine.height?.ropsUp, 'm');
    case 'length':
      return figureIn(build.loader ? machine.lengthWithLoader : machine.length, 'm');
    case 'hitch':
      return figureIn(machine.hitch?.lift610, 'kg');
    default:
      return { figure: { value: units.length, unit: 'count' } };
  }
}

function needCell(need: string, { best }: Placed): Cell {
  const verdict = best.judged.find((each) => each.need.id === need)?.verdict;
  if (!verdict) return {};
  const { outcome, has, unit } = verdict;
  // On a slope machines are compared, and no angle is ever shown.
  return { outcome, ...(has !== undefined && unit && unit !== 'rad' && { figure: { value: has, unit } }) };
}

/**
 * Machines that stand or are to be asked about, one beside the other: facts, the buyer's own needs, and what
 * each earns. What all have alike and without a figure says nothing, and is left out.
 *
 * @param ids  of two or more machines, in the order in which they are to stand
 */
export function sideBySide(ranking: Ranking, ids: readonly string[]): ComparedRow[] {
  const all = [...ranking.standing, ...ranking.toAsk];
  const placed = ids.flatMap((id) => all.find(({ machine }) => machine.id === id) ?? []);
  const row = (kind: ComparedRow['kind'], id: string, cellOf: (each: Placed) => Cell): ComparedRow => ({ kind, id, cells: placed.map(cellOf) });
  const rows = [
    ...comparedFacts.map((fact) => row('fact', fact, (each) => factOf(fact, each))),
    // The price stands above, with what the machine needs.
    ...ranking.needs.filter(({ capability }) => capability !== 'price').map(({ id }) => row('need', id, (each) => needCell(id, each))),
    ...criteria.filter((criterion) => ranking.weights[criterion] !== undefined).map((criterion) =>
      row('points', criterion, ({ best }) => figureIn(ranking.weights[criterion]! * (best.values[criterion]?.value ?? 0), 'ratio'))),
  ];
  return rows.filter(({ cells }) => cells.some(({ figure }) => figure !== undefined) || new Set(cells.map(({ outcome }) => outcome)).size > 1);
}
