import { Engine } from 'json-rules-engine';
import type { Evaluation } from '../../src/ranking/evaluate.ts';

/** How each unit comes out of each must that rules out: a column a must, 1 where it isn't failed. */
export const gatesOf = (evaluations: readonly Evaluation[]): Float64Array[] =>
  evaluations[0]!.judged.flatMap(({ need }, must) =>
    (need.must ? [Float64Array.from(evaluations, ({ judged }) => (judged[must]!.verdict.outcome === 'failed' ? 0 : 1))] : []));

/** The floor: every gate of every unit compared in typed arrays, and nothing else done. Gives how many pass. */
export function typedLoop(gates: readonly Float64Array[]): number {
  const open = new Uint8Array(gates[0]!.length).fill(1);
  for (const gate of gates) for (let unit = 0; unit < open.length; unit++) if (gate[unit]! < 1) open[unit] = 0;
  return open.reduce((sum, each) => sum + each, 0);
}

/** A general rule engine asked the same of each unit: all its gates in one rule. */
export function ruleEngine(gates: readonly Float64Array[]): () => Promise<number> {
  const names = gates.map((_, gate) => `gate${gate}`);
  const rows = Array.from(gates[0]!, (_, unit) => Object.fromEntries(names.map((name, gate) => [name, gates[gate]![unit]!])));
  const all = names.map((fact) => ({ fact, operator: 'greaterThanInclusive', value: 1 }));
  const engine = new Engine([{ conditions: { all }, event: { type: 'passes' } }]);
  return async () => {
    let passing = 0;
    for (const row of rows) if ((await engine.run(row)).events.length > 0) passing += 1;
    return passing;
  };
}

type Six = [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];

/** The floor for weightings: scores of rows of six values, typed and unrolled. Gives how often each row comes first. */
export function weightedLoop(columns: readonly Float64Array[], weights: readonly Float64Array[]): Float64Array {
  const [a, b, c, d, e, f] = columns as Six;
  const first = new Float64Array(a.length);
  for (let point = 0; point < weights[0]!.length; point++) {
    const [wa, wb, wc, wd, we, wf] = weights.map((column) => column[point]!) as [number, number, number, number, number, number];
    let best = -1;
    let at = 0;
    for (let row = 0; row < a.length; row++) {
      const score = wa * a[row]! + wb * b[row]! + wc * c[row]! + wd * d[row]! + we * e[row]! + wf * f[row]!;
      if (score > best) {
        best = score;
        at = row;
      }
    }
    first[at]! += 1;
  }
  return first;
}
