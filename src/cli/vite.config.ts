import { defineConfig } from 'vite';

/** The command line as one file for Node, dependencies bundled in: it starts faster and needs no install. */
export default defineConfig({
  build: {
    target: 'node20',
    ssr: true,
    outDir: new URL('../../dist/cli', import.meta.url).pathname,
    emptyOutDir: true,
    rollupOptions: {
      input: new URL('main.ts', import.meta.url).pathname,
      output: { entryFileNames: 'acre-to-axle.js', banner: '#!/usr/bin/env node' },
    },
  },
  ssr: { noExternal: true, target: 'node' },
  logLevel: 'warn',
});
