import type { FastifyInstance, FastifyRequest } from 'fastify';
import { keyHeader, paths } from '../../request/names.ts';
import { Refusal } from '../problems.ts';
import { mostBytes } from '../way/read-body.ts';
import { allowReading, answerPreflight, checkFetchMetadata, originOf, originsOf } from './origin.ts';
import { answerProblem, headerOf, notSooner, within, type Parts } from './parts.ts';

/** Requests that are being taken at once: more would only wait, in memory, for what is said to them sooner. */
const mostAtOnce = 1_000;

const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;

function keyOf(request: FastifyRequest): string {
  const key = headerOf(request, keyHeader.toLowerCase());
  if (key === undefined || key === '') throw new Refusal('key-missing');
  if (!uuid.test(key)) throw new Refusal('key-wrong');
  return key;
}

const tokenOf = (request: FastifyRequest) => {
  const said = headerOf(request, 'authorization');
  return said === undefined ? undefined : /^Bearer ([A-Za-z0-9_-]{1,200})$/.exec(said)?.[1] ?? '';
};

/**
 * `POST /v1/shortlists`: takes a request, plain or sealed, and answers 202 once it is on disk.
 *
 * @param longest  until it is answered that it can't be stored at the moment [ms]
 */
export function shortlistRoutes(app: FastifyInstance, parts: Parts, longest: number): void {
  const { guard, intake, clock, log, metrics, wake, networkOf } = parts;
  const known = originsOf(parts);
  const own = new URL(parts.address).origin;
  let taking = 0;

  app.removeAllContentTypeParsers();
  app.addContentTypeParser('application/json', { parseAs: 'buffer', bodyLimit: mostBytes.sealed }, (_request, body, done) => done(null, body));

  app.options(paths.shortlists, (request, reply) => {
    allowReading(request, reply, known);
    return answerPreflight(request, reply, known, 'POST');
  });

  app.post(paths.shortlists, {
    // All that the head alone tells, before a byte of the body is read.
    onRequest: async (request, reply) => {
      allowReading(request, reply, known);
      if (guard.closed) throw new Refusal(guard.closed);
      if (taking >= mostAtOnce) throw new Refusal('busy');
      if (originOf(request, known, own) === undefined) throw new Refusal('origin');
      checkFetchMetadata(request);
      keyOf(request);
    },
  }, async (request, reply) => {
    const since = clock.elapsed();
    const idempotencyKey = keyOf(request);
    if (!Buffer.isBuffer(request.body)) throw new Refusal('type');
    const arrival = {
      body: request.body, idempotencyKey, token: tokenOf(request), network: networkOf(request),
      origin: originOf(request, known, own)!, fetchMetadata: checkFetchMetadata(request),
    };
    let taken;
    taking += 1;
    try {
      taken = await within(longest, intake.take(arrival));
    } catch (error) {
      if (error instanceof Refusal) throw error;
      log.error('not stored', error);
      guard.trip();
      return answerProblem(reply, new Refusal('unavailable'));
    } finally {
      taking -= 1;
    }
    if (!taken) {
      log.error('not stored in time', undefined);
      throw new Refusal('unavailable');
    }
    if (taken.isNew) {
      metrics.taken(taken.dealer, taken.standing, taken.device);
      wake();
    }
    log.info('taken', { dealer: taken.dealer, standing: taken.standing, sealed: taken.sealed, counter: taken.device, new: taken.isNew });
    await notSooner(clock, since);
    return reply.code(202).send({ id: idempotencyKey });
  });
}
