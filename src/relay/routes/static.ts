import type { FastifyInstance } from 'fastify';
import { readdirSync, realpathSync, statSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';
import { Refusal } from '../problems.ts';
import { headerOf } from './parts.ts';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.css': 'text/css; charset=utf-8', '.txt': 'text/plain; charset=utf-8',
  '.json': 'application/json; charset=utf-8', '.webmanifest': 'application/manifest+json', '.svg': 'image/svg+xml', '.png': 'image/png', '.jpg': 'image/jpeg', '.webp': 'image/webp', '.woff2': 'font/woff2',
};

/** What the wizard's own page needs, and nothing more; who may frame it is who may send. */
const policyFor = (origins: readonly string[]) => [
  "default-src 'none'", "script-src 'self'", "style-src 'self'", "img-src 'self' https: data:", "font-src 'self'", "connect-src 'self'", "manifest-src 'self'", "worker-src 'self'",
  "base-uri 'none'", "object-src 'none'", "form-action 'none'", `frame-ancestors 'self' ${origins.join(' ')}`.trim(),
  "require-trusted-types-for 'script'", "trusted-types lit-html acre-to-axle 'allow-duplicates'",
].join('; ');

/** Files of a folder by the path they are served at: what isn't listed when the relay starts can't be had, whatever a path says. */
function listed(folder: string): Map<string, string> {
  const root = realpathSync(folder);
  const files = new Map<string, string>();
  for (const name of readdirSync(root, { recursive: true, encoding: 'utf8' })) {
    const parts = name.split(sep);
    const file = join(root, name);
    const isInside = realpathSync(file).startsWith(`${root}${sep}`);
    if (!isInside || parts.some((part) => part.startsWith('.')) || !types[extname(name)] || !statSync(file).isFile()) continue;
    files.set(`/${parts.join('/')}`, file);
    if (parts.at(-1) === 'index.html') files.set(`/${[...parts.slice(0, -1), ''].join('/')}`, file);
  }
  return files;
}

/** Serves built pages, such as a dealer's with the wizard, beside the relay. */
export function staticRoutes(app: FastifyInstance, folder: string, origins: readonly string[]): void {
  const files = listed(folder);
  const policy = policyFor(origins);
  app.get('/*', async (request, reply) => {
    const path = request.url.split('?')[0]!;
    const file = files.get(decoded(path));
    if (file === undefined) throw new Refusal('not-found');
    const { size, mtimeMs } = statSync(file);
    const tag = `W/"${size.toString(36)}-${Math.floor(mtimeMs).toString(36)}"`;
    void reply.headers({ 'content-security-policy': policy, 'content-type': types[extname(file)]!, 'cache-control': 'no-cache', 'cross-origin-resource-policy': 'cross-origin', etag: tag });
    if (headerOf(request, 'if-none-match') === tag) return reply.code(304).send();
    return reply.send(await readFile(file));
  });
}

function decoded(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}
