import { defineConfig } from 'vite';
import { define } from '../widget/build.config.ts';

const beside = (file: string) => new URL(file, import.meta.url).pathname;

/** The dealer's set-up page: its script, and the worker that reads his tables. */
export default defineConfig({
  define,
  build: {
    target: 'es2022',
    outDir: beside('../../dist/setup'),
    emptyOutDir: true,
    modulePreload: false,
    rollupOptions: {
      input: { 'acre-to-axle-set-up': beside('define.ts'), 'acre-to-axle-set-up-worker': beside('worker.ts') },
      output: { entryFileNames: '[name].js', chunkFileNames: 'acre-to-axle-set-up-[name].js' },
    },
  },
  logLevel: 'warn',
});
