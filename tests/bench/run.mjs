/** Builds the benches as the product is built and runs them one after the other: `npm run bench [-- name]`. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));
const all = ['ranking', 'wizard', 'relay', 'relay-kill'];
/** What finds its own files on the disk is left where it is. */
const external = ['playwright-core', 'vite', 'esbuild', './tests/support/chromium.mjs', 'better-sqlite3', 'fastify'];
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !all.includes(name));
if (unknown.length > 0) {
  console.error(`No bench called ${unknown.join(', ')}. There is: ${all.join(', ')}.`);
  process.exit(2);
}
// Within the project, so that what is left outside of a bundle is found.
const cache = join(root, '.cache');
mkdirSync(cache, { recursive: true });
const folder = mkdtempSync(join(cache, 'bench-'));
try {
  for (const name of asked.length > 0 ? asked : all) {
    const outfile = join(folder, `${name}.mjs`);
    await build({
      absWorkingDir: root, entryPoints: [`tests/bench/${name}.ts`], outfile, external, bundle: true, platform: 'node', format: 'esm', logLevel: 'error',
      banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" },
    });
    const { status, signal } = spawnSync(process.execPath, ['--expose-gc', outfile], { cwd: root, stdio: 'inherit' });
    if (signal) console.error(`The bench ${name} was ended by ${signal}.`);
    if (status !== 0) process.exitCode = status ?? 1;
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
