import type { FastifyReply, FastifyRequest } from 'fastify';
import { setTimeout as wait } from 'node:timers/promises';
import type { Clock } from '../clock.ts';
import type { Log } from '../log.ts';
import type { Metrics } from '../metrics.ts';
import type { Settings } from '../settings/read-settings.ts';
import type { Keys } from '../settings/keys.ts';
import type { Store } from '../store/store.ts';
import type { Guard } from '../way/guard.ts';
import type { Intake } from '../way/intake.ts';

/** What the routes have in common. */
export interface Parts {
  settings: Settings;
  /** What links begin with; ends with a slash. */
  address: string;
  store: Store;
  keys: Keys;
  clock: Clock;
  log: Log;
  metrics: Metrics;
  guard: Guard;
  intake: Intake;
  /** Something new may be sent. */
  wake(): void;
  /** What counts as one client: an IPv4 address, or a /64. */
  networkOf(request: FastifyRequest): string;
}

/** Every answer that may tell something by its time takes at least so long [ms]. */
const shortest = 10;

/** When a request came, by {@link Clock.elapsed}, so that the time of an answer tells nothing of what was found. */
export async function notSooner(clock: Clock, since: number): Promise<void> {
  const left = shortest - (clock.elapsed() - since);
  if (left > 0) await wait(left);
}

/** What comes of a job within so long [ms]; it goes on by itself. @returns undefined where it takes longer */
export async function within<T>(longest: number, job: Promise<T>): Promise<T | undefined> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<undefined>((resolve) => { timer = setTimeout(() => resolve(undefined), longest); });
  try {
    return await Promise.race([job, late]);
  } finally {
    clearTimeout(timer);
  }
}

/** The one text of a header, or undefined where it isn't there. */
export const headerOf = (request: FastifyRequest, name: string): string | undefined => {
  const held = request.headers[name];
  return Array.isArray(held) ? held.join(', ') : held;
};

const year = 31_536_000;
/** On every answer. */
export const usualHeaders = {
  'content-security-policy': "default-src 'none'; frame-ancestors 'none'",
  'strict-transport-security': `max-age=${year}`,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cache-control': 'no-store',
  'cross-origin-resource-policy': 'same-origin',
} as const;

/** A problem as it is answered; and what the log and the metrics call it. */
export function answerProblem(reply: FastifyReply, refusal: { code: string; status: number; after: number | undefined; body: object }): FastifyReply {
  Object.assign(reply.request, { problem: refusal.code });
  if (refusal.after !== undefined) void reply.header('retry-after', String(refusal.after));
  return reply.code(refusal.status).header('content-type', 'application/problem+json').send(JSON.stringify(refusal.body));
}
