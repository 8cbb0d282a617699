import { defineConfig } from 'vitest/config';

/** Walks of the built demo in a real browser: few and slow, two files at a time, each with a browser of its own. */
export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: { include: ['tests/walks/**/*.test.ts'], testTimeout: 60_000, hookTimeout: 60_000, maxWorkers: 2 },
});
