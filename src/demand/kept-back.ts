import { fewest, type Counted } from './counted.ts';

/** Place of the least that may be told; undefined where none may. */
function leastTold(counts: readonly number[]): number | undefined {
  const least = Math.min(...counts.filter((count) => count >= fewest));
  return least === Infinity && !counts.includes(Infinity) ? undefined : counts.indexOf(least);
}

/**
 * Place of the part of a known whole that is kept back, lest the one small one be what is left of it; undefined where there is
 * none. Of two that aren't told neither can be worked out.
 */
function besideSmall(parts: readonly number[]): number | undefined {
  const small = parts.filter((count) => count < fewest);
  return small.length === 1 && small[0]! > 0 ? leastTold(parts) : undefined;
}

export interface KeptBack {
  served: ReadonlySet<'stands' | 'ask' | 'none'>;
  beyond: boolean;
  /** Place in the machines that come first. */
  first: number | undefined;
}

/**
 * Counts that may be told but for one thing: beside what is told of the wholes they are parts of, they would tell a small one. All who
 * were counted are served, to ask about or not served; those served have a machine that comes first; of those not served some
 * are beyond any machine.
 */
export function keptBackOf({ served: { stands, ask, none }, beyond, first }: Pick<Counted, 'served' | 'beyond' | 'first'>): KeptBack {
  // How many are served a dealer looks for first: it is kept back last. That it is nobody the empty list of machines tells.
  const place = besideSmall([ask, none, ...(stands === 0 ? [] : [stands < fewest ? stands : Infinity])]);
  const served = place === undefined ? [] : [(['ask', 'none', 'stands'] as const)[place]!];
  const firsts = first.map(([, buyers]) => buyers);
  return {
    served: new Set(served),
    beyond: none > beyond && none - beyond < fewest,
    // Those who are served must not add up either.
    first: besideSmall(firsts) ?? (served.includes('stands') ? leastTold(firsts) : undefined),
  };
}
