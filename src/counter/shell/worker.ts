import { takeOver } from './messages.ts';
import { prefix, scope, type Fetched } from './scope.ts';

/** The page's own files with their hashes, and a hash of all of that: put in by the build. */
declare const FILES: readonly (readonly [path: string, integrity: string])[];
declare const STAMP: string;

const cacheName = `${prefix}${STAMP}`;
const addressOf = (path: string) => new URL(path, scope.registration.scope).href;
const addresses = new Set(FILES.map(([path]) => addressOf(path)));

/** Each file whole and the one that was built, or none at all: then this version isn't installed, and the one before goes on. */
async function install() {
  const cache = await caches.open(cacheName);
  try {
    await Promise.all(FILES.map(async ([path, integrity]) => {
      const request = new Request(addressOf(path), { cache: 'reload', credentials: 'omit', integrity });
      const response = await fetch(request);
      if (!response.ok) throw new Error(`${path}: ${response.status}`);
      await cache.put(addressOf(path), response);
    }));
  } catch (trouble) {
    await caches.delete(cacheName);
    throw trouble;
  }
}

async function activate() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(prefix) && name !== cacheName).map((name) => caches.delete(name)));
  // So that the counter works without a network from its first page on.
  await scope.clients.claim();
}

/** The file of ours that is asked for; undefined for all else, which this worker neither answers nor keeps. */
function ownOf({ request }: Fetched): string | undefined {
  if (request.method !== 'GET') return undefined;
  const url = new URL(request.url);
  const bare = `${url.origin}${url.pathname}`;
  if (request.mode === 'navigate') return bare === scope.registration.scope || bare === addressOf('index.html') ? addressOf('index.html') : undefined;
  return addresses.has(bare) ? bare : undefined;
}

async function answer(address: string, request: Request): Promise<Response> {
  const cache = await caches.open(cacheName);
  return await cache.match(address) ?? fetch(request);
}

scope.addEventListener('install', (event) => event.waitUntil(install()));
scope.addEventListener('activate', (event) => event.waitUntil(activate()));
scope.addEventListener('fetch', (event) => {
  const address = ownOf(event);
  if (address !== undefined) event.respondWith(answer(address, event.request));
});
scope.addEventListener('message', ({ data }) => { if (data === takeOver) void scope.skipWaiting(); });
