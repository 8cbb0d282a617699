import { defineConfig } from 'vite';
import { define, withoutStatements } from './build.config.ts';

/**
 * The widget for a page: one ES module that registers `<acre-to-axle>`, and one file a further language; and the
 * script of both sides of a frame, which shares nothing with it. Built as an entry, not as a library, for the library build leaves the white space in.
 */
export default defineConfig({
  define,
  plugins: [withoutStatements],
  build: {
    target: 'es2022',
    outDir: new URL('../../dist/widget', import.meta.url).pathname,
    emptyOutDir: true,
    modulePreload: false,
    rollupOptions: {
      input: { 'acre-to-axle': new URL('define.ts', import.meta.url).pathname, 'acre-to-axle-frame': new URL('frame/frame.ts', import.meta.url).pathname },
      preserveEntrySignatures: 'allow-extension',
      output: { entryFileNames: ({ name }) => (name === 'acre-to-axle-frame' ? '[name].js' : 'acre-to-axle.js'), chunkFileNames: 'acre-to-axle-[name].js',
        // Left to itself the bundler splits what comes first, once many parts fetched later share it: each file more is a way more to the buyer.
        codeSplitting: { groups: [
          { name: 'acre-to-axle', tags: ['$initial'], test: (id: string) => !/widget\/frame\//.test(id), priority: 3 },
          { name: 'read-formula', test: /trade\/(?:read-formula|figures\/formulas[^/]*)\.ts$/, priority: 2 },
          { name: 'reckoner', test: /widget\/reckoner\.ts$|rolldown\/runtime/, priority: 1 },
        ] },
      },
    },
  },
  logLevel: 'warn',
});
