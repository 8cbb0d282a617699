import type { FastifyInstance } from 'fastify';
import { paths } from '../../request/names.ts';
import { minute, second } from '../clock.ts';
import { openApiOf } from '../open-api.ts';
import { Refusal } from '../problems.ts';
import { Buckets } from '../way/buckets.ts';
import { longestOpen, newTicket } from '../way/ticket.ts';
import { allowReading, answerPreflight, originOf, originsOf } from './origin.ts';
import type { Parts } from './parts.ts';

/** Leading zero bits of a proof of work: about a second of a telephone, and four under load. */
const bits = { usual: 16, loaded: 18 } as const;

/** What a form or a counter reads before it sends: a ticket, the key to seal to, whether the relay is there, what it takes. */
export function formRoutes(app: FastifyInstance, parts: Parts): void {
  const { clock, keys, intake, guard, settings, networkOf } = parts;
  const known = originsOf(parts);
  const own = new URL(parts.address).origin;
  const asked = new Buckets(clock, 60, 10 * minute);
  let openApi: string | undefined;

  app.addHook('onRequest', async (request, reply) => allowReading(request, reply, known));
  for (const path of [paths.ticket, paths.keys, paths.health]) app.options(path, (request, reply) => answerPreflight(request, reply, known, 'GET'));

  app.get<{ Querystring: { dealer?: unknown } }>(paths.ticket, (request, reply) => {
    const origin = originOf(request, known, own);
    if (origin === undefined) throw new Refusal('origin');
    const dealer = intake.dealerOf(String(request.query.dealer ?? ''), origin);
    const network = networkOf(request);
    if (!asked.take(network)) throw new Refusal('limited');
    const needs = guard.loaded ? bits.loaded : dealer.proofOfWork || intake.doubts(network) ? bits.usual : 0;
    const now = clock.now();
    const ticket = newTicket(keys.ticketSecrets(now)[0]!, { dealer: dealer.id, origin }, now, needs);
    return reply.send({ ticket, goodFor: longestOpen / second, ...(needs > 0 && { work: { bits: needs } }) });
  });

  app.get(paths.keys, async () => {
    const [newest] = keys.seals(clock.now());
    return { keys: [{ id: newest!.id, publicKey: newest!.publicKey }] };
  });

  app.get(paths.health, async () => ({ ok: true, minVersion: settings.oldestPage }));
  app.get('/readyz', async () => {
    if (guard.closed) throw new Refusal(guard.closed);
    return { ready: true, dealers: settings.dealers.size };
  });
  app.get('/v1/openapi.json', async (_request, reply) => reply.header('content-type', 'application/vnd.oai.openapi+json').send(openApi ??= JSON.stringify(openApiOf(parts.address))));
}
