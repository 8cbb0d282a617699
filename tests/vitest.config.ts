import { defineConfig } from 'vitest/config';

/** Two files at a time, as the smallest machine we count on has two processors; a test that hangs fails, one on a busy machine doesn't. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: { include: ['tests/**/*.test.ts'], exclude: ['tests/**/*.browser.test.ts', 'tests/walks/**'], maxWorkers: 2, testTimeout: 30_000 },
});
