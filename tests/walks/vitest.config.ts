import { defineConfig } from 'vitest/config';

/** Walks of the built demo in a real browser: few, slow, one after the other. */
export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: { include: ['tests/walks/**/*.test.ts'], testTimeout: 60_000, hookTimeout: 60_000, fileParallelism: false },
});
