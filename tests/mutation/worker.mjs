/** Wakes one mutant after the other and runs the tests until one notices it. Started by `run.mjs`. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import fc from 'fast-check';
import { found } from './vitest-in-brief.mjs';

const bundles = process.argv[2];
// The worked examples first: they notice most, and soonest.
const files = readdirSync(bundles, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.mjs')).sort().reverse();
// The same draws in every run: a mutant that is noticed once is noticed always.
fc.configureGlobal({ seed: 1 });

/** The first failure, or undefined; each mutant gets modules of its own, for what is reckoned as they load. */
async function failureWith(id) {
  // The name under which Stryker's mutants look for the one that is awake; a loop without end is cut off.
  globalThis.__stryker__ = { activeMutant: id, hitCount: 0, hitLimit: 3e6 };
  try {
    for (const file of files) {
      found.length = 0;
      await import(`${pathToFileURL(join(bundles, file)).href}?mutant=${id}`);
      for (const { run } of found) await run();
    }
    return undefined;
  } catch (error) {
    return String(error instanceof Error ? error.stack : error);
  }
}

process.on('message', async (id) => process.send({ id, failure: await failureWith(id) }));
process.send({});
