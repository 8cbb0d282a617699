/**
 * The only door to Zod. `jitless` is set before the first schema is made: Zod otherwise probes
 * `new Function`, which a strict content security policy reports as a violation.
 */
import * as z from 'zod/mini';

z.config({ jitless: true });

export { z };
