import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const { optionalDependencies } = JSON.parse(readFileSync(here('../../package.json'), 'utf8')) as { optionalDependencies: Record<string, string> };
const installed = Object.keys(optionalDependencies);

/** The relay for Node, beside the command line, which loads it when it is asked for: what listens and sends, and the thread that makes mails. Its packages stay packages, for one of them is compiled. */
export default defineConfig({
  publicDir: false,
  build: {
    target: 'node20',
    ssr: true,
    outDir: here('../../dist/relay'),
    emptyOutDir: true,
    rollupOptions: {
      input: { 'acre-to-axle-relay': here('main.ts'), 'mail-thread': here('mail-thread.ts') },
      experimental: { attachDebugInfo: 'none' },
      output: { entryFileNames: '[name].js', chunkFileNames: 'shared-[name].js' },
    },
  },
  ssr: { noExternal: true, external: installed, target: 'node' },
  logLevel: 'warn',
});
