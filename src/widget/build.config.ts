import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as { version: string };

/** What every build of the widget puts in. */
export const define = { VERSION: JSON.stringify(version) };

/**
 * What a figure of the rule book stands for is printed by the rule book alone; a page shows the name of the
 * term instead. Left out, a fifth of the words a page would carry are gone.
 */
export const withoutStatements: Plugin = {
  name: 'without-statements',
  transform: (code, id) => (/\/trade\/figures\/(?!formulas)[^/]+\.ts$/.test(id)
    ? { code: code.replace(/statement: (?:'(?:[^'\\]|\\.)*'|"[^"]*")/g, "statement: ''"), map: null } : undefined),
};
