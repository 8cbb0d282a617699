import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** Faults of the list a relay and its form are built against, 1 to 48. */
const all = Array.from({ length: 48 }, (_, index) => index + 1);

const tests = new URL('../', import.meta.url);
const files = readdirSync(tests, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.test.ts') || path.endsWith('-suite.ts')).filter((path) => !path.endsWith('faults-list.test.ts'));

/** Numbers in the names of tests: `fault 38: …`, `faults 9 and 16: …`, `fault 24, 25`. */
export const faultsIn = (text: string): number[] => [...text.matchAll(/\bfaults? ((?:\d{1,2})(?:(?:, | and |–)\d{1,2})*)/g)].flatMap(([, list]) => {
  const range = /^(\d+)–(\d+)$/.exec(list!);
  if (range) return all.slice(Number(range[1]) - 1, Number(range[2]));
  return list!.split(/, | and /).map(Number);
});

/** Texts that begin with a fault: that is how a test is named for one. */
const namesIn = (text: string) => [...text.matchAll(/(?<=\(|describe\()['"`](faults? \d[^'"`\n]*)/g)].map(([, name]) => name!);

const named = new Set(files.flatMap((file) => namesIn(readFileSync(new URL(file, tests), 'utf8')).flatMap(faultsIn)));

test('every fault of the list has a test that names it', () => {
  expect(all.filter((fault) => !named.has(fault))).toEqual([]);
});

test('control: numbers are read from names alone, however many stand in one', () => {
  expect(namesIn("test('fault 7: a', f); // fault 8\ntest.each(rows)('faults 9 and 10: %s', f); describe(\"fault 11\", g)").flatMap(faultsIn)).toEqual([7, 9, 10, 11]);
  expect(faultsIn('faults 2, 3 and 5')).toEqual([2, 3, 5]);
  expect(faultsIn('faults 44–46')).toEqual([44, 45, 46]);
  expect(faultsIn('a default 12')).toEqual([]);
});
