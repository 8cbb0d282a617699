import { writeFileSync } from 'node:fs';
import { defaultReporter } from '@web/test-runner';
import { esbuildPlugin } from '@web/dev-server-esbuild';
import { playwrightLauncher } from '@web/test-runner-playwright';
import { findChromium } from './support/chromium.mjs';

const { executablePath, args } = await findChromium();

const countOf = (suite) => {
  const inner = suite.suites.map(countOf);
  return {
    numPassedTests: suite.tests.filter(({ passed }) => passed).length + inner.reduce((sum, each) => sum + each.numPassedTests, 0),
    numFailedTests: suite.tests.filter(({ passed }) => !passed).length + inner.reduce((sum, each) => sum + each.numFailedTests, 0),
  };
};

/** Writes the count of tests to the file the caller names; a session that broke is a failure. */
const counter = {
  onTestRunFinished({ sessions }) {
    const counts = [...sessions].map(({ testResults, errors, passed }) => {
      const count = testResults ? countOf(testResults) : { numPassedTests: 0, numFailedTests: 0 };
      return { ...count, numFailedTests: count.numFailedTests + (errors.length > 0 || (!passed && count.numFailedTests === 0) ? 1 : 0) };
    });
    const sum = (name) => counts.reduce((total, each) => total + each[name], 0);
    if (process.env.ACRE_REPORT) {
      writeFileSync(process.env.ACRE_REPORT, JSON.stringify({ numPassedTests: sum('numPassedTests'), numFailedTests: sum('numFailedTests') }));
    }
  },
};

/** A page reads no environment: how many hostile catalogues are tried comes to it as a module. */
const hostileRuns = {
  name: 'hostile-runs',
  serve: ({ path }) => (path === '/tests/widget/hostile-runs.js' ? { body: `export const runs = ${Number(process.env.HOSTILE ?? 2000)};`, type: 'js' } : undefined),
};

/** The sealing library looks for Node's cryptography where there is no browser's; in a browser it never gets so far. */
const noNodeCrypto = {
  name: 'no-node-crypto',
  resolveImport: ({ source }) => (source === 'crypto' ? '/there-is-no-node-here.js' : undefined),
};

export default {
  rootDir: new URL('..', import.meta.url).pathname,
  files: 'tests/**/*.browser.test.ts',
  nodeResolve: { exportConditions: ['production'] },
  plugins: [noNodeCrypto, hostileRuns, esbuildPlugin({ ts: true, target: 'es2022' })],
  browsers: [playwrightLauncher({ product: 'chromium', launchOptions: { executablePath, args } })],
  reporters: [defaultReporter({ reportTestProgress: false }), counter],
  // A test that hangs fails; one on a busy machine doesn't.
  testFramework: { config: { timeout: '20000' } },
  // All files of a machine that does other work too take longer than the two minutes that are usual.
  testsFinishTimeout: 600_000,
  concurrency: 2,
};
