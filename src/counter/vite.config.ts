import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { defineConfig, type Plugin } from 'vite';
import { define, withoutStatements } from '../widget/build.config.ts';

const here = (path: string) => new URL(path, import.meta.url).pathname;

/** What the worker doesn't keep: itself, and what stands for it when it has to go. */
const workers = ['worker', 'kill-switch'] as const;

const hashOf = (bytes: Buffer) => `sha256-${createHash('sha256').update(bytes).digest('base64')}`;

/** Builds what keeps the page's files, with the hash of each, once all of them are written. */
const shell: Plugin = {
  name: 'counter-shell',
  writeBundle({ dir }) {
    const files = readdirSync(dir!).filter((file) => !workers.some((worker) => file === `${worker}.js`)).sort()
      .map((file) => [file, hashOf(readFileSync(join(dir!, file)))] as const);
    const stamp = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 16);
    for (const worker of workers) {
      const { outputFiles } = buildSync({
        entryPoints: [here(`shell/${worker}.ts`)], bundle: true, write: false, format: 'iife', target: 'es2022', minify: true,
        define: { FILES: JSON.stringify(files), STAMP: JSON.stringify(stamp) },
      });
      writeFileSync(join(dir!, `${worker}.js`), outputFiles[0]!.contents);
    }
  },
};

/** The counter as a folder to be put on a site whole: its page, its scripts, its icons, and the worker that keeps them on the device. */
export default defineConfig({
  define,
  plugins: [withoutStatements, shell],
  // Where a library asks Node for its crypto, it is told of the browser's.
  resolve: { alias: { crypto: here('shell/crypto.ts') } },
  publicDir: here('shell/public'),
  build: {
    target: 'es2022',
    outDir: here('../../dist/counter'),
    emptyOutDir: true,
    modulePreload: false,
    rollupOptions: {
      input: { 'acre-to-axle-counter': here('define.ts'), 'acre-to-axle-counter-reckoning': here('reckoning/worker.ts') },
      output: { entryFileNames: '[name].js', chunkFileNames: 'acre-to-axle-counter-[name]-[hash].js' },
    },
  },
  logLevel: 'warn',
});
