import { defineConfig, type Plugin } from 'vite';

/**
 * What a figure of the rule book stands for is printed by the rule book alone; a page shows the name of the
 * term instead. Left out, a fifth of the words a page would carry are gone.
 */
const withoutStatements: Plugin = {
  name: 'without-statements',
  transform: (code, id) => (/\/trade\/figures\/(?!formulas)[^/]+\.ts$/.test(id)
    ? { code: code.replace(/statement: (?:'(?:[^'\\]|\\.)*'|"[^"]*")/g, "statement: ''"), map: null } : undefined),
};

/**
 * The widget for a page: one ES module that registers `<acre-to-axle>`, and one file a further language.
 * Built as an entry, not as a library, for the library build leaves the white space in.
 */
export default defineConfig({
  plugins: [withoutStatements],
  build: {
    target: 'es2022',
    outDir: new URL('../../dist/widget', import.meta.url).pathname,
    emptyOutDir: true,
    modulePreload: false,
    rollupOptions: {
      input: new URL('define.ts', import.meta.url).pathname,
      preserveEntrySignatures: 'allow-extension',
      output: { entryFileNames: 'acre-to-axle.js', chunkFileNames: 'acre-to-axle-[name].js' },
    },
  },
  logLevel: 'warn',
});
