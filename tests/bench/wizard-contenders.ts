/** The pages that are set against each other, built and read into memory. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build } from 'vite';
import { offeredTasks } from '../../src/answers/questions.ts';
import { en } from '../../src/reasons/words/en.ts';
import { builtScripts, bytesOf, type Bytes } from './built-scripts.ts';
import type { Watched } from './record.ts';
import { surveyForm } from './survey-form.ts';

export interface Contender {
  name: string;
  path: string;
  watched: Watched;
}

const boxes = offeredTasks.length;
export const ours: Contender = { name: 'ours', path: '/ours.html', watched: { host: 'acre-to-axle', heading: 'h2#heading', boxes } };
export const bare: Contender = { name: 'bare element', path: '/bare.html', watched: { host: 'bare-question', heading: 'h2#heading', boxes } };
export const survey: Contender = { name: 'survey library', path: '/survey.html', watched: { host: '#survey', heading: '.sd-page__title', boxes } };

const pageOf = (head: string, body: string) => `<!doctype html>
<html lang="en">
  <head><meta charset="utf-8" /><title>Bench</title><link rel="icon" href="data:," />${head}</head>
  <body><main><h1>Which tractor fits your work?</h1>${body}</main></body>
</html>
`;

async function inFolder<T>(use: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'acre-to-axle-contender-'));
  try {
    return await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Built with what the widget is built with, into one file. */
const bundled = (entry: string, define: Readonly<Record<string, unknown>>) => inFolder(async (outDir) => {
  await build({
    configFile: false, root: resolve('tests/bench'), logLevel: 'error',
    define: Object.fromEntries(Object.entries(define).map(([name, value]) => [name, JSON.stringify(value)])),
    build: { target: 'es2022', outDir, modulePreload: false, rollupOptions: { input: resolve('tests/bench', entry), output: { entryFileNames: 'built.js' } } },
  });
  return readFileSync(join(outDir, 'built.js'));
});

/** Built afresh, so that what is measured is what the sources say. */
const widget = () => inFolder(async (outDir) => {
  await build({ configFile: 'src/widget/vite.config.ts', build: { outDir } });
  const { first, later, words } = await builtScripts(outDir);
  const read = (files: readonly string[]) => files.map((file) => readFileSync(file));
  return {
    files: readdirSync(outDir).map((file) => [`/widget/${file}`, readFileSync(join(outDir, file))] as const),
    first: bytesOf(read(first)),
    whole: bytesOf(read([...first, ...later, ...words.get('en')!])),
  };
});

const { ask, hint = '', fields } = en.questions.tasks;
const { options = {}, hints } = fields.tasks!;
const firstQuestion = { ask, hint, options: offeredTasks.map((value) => ({ value, label: options[value], hint: hints?.[value] })) };

export interface Sizes {
  first: Bytes;
  whole: Bytes;
}

const allAtOnce = (text: Buffer): Sizes => ({ first: bytesOf([text]), whole: bytesOf([text]) });

export async function contenders() {
  const { files, first, whole } = await widget();
  const bareScript = await bundled('bare-question.ts', { firstQuestion });
  const surveyScript = await bundled('survey-page.ts', { surveyForm });
  // Without the typeface it would bring along: ours brings none.
  const surveyStyle = readFileSync('node_modules/survey-core/survey-core.fontless.min.css');
  const script = (path: string) => `<script type="module" src="${path}"></script>`;
  return {
    files: new Map<string, string | Buffer>([
      ...files, ['/catalogue.json', readFileSync('demo/catalogue.json')],
      ['/bare.js', bareScript], ['/survey.js', surveyScript], ['/survey.css', surveyStyle],
      [ours.path, pageOf(script('/widget/acre-to-axle.js'), '<acre-to-axle catalogue="/catalogue.json"></acre-to-axle>')],
      [bare.path, pageOf(script('/bare.js'), '<bare-question></bare-question>')],
      [survey.path, pageOf(`<link rel="stylesheet" href="/survey.css" />${script('/survey.js')}`, '<div id="survey"></div>')],
    ]),
    sizes: { ours: { first, whole }, bare: allAtOnce(bareScript), survey: allAtOnce(surveyScript), surveyStyle: allAtOnce(surveyStyle) },
  };
}
