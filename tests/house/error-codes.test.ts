import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const all = (text: string, pattern: RegExp) => [...text.matchAll(pattern)].map(([, word]) => word!).sort();

test('the README’s table tells of every code of acre-error, what the buyer reads and what to do, and of no other', () => {
  const rows = [...read('README.md').matchAll(/^\| `([a-z]+\.[a-z-]+)` \|(.+)\|(.+)\|$/gm)];
  expect(rows.map(([, code]) => code!).sort()).toEqual(all(/type AcreErrorCode =([^;]+);/.exec(read('src/widget/events.ts'))![1]!, /'([^']+)'/g));
  for (const [, code, buyer, remedy] of rows) expect(`${buyer}${remedy}`.length, code).toBeGreaterThan(20);
});
