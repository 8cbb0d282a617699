/** Times and sizes for the benches. Of ranking, processor time, for the machine may be busy with something else. */

const clock = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1_000;
};

const enough = 400;
/** The time that a share of all isn't longer than. */
export const quantile = (times: readonly number[], share: number) =>
  [...times].sort((a, b) => a - b)[Math.min(times.length - 1, Math.floor(times.length * share))]!;
const middle = (times: readonly number[]) => quantile(times, 0.5);

/**
 * Median of processor time [ms], each sample long enough for the clock, after the code has warmed up.
 */
export function medianOf(run: () => Promise<unknown>): Promise<number>;
export function medianOf(run: () => unknown): number;
export function medianOf(run: () => unknown): number | Promise<number> {
  const first = run();
  return first instanceof Promise ? inTurn(run as () => Promise<unknown>, first) : atOnce(run);
}

const samples = 9;

function atOnce(run: () => unknown): number {
  globalThis.gc?.();
  const before = clock();
  let rounds = 0;
  do {
    run();
    rounds += 1;
  } while (clock() - before < enough / 4 && rounds < 10_000);
  const each = Math.max(1, Math.round(rounds / 4));
  return middle(Array.from({ length: samples }, () => {
    const start = clock();
    for (let round = 0; round < each; round++) run();
    return (clock() - start) / each;
  }));
}

async function inTurn(run: () => Promise<unknown>, first: Promise<unknown>): Promise<number> {
  await first;
  const times: number[] = [];
  for (let sample = 0; sample < 5; sample++) {
    const start = clock();
    await run();
    times.push(clock() - start);
  }
  return middle(times);
}

/** Bytes on the heap that something made keeps. */
export function heapAfter<T>(make: () => T): { made: T; bytes: number } {
  globalThis.gc?.();
  const before = process.memoryUsage().heapUsed;
  const made = make();
  globalThis.gc?.();
  return { made, bytes: process.memoryUsage().heapUsed - before };
}

export const shown = (ms: number | undefined) => (ms === undefined ? '–' : ms < 1 ? ms.toFixed(3) : ms.toFixed(1));
export const ratio = (a: number, b: number) => `${(a / b).toFixed(a / b < 10 ? 1 : 0)} ×`;
export const line = (...cells: readonly (readonly [text: string, width: number])[]) => cells.map(([text, width]) => text.padStart(width)).join('  ');
