import { defineConfig } from 'vite';

/**
 * The widget for a page: one ES module that registers `<acre-to-axle>`, and one file a further language.
 * Built as an entry, not as a library, for the library build leaves the white space in.
 */
export default defineConfig({
  build: {
    target: 'es2022',
    outDir: new URL('../../dist/widget', import.meta.url).pathname,
    emptyOutDir: true,
    modulePreload: false,
    rollupOptions: {
      input: new URL('define.ts', import.meta.url).pathname,
      preserveEntrySignatures: 'strict',
      output: { entryFileNames: 'acre-to-axle.js', chunkFileNames: 'acre-to-axle-[name].js' },
    },
  },
  logLevel: 'warn',
});
