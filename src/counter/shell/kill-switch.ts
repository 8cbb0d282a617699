/**
 * To be put in the place of `worker.js` where a version has gone wrong beyond help: takes over at once, throws the page's
 * files away and takes itself out. What waits to be sent lies elsewhere and stays.
 */
import { prefix, scope } from './scope.ts';

scope.addEventListener('install', (event) => event.waitUntil(scope.skipWaiting()));
scope.addEventListener('activate', (event) => event.waitUntil((async () => {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(prefix)).map((name) => caches.delete(name)));
  await scope.registration.unregister();
})()));
