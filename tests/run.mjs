/** One command from a fresh clone to all tests: installs, checks, builds, runs, and ends with a count. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { install } from '../demo/setup.mjs';
import { findChromium } from './support/chromium.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'acre-to-axle-'));
let passed = 0;
let failed = 0;

const start = (command, args, env = {}) =>
  spawnSync(command, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env }, shell: process.platform === 'win32' }).status === 0;

/** A check that is one thing: it passes or fails. */
function check(name, args) {
  console.log(`\n── ${name}`);
  const well = start('npx', ['--no-install', ...args]);
  if (well) passed += 1;
  else failed += 1;
  return well;
}

/** A suite that counts its own tests into a file; one that ends badly without a count is one failure. */
function suite(name, args, file, env) {
  console.log(`\n── ${name}`);
  const report = join(folder, file);
  const well = start('npx', ['--no-install', ...args(report)], env?.(report));
  try {
    const counts = JSON.parse(readFileSync(report, 'utf8'));
    passed += counts.numPassedTests;
    failed += counts.numFailedTests + (counts.numFailedTests === 0 && !well ? 1 : 0);
  } catch {
    failed += 1;
  }
}

const vitest = (config) => (report) => ['vitest', 'run', '--config', config, '--reporter=default', '--reporter=json', `--outputFile.json=${report}`];

await install();
// Found, or fetched, once for all: a run without a browser says so at the start.
await findChromium();
check('types', ['tsc', '--noEmit']);
check('lint', ['oxlint', '--config', 'src/.oxlintrc.json', 'src', 'tests', 'demo']);
if (check('build: widget', ['vite', 'build', '--config', 'src/widget/vite.config.ts']) && check('build: command line', ['vite', 'build', '--config', 'src/cli/vite.config.ts']) && check('build: set-up page', ['vite', 'build', '--config', 'src/setup/vite.config.ts']) && check('build: counter', ['vite', 'build', '--config', 'src/counter/vite.config.ts']) && check('build: relay', ['vite', 'build', '--config', 'src/relay/vite.config.ts'])) {
  suite('tests in Node', vitest('tests/vitest.config.ts'), 'node.json');
  suite('tests in a browser', () => ['wtr', '--config', 'tests/web-test-runner.config.mjs'], 'browser.json', (report) => ({ ACRE_REPORT: report }));
  suite('walks of the demo in a browser', vitest('tests/walks/vitest.config.ts'), 'walks.json');
}
rmSync(folder, { recursive: true, force: true });

console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed > 0 || passed === 0 ? 1 : 0);
