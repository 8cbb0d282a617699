/** Serves the demo's pages with the built widget: the same files an embedder would put on his site. */
import { execFile } from 'node:child_process';
import { createReadStream, existsSync, readFileSync } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { headersOf } from './embed/policies.mjs';

const demo = fileURLToPath(new URL('.', import.meta.url));
const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
/** Built files, by the folder of the address they are under. */
const built = [['widget', '../dist/widget/'], [`setup${sep}app`, '../dist/setup/'], ['counter', '../dist/counter/'], [`setup${sep}wizard`, `../dist/embed/${version}/`]].map(([under, folder]) => [`${sep}${under}${sep}`, fileURLToPath(new URL(folder, import.meta.url))]);

const types = {
  '.html': 'text/html; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8', '.svg': 'image/svg+xml', '.png': 'image/png', '.webmanifest': 'application/manifest+json',
};

/** The file behind a path, or undefined where the path leads outside. */
function fileOf(path) {
  const clean = normalize(decodeURIComponent(path.endsWith('/') ? `${path}index.html` : path));
  // What a dealer says of his own lies among the built files and is his.
  const own = join(demo, clean);
  if (clean.startsWith(`${sep}counter${sep}`) && own.startsWith(demo) && existsSync(own)) return own;
  const [under, root] = built.find(([folder]) => clean.startsWith(folder)) ?? [sep, demo];
  const file = join(root, clean.slice(under.length));
  return file.startsWith(root) ? file : undefined;
}

/** What the built command prints. */
async function printed(...asked) {
  const command = fileURLToPath(new URL('../dist/cli/acre-to-axle.js', import.meta.url));
  const { stdout } = await promisify(execFile)(process.execPath, [command, ...asked], { maxBuffer: 2 ** 24 });
  return stdout;
}

/** The pages the command prints for whoever wants them on his site, by what their addresses begin with. */
const printedPages = {
  // The rule book with this dealer's figures.
  rulebook: (language) => printed('rulebook', '--format', 'html', '--catalogue', join(demo, 'catalogue.json'), '--language', language, '--translations', 'rulebook.{language}.html'),
  // What an invented season asked for, of a lot from which much is sold.
  demand: (language) => printed('demand', '--format', 'html', '--catalogue', join(demo, 'season', 'lot.json'), '--requests', join(demo, 'season', 'requests.jsonl'), '--language', language),
};

/** The wizard's files as one a language with their hashes, where they were built; none where they weren't. */
const hashes = () => readFile(new URL(`../dist/embed/${version}/integrity.json`, import.meta.url)).catch(() => '{"files":[]}');

/** The demo dealer's page and his counter's settings, told where his relay is. */
const page = async (relay) => (await readFile(join(demo, 'index.html'), 'utf8')).replace('<acre-to-axle ', `<acre-to-axle relay="${relay}" `);
const counterSettings = async (relay) => JSON.stringify({ ...JSON.parse(await readFile(join(demo, 'counter', 'settings.json'), 'utf8')), relay });
const toldOfRelay = { '/': page, '/index.html': page, '/counter/settings.json': counterSettings };

/** What a page may do; the counter may speak to the relay. */
const policyOf = (pathname, relay) => Object.fromEntries(Object.entries(headersOf[pathname] ?? {})
  .map(([name, policy]) => [name, relay && pathname.startsWith('/counter/') ? policy.replace("connect-src 'self'", `connect-src 'self' ${relay}`) : policy]));

/**
 * @param port  0 for any that is free
 * @param relay  says where the dealer's relay is, where there is one
 * @returns {Promise<{ address: string, close: () => Promise<void> }>}
 */
export async function serve(port = 0, { relay = () => undefined } = {}) {
  const server = createServer(async (request, response) => {
    try {
      const { pathname } = new URL(request.url ?? '/', 'http://demo');
      const [, name, language = 'en'] = /^\/(rulebook|demand)(?:\.([a-z]{2}))?\.html$/.exec(pathname) ?? [];
      if (name) {
        const page = await printedPages[name](language);
        response.writeHead(200, { 'content-type': types['.html'], 'cache-control': 'no-store' }).end(page);
        return;
      }
      if (pathname === '/setup/wizard/integrity.json') {
        response.writeHead(200, { 'content-type': types['.json'], 'cache-control': 'no-store' }).end(await hashes());
        return;
      }
      if (relay() && toldOfRelay[pathname]) {
        response.writeHead(200, { 'content-type': types[extname(pathname) || '.html'], 'cache-control': 'no-store' }).end(await toldOfRelay[pathname](relay()));
        return;
      }
      const file = fileOf(pathname);
      if (!file || !(await stat(file)).isFile()) throw new Error('no such file');
      response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream', 'cache-control': 'no-store', ...policyOf(pathname, relay()) });
      createReadStream(file).pipe(response);
    } catch {
      response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('Not found\n');
    }
  });
  await new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', resolve);
  });
  return {
    address: `http://127.0.0.1:${server.address().port}/`,
    close: () => new Promise((resolve) => server.close(resolve)),
  };
}
