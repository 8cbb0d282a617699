/** What of a service worker is used here; the types of a page and of a worker don't go together. */
export interface Extendable extends Event {
  waitUntil(work: Promise<unknown>): void;
}
export interface Fetched extends Extendable {
  request: Request;
  respondWith(answer: Promise<Response>): void;
}
export interface Scope {
  addEventListener(type: 'install' | 'activate', listener: (event: Extendable) => void): void;
  addEventListener(type: 'fetch', listener: (event: Fetched) => void): void;
  addEventListener(type: 'message', listener: (event: MessageEvent) => void): void;
  skipWaiting(): Promise<void>;
  clients: { claim(): Promise<void> };
  registration: { scope: string; unregister(): Promise<boolean> };
}

export const scope = globalThis as unknown as Scope;

/** How the caches of this worker are called; what the page keeps itself is called otherwise. */
export const prefix = 'acre-to-axle-counter-';
