/**
 * The only door to Zod. `jitless` is set before the first schema is made: Zod otherwise probes
 * `new Function`, which a strict content security policy reports as a violation. Re-exported name by
 * name, so that what a page doesn't use is left out of its bundle.
 */
import { config } from 'zod/mini';

config({ jitless: true });

export * from 'zod/mini';
