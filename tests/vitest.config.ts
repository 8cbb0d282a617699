import { defineConfig } from 'vitest/config';
import { longestFirst } from './support/longest-first.ts';

const long = ['relay/kill.test.ts', 'relay/fuzz.test.ts', 'ranking/order.test.ts', 'ranking/reckoning-properties.test.ts', 'cli/any-answers.test.ts', 'relay/server-resources.test.ts', 'relay/postgres-kill.test.ts'];

/** Two files at a time, as the smallest machine we count on has two processors; a test that hangs fails, one on a busy machine doesn't. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: { include: ['tests/**/*.test.ts'], exclude: ['tests/**/*.browser.test.ts', 'tests/walks/**'], maxWorkers: 2, sequence: { sequencer: longestFirst(long) }, testTimeout: 30_000 },
});
