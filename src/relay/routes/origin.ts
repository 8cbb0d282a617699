import type { FastifyReply, FastifyRequest } from 'fastify';
import { Refusal } from '../problems.ts';
import { keyHeader } from '../../request/names.ts';
import { headerOf, type Parts } from './parts.ts';

/** Every origin that may send for any dealer, and our own, for pages served from here. */
export const originsOf = ({ settings, address }: Pick<Parts, 'settings' | 'address'>): ReadonlySet<string> =>
  new Set([new URL(address).origin, ...[...settings.dealers.values()].flatMap(({ origins }) => [...origins])]);

/**
 * The origin of the page that asks, compared as a whole with those listed. A page of our own names none where it only
 * reads; its browser says so then.
 */
export function originOf(request: FastifyRequest, known: ReadonlySet<string>, own: string): string | undefined {
  const origin = headerOf(request, 'origin') ?? (headerOf(request, 'sec-fetch-site') === 'same-origin' && request.method !== 'POST' ? own : undefined);
  return origin !== undefined && known.has(origin) ? origin : undefined;
}

/** Lets pages of listed origins, and no others, read what is answered (CORS; no credentials, so never a star). */
export function allowReading(request: FastifyRequest, reply: FastifyReply, known: ReadonlySet<string>): void {
  const origin = headerOf(request, 'origin');
  void reply.header('vary', 'Origin');
  if (origin !== undefined && known.has(origin)) void reply.header('access-control-allow-origin', origin).header('access-control-expose-headers', 'Retry-After');
}

const allowedHeaders = ['content-type', keyHeader.toLowerCase(), 'authorization'];
const keptFor = 600;

/** Answers what a browser asks before it sends. @throws Refusal `origin`, `not-by-script` */
export function answerPreflight(request: FastifyRequest, reply: FastifyReply, known: ReadonlySet<string>, methods: string): FastifyReply {
  const origin = headerOf(request, 'origin');
  if (origin === undefined || !known.has(origin)) throw new Refusal('origin');
  const wanted = (headerOf(request, 'access-control-request-headers') ?? '').toLowerCase().split(',').map((name) => name.trim()).filter((name) => name !== '');
  if (!methods.split(', ').includes(headerOf(request, 'access-control-request-method') ?? '') || wanted.some((name) => !allowedHeaders.includes(name))) throw new Refusal('not-by-script');
  return reply.code(204).headers({ 'access-control-allow-methods': methods, 'access-control-allow-headers': allowedHeaders.join(', '), 'access-control-max-age': String(keptFor) }).send();
}

/** What a browser says of how a request came about (Fetch Metadata): only a script's own may stand there. @throws Refusal `not-by-script` */
export function checkFetchMetadata(request: FastifyRequest): boolean {
  const [mode, dest] = [headerOf(request, 'sec-fetch-mode'), headerOf(request, 'sec-fetch-dest')];
  if ((mode !== undefined && mode !== 'cors') || (dest !== undefined && dest !== 'empty')) throw new Refusal('not-by-script');
  return mode !== undefined && dest !== undefined;
}
