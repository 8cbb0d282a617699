import { createHash } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { build, type InlineConfig, type Plugin, type Rollup } from 'vite';
import { define, withoutStatements } from '../widget/build.config.ts';
import { inProject } from './project.ts';

/** The languages there are: a file each. */
const tags = readdirSync(inProject('src/reasons/words')).flatMap((name) => (/^[a-z]{2}\.ts$/.test(name) ? [name.slice(0, 2)] : []));

const wordsFile = (tag: string) => `acre-to-axle.words.${tag}.js`;

/** Takes a language for the English that is written in `embed`, and what brings that one for the table that fetches all. */
const inLanguage = (tag: string): Plugin => ({
  name: 'in-language',
  enforce: 'pre',
  resolveId(asked, importer) {
    if (/\/(?:language|later)-parts\.ts$/.test(asked) && importer?.startsWith(inProject('src/widget/'))) return inProject('src/embed/language-parts.ts');
    const [, words, part] = (importer?.startsWith(inProject('src/embed/')) && /^\.\.\/(.+\/words)\/en(\/\w+)?\.ts$/.exec(asked)) || [];
    return words ? inProject(`src/${words}/${tag}${part ?? ''}.ts`) : undefined;
  },
});

/** @returns the one file that was built; more, or one that imports, is a fault of the build. */
async function built(entry: string, tag: string, defined: Readonly<Record<string, string>> = {}): Promise<string> {
  const config: InlineConfig = {
    configFile: false,
    root: inProject('.'),
    publicDir: false,
    logLevel: 'warn',
    define: { ...define, ...defined },
    plugins: [withoutStatements, inLanguage(tag)],
    build: {
      target: 'es2022', write: false, modulePreload: false,
      rollupOptions: { input: inProject(entry), preserveEntrySignatures: 'strict', output: { codeSplitting: false } },
    },
  };
  const { output: [file, ...others] } = (await build(config)) as Rollup.RollupOutput;
  if (others.length > 0 || file.imports.length > 0) throw new Error(`${entry}: ${[file, ...others].map(({ fileName }) => fileName).join(', ')} instead of one file without imports`);
  return file.code;
}

/** @returns the hash of a file as the attribute `integrity` takes it. */
export const integrityOf = (text: string) => `sha384-${createHash('sha384').update(text).digest('base64')}`;

/**
 * The wizard as one file a language, and the words of each language as one file beside them. Every script holds the
 * hashes of the words of the others.
 *
 * @returns the files by name
 */
export async function singleFiles(): Promise<ReadonlyMap<string, string>> {
  const words = new Map<string, string>();
  for (const tag of tags) words.set(tag, await built('src/embed/words-file.ts', tag));
  const siblings = Object.fromEntries([...words].map(([tag, text]) => [tag, { file: wordsFile(tag), integrity: integrityOf(text) }]));
  const files = new Map<string, string>();
  for (const tag of tags) {
    files.set(`acre-to-axle.${tag}.js`, await built('src/widget/define.ts', tag, { LANGUAGE: JSON.stringify(tag), SIBLINGS: JSON.stringify(siblings) }));
  }
  for (const [tag, text] of words) files.set(wordsFile(tag), text);
  return files;
}
