import { defineConfig } from 'vitest/config';
import { longestFirst } from '../support/longest-first.ts';

const long = ['axe.test.ts', 'package.test.ts', 'hosts.test.ts', 'paper.test.ts', 'scripted-buyers.test.ts', 'counter.test.ts', 'unit.test.ts', 'wizard.test.ts'];

/** Walks of the built demo in a real browser: few and slow, two files at a time, each with a browser of its own. What hangs fails; what a busy machine is slow with doesn't. */
export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: { include: ['tests/walks/**/*.test.ts'], testTimeout: 120_000, hookTimeout: 120_000, expect: { poll: { timeout: 15_000 } }, maxWorkers: 2, sequence: { sequencer: longestFirst(long) } },
});
