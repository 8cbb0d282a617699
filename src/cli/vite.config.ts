import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const { version } = JSON.parse(readFileSync(here('../../package.json'), 'utf8')) as { version: string };

/** The relay is built for itself, with packages this file does without; it lies beside it. */
const relayBeside = {
  name: 'relay-beside',
  enforce: 'pre' as const,
  resolveId: (id: string) => (id.endsWith('/relay/main.ts') ? { id: '../relay/acre-to-axle-relay.js', external: true } : undefined),
};

/** The command line as one file for Node, dependencies bundled in: it starts faster and needs no install. */
export default defineConfig({
  publicDir: false,
  plugins: [relayBeside],
  define: { VERSION: JSON.stringify(version) },
  build: {
    target: 'node20',
    ssr: true,
    outDir: here('../../dist/cli'),
    emptyOutDir: true,
    rollupOptions: {
      input: here('main.ts'),
      // No names of folders in what is built: wherever it is built, it is the same.
      experimental: { attachDebugInfo: 'none' },
      output: { entryFileNames: 'acre-to-axle.js', banner: '#!/usr/bin/env node' },
    },
  },
  ssr: { noExternal: true, target: 'node' },
  logLevel: 'warn',
});
