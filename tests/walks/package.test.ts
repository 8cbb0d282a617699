import { appendFileSync, existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { build as bundle } from 'esbuild';
import { chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { build, runnerImport } from 'vite';
import { policyFor } from '../../src/embed/snippet.ts';
import { integrityOf } from '../../src/release/single-files.ts';
import { differencesFromLock, type Bill } from '../../src/release/bill-of-materials.ts';
import { productionPackages } from '../../src/release/locked.ts';
import { packageFile, readText } from '../../src/release/project.ts';
import { publicManifest } from '../../src/release/public-manifest.ts';
// @ts-expect-error: plain module without types, shared with the test runner
import { findChromium } from '../support/chromium.mjs';
import { servePaths } from '../support/serve-paths.ts';
import { root } from '../support/sources.ts';
import { ownFolder, ran, staged } from '../support/staged.ts';

// The npm package as somebody gets it: built in a copy, packed, installed into an empty project without a network.

const { folder, remove } = ownFolder('acre-to-axle-package-');
const user = join(folder, 'user');
const installed = join(user, 'node_modules/acre-to-axle');
const { version } = packageFile();
let project: string;
let told: string;

const tryRelease = (folder: string) => ran('npm', ['run', '--silent', 'release', '--', '--dry-run'], folder);

beforeAll(() => {
  vi.stubEnv('NODE_ENV', 'production');
  project = staged(folder);
  told = tryRelease(project);
  mkdirSync(user);
  // All it needs is copied from here, as the lock file lists it, so that nothing is fetched.
  const needed = Object.fromEntries(productionPackages(readText('package-lock.json')).map(({ name, path }) => [name, `file:${join(root, path)}`]));
  const wanted = { ...needed, 'acre-to-axle': `file:../project/.cache/release/acre-to-axle-${version}.tgz` };
  writeFileSync(join(user, 'package.json'), JSON.stringify({ name: 'user', version: '1.0.0', private: true, type: 'module', dependencies: wanted }));
  ran('npm', ['install', '--offline', '--install-links', '--ignore-scripts', '--no-audit', '--no-fund'], user);
}, 180_000);
afterAll(() => {
  vi.unstubAllEnvs();
  remove();
});

const integrityFile = () => JSON.parse(readFileSync(join(project, 'dist/embed', version, 'integrity.json'), 'utf8')) as { files: { file: string; integrity: string }[] };

/** What a program in the project of a user prints. */
const inNode = (program: string) => ran(process.execPath, ['--input-type=module', '--eval', program], user).trim();

test('the package holds what is promised, and neither tests nor sources nor anybody’s folders', () => {
  const paths = readdirSync(installed, { recursive: true, encoding: 'utf8' }).map((path) => path.replaceAll('\\', '/')).filter((path) => statSync(join(installed, path)).isFile());
  const groups = [...new Set(paths.map((path) => /^dist\/[^/]+|^demo\/schema|^[^/]+$/.exec(path)?.[0] ?? path))].sort();
  expect(groups).toEqual(['CHANGELOG.md', 'LICENSE', 'README.md', 'demo/schema', 'dist/acre-to-axle.cdx.json', 'dist/cli', 'dist/counter', 'dist/custom-elements.json', 'dist/embed', 'dist/package', 'dist/relay', 'dist/setup', 'dist/widget', 'package.json']);
  const texts = paths.map((path) => [path, readFileSync(join(installed, path), 'utf8')] as const);
  expect(texts.filter(([, text]) => [folder, 'sourceMappingURL'].some((trace) => text.includes(trace))).map(([path]) => path)).toEqual([]);
  expect(paths.filter((path) => /\.(?:map|test\.\w+|tsbuildinfo)$|(?<!\.d)\.ts$/.test(path))).toEqual([]);
});

test('a release that is tried tells hashes, what is left to do, and notes nothing down', () => {
  const { files } = integrityFile();
  for (const { file, integrity } of files) expect(told).toMatch(new RegExp(`${file.replaceAll('.', '\\.')} .*${integrity.replace(/[+/]/g, '\\$&')}`));
  expect(told).not.toContain('Forbids the release');
  expect(told).toContain('git: this is no checkout');
  expect(existsSync(join(project, 'src/release/last-release.json'))).toBe(existsSync(join(root, 'src/release/last-release.json')));
});

test('the bill of materials in the package is that of the lock file', () => {
  const bill = JSON.parse(readFileSync(join(installed, 'dist/acre-to-axle.cdx.json'), 'utf8')) as Bill;
  expect(differencesFromLock(bill, readText('package-lock.json'))).toEqual([]);
});

test('everything package.json points to is in it, and a manifest that is up to date', () => {
  const { exports: exported, bin, types, customElements } = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8')) as Record<string, unknown>;
  const targets = JSON.stringify([exported, bin, types, customElements]).match(/"(?:\.\/)?(?:dist|demo)\/[^"]+"/g)!.map((quoted) => quoted.slice(1, -1));
  const missing = targets.filter((target) => !existsSync(join(installed, target.includes('*') ? target.slice(0, target.indexOf('*')) : target)));
  expect([targets.length > 12, missing]).toEqual([true, []]);
  expect(JSON.parse(readFileSync(join(installed, String(customElements)), 'utf8'))).toEqual(JSON.parse(JSON.stringify(publicManifest())));
});

test('members of the class that its types show are those that are documented', () => {
  const types = readFileSync(join(installed, 'dist/package/widget/element.d.ts'), 'utf8');
  const body = types.slice(types.indexOf('export declare class'), types.indexOf('declare global'));
  // Of the base class, and so in nobody's table.
  const base = ['styles', 'properties', 'constructor', 'connectedCallback', 'disconnectedCallback', 'updated'];
  const shown = [...body.matchAll(/^ {4}(?:static |readonly |get |set )*(\w+)[?(:]/gm)].map(([, name]) => name!).filter((name) => !base.includes(name));
  const element = publicManifest().modules[0]!.declarations![0] as { members: { name: string }[] };
  expect([...new Set(shown)].sort()).toEqual(element.members.map(({ name }) => name).sort());
});

test('importing it in Node does nothing and doesn’t fail', () => {
  expect(inNode(`
    for (const part of ['', '/define', '/core', '/snippet', '/languages/en', '/languages/de']) await import('acre-to-axle' + part);
    console.log(JSON.stringify([typeof document, globalThis.customElements?.get('acre-to-axle') === undefined, process.getActiveResourcesInfo().filter((each) => /Timeout|Immediate|Socket/.test(each)).length]));
  `)).toBe('["undefined",true,0]');
});

test('in Node it reckons what the command line does, in words of the package', () => {
  const paths = [join(root, 'demo/catalogue.json'), join(root, 'demo/answers/first-acre.json')].map((path) => JSON.stringify(path));
  const said = JSON.parse(inNode(`
    import { readFileSync } from 'node:fs';
    import { namesIn, readAnswers, readCatalogue, readerFor, sayReason, shortlist } from 'acre-to-axle/core';
    import { de } from 'acre-to-axle/languages/de';
    const [catalogue, answers] = [${paths.join(', ')}].map((path) => JSON.parse(readFileSync(path, 'utf8')));
    const found = shortlist(readCatalogue(catalogue).value, readAnswers(answers).value);
    const reader = readerFor(de, 'metric', 'en-US', 'USD');
    const [first] = found.shortlist;
    const voice = { words: de, reader, nameOf: namesIn(catalogue, reader), machine: first.machine };
    console.log(JSON.stringify({ found, reasons: first.reasons.map((reason) => sayReason(reason, voice)) }));
  `)) as { found: unknown; reasons: string[] };
  const command = join(user, 'node_modules/.bin/acre-to-axle');
  const asked = ['shortlist', '--catalogue', join(root, 'demo/catalogue.json'), '--answers', join(root, 'demo/answers/first-acre.json'), '--format', 'json'];
  expect(said.found).toEqual(JSON.parse(ran(command, asked, user)));
  expect(said.reasons.length).toBeGreaterThan(0);
  expect(said.reasons.filter((reason) => reason.trim() === '')).toEqual([]);
});

test('a bundler leaves out what has no effect and isn’t used, and never what sets Zod up for strict policies', async () => {
  const bundled = async (contents: string) => (await bundle({
    stdin: { contents, resolveDir: user }, bundle: true, format: 'esm', write: false, minify: true, logLevel: 'error',
  })).outputFiles[0]!.text;
  expect(await bundled("import 'acre-to-axle';")).not.toContain('shadowRoot');
  expect(await bundled("export { AcreToAxle } from 'acre-to-axle';")).not.toContain('.define(');
  expect(await bundled("import 'acre-to-axle/define';")).toMatch(/customElements\.define\(.acre-to-axle/);
  for (const part of ['define', 'core']) expect(await bundled(`export * from 'acre-to-axle/${part}';`)).toContain('jitless:!0');
});

test('a path that isn’t exported can’t be imported', () => {
  expect(() => inNode("await import('acre-to-axle/dist/package/widget/element.js')")).toThrow('ERR_PACKAGE_PATH_NOT_EXPORTED');
  expect(() => inNode("await import('acre-to-axle/languages/words')")).toThrow('ERR_PACKAGE_PATH_NOT_EXPORTED');
});

test.each(['bundler', 'nodenext'])('types are there for a user’s own program (%s), and right', (moduleResolution) => {
  writeFileSync(join(user, 'program.ts'), `
    import 'acre-to-axle/define';
    import { AcreToAxle, type AcreEvents, type Shortlist } from 'acre-to-axle';
    import { shortlist, type CatalogueDocument } from 'acre-to-axle/core';
    import { fr } from 'acre-to-axle/languages/fr';
    const wizard: AcreToAxle = document.createElement('acre-to-axle');
    wizard.theme = 'dark';
    // @ts-expect-error: no such theme
    wizard.theme = 'loud';
    document.addEventListener('acre-answered', ({ detail }) => { const unsure: boolean = detail.unsure; void unsure; });
    wizard.addEventListener('acre-result-shown', ({ detail }) => detail.machines.map((id) => id.length));
    // @ts-expect-error: it has no such detail
    wizard.addEventListener('acre-error', ({ detail }) => detail.machines);
    const heard: AcreEvents['acre-error'] | undefined = undefined;
    const found: Shortlist | undefined = wizard.shortlist;
    export const all = [heard, found, AcreToAxle.version, (lot: CatalogueDocument) => shortlist(lot, wizard.answers), fr.language];
  `);
  const module = moduleResolution === 'nodenext' ? 'nodenext' : 'esnext';
  writeFileSync(join(user, 'tsconfig.json'), JSON.stringify({
    compilerOptions: { target: 'es2022', lib: ['es2023', 'dom', 'dom.iterable'], module, moduleResolution, strict: true, noEmit: true, skipLibCheck: false, types: [] }, files: ['program.ts'],
  }));
  ran(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '--project', user], user);
});

test('it builds with Vite and renders under a strict policy, with what reckons and the languages apart', async () => {
  writeFileSync(join(user, 'index.html'), '<!doctype html><html lang="en"><head><title>Lot</title></head><body><acre-to-axle catalogue="/catalogue.json"></acre-to-axle><script type="module" src="/main.js"></script></body></html>');
  writeFileSync(join(user, 'main.js'), "import 'acre-to-axle/define';\n");
  const outDir = join(user, 'built');
  await build({ configFile: false, root: user, logLevel: 'error', build: { outDir, modulePreload: { polyfill: false } } });
  const files = readdirSync(outDir, { recursive: true, encoding: 'utf8' }).filter((file) => /\.\w+$/.test(file));
  expect(files.filter((file) => basename(file).startsWith('telling')).length).toBe(4);

  const server = await servePaths({ 'content-security-policy': `default-src 'none'; img-src 'self'; ${policyFor({ script: '/main.js', catalogue: '/catalogue.json', ownFile: false })}` });
  for (const file of files) server.put(`/${file.replaceAll('\\', '/')}`, readFileSync(join(outDir, file)));
  server.put('/catalogue.json', readFileSync(join(root, 'demo/catalogue.json')));
  server.put('/favicon.ico', '');
  const browser = await chromium.launch(await findChromium());
  try {
    const page = await browser.newPage();
    const complaints: string[] = [];
    page.on('console', (message) => { if (message.type() !== 'log') complaints.push(message.text()); });
    page.on('pageerror', (error) => complaints.push(error.message));
    await page.goto(`${server.address}/index.html`);
    await page.locator('acre-to-axle').locator('h2').first().waitFor();
    const [entries, made] = await page.evaluate(async (answers) => {
      const wizard = document.querySelector('acre-to-axle')!;
      await wizard.ready;
      wizard.answers = answers;
      return [wizard.shortlist!.shortlist.length, (wizard.constructor as unknown as { version: string }).version] as const;
    }, JSON.parse(readFileSync(join(root, 'demo/answers/first-acre.json'), 'utf8')) as never);
    await page.locator('acre-to-axle').locator('.language select').selectOption('fr');
    await page.locator('acre-to-axle').locator('.sheet[lang="fr"]').waitFor();
    expect([entries > 0, made, complaints]).toEqual([true, version, []]);
  } finally {
    await browser.close();
    await server.close();
  }
});

test('the same sources give the same hashes of all files and of the package, in whatever folder they are built', async () => {
  const elsewhere = staged(join(folder, 'another', 'place'), project);
  expect(tryRelease(elsewhere)).toBe(told);
  // Control: it is those sources that are built, and a word in them is another hash.
  appendFileSync(join(elsewhere, 'src/embed/words-file.ts'), 'export const added = 1;\n');
  const { module } = await runnerImport<typeof import('../../src/release/single-files.ts')>(join(elsewhere, 'src/release/single-files.ts'), { configFile: false, root: elsewhere });
  const published = integrityFile().files.map(({ integrity }) => integrity);
  expect([...await module.singleFiles()].map(([, text]) => integrityOf(text)).filter((hash) => published.includes(hash))).toEqual([]);
}, 180_000);

test('the hashes that are told are those of the files, and in the snippets', () => {
  for (const { file, integrity } of integrityFile().files) {
    expect(integrityOf(readFileSync(join(installed, 'dist/embed', version, file), 'utf8'))).toBe(integrity);
    const pasted = join(installed, 'dist/embed', version, file.replace(/^acre-to-axle\.(\w+)\.js$/, 'snippet.$1.html'));
    if (!file.includes('.words.')) expect(readFileSync(pasted, 'utf8')).toContain(`integrity="${integrity}"`);
  }
});
