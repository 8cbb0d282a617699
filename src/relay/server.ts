import { fastify, type FastifyError, type FastifyInstance, type FastifyReply, type FastifyRequest } from 'fastify';
import type { Server } from 'node:http';
import type { Socket } from 'node:net';
import { second } from './clock.ts';
import { problems, Refusal, type ProblemCode } from './problems.ts';
import { formRoutes } from './routes/forms.ts';
import { linkPaths, linkRoutes } from './routes/links.ts';
import { originsOf } from './routes/origin.ts';
import { answerProblem, headerOf, usualHeaders, type Parts } from './routes/parts.ts';
import { shortlistRoutes } from './routes/shortlists.ts';
import { staticRoutes } from './routes/static.ts';
import { paths } from '../request/names.ts';
import { limitSockets } from './sockets.ts';
import { clientOf, networkOf, proxiesOf } from './way/client.ts';

/** Time limits, so that nobody holds a connection by being slow; a test may shorten them. */
export const usualTimes = {
  /** A whole request, and its head [ms]. */
  request: 10 * second,
  /** From a request to its answer [ms]. */
  handler: 5 * second,
  /** A connection on which nothing moves [ms]. */
  idle: 15 * second,
  /** How often it is looked at which are over time [ms]. */
  checked: second,
} as const;
const mostRequestsPerSocket = 100;
const mostHeaderBytes = 8_192;

/** Where what is there, and by which methods. */
const methodsAt: readonly (readonly [RegExp, string])[] = [
  [new RegExp(`^${paths.shortlists}$`), 'POST, OPTIONS'],
  [new RegExp(`^(?:${[paths.ticket, paths.keys, paths.health].join('|')})$`), 'GET, HEAD, OPTIONS'],
  [/^\/(?:readyz|v1\/openapi\.json)$/, 'GET, HEAD'],
  [new RegExp(`^(?:${Object.values(linkPaths).join('|')})[^/]+$`), 'GET, HEAD, POST'],
];

const codesOfFastify: Readonly<Record<string, ProblemCode>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: 'too-large',
  FST_ERR_CTP_INVALID_MEDIA_TYPE: 'type',
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: 'not-http',
  FST_ERR_BAD_URL: 'not-http',
  FST_ERR_MAX_PARAM_LENGTH: 'address-too-long',
  FST_ERR_HANDLER_TIMEOUT: 'unavailable',
};
const codesOfNode: Readonly<Record<string, ProblemCode>> = { HPE_HEADER_OVERFLOW: 'headers-too-large', ERR_HTTP_REQUEST_TIMEOUT: 'slow' };

/** What isn't HTTP enough to get to a route is answered by hand, and the connection ended. */
function answerByHand(error: NodeJS.ErrnoException, socket: Socket): void {
  if (error.code === 'ECONNRESET' || !socket.writable) {
    socket.destroy();
    return;
  }
  const refusal = new Refusal(codesOfNode[error.code ?? ''] ?? 'not-http');
  const body = JSON.stringify(refusal.body);
  socket.end(`HTTP/1.1 ${refusal.status} Refused\r\nContent-Type: application/problem+json\r\nContent-Length: ${Buffer.byteLength(body)}\r\nX-Content-Type-Options: nosniff\r\nConnection: close\r\n\r\n${body}`);
}

/** The relay's face to the net; not listening yet. */
export function serverOf(parts: Omit<Parts, 'networkOf'>, times: { [Name in keyof typeof usualTimes]: number } = usualTimes, mostSocketsOfNetwork?: number): FastifyInstance {
  const { settings, log, metrics, guard } = parts;
  const proxies = proxiesOf(settings.proxies);
  const app = fastify({
    logger: false,
    requestTimeout: times.request, connectionTimeout: times.idle, keepAliveTimeout: times.idle,
    http: { headersTimeout: times.request, connectionsCheckingInterval: times.checked, maxHeaderSize: mostHeaderBytes },
    maxRequestsPerSocket: mostRequestsPerSocket,
    // A stop is told by our own answer, which says when to try again.
    return503OnClosing: false,
    clientErrorHandler: answerByHand,
    frameworkErrors: (error, request, reply) => refuse(error, request, reply),
  });

  function refuse(error: FastifyError | Refusal | Error, request: FastifyRequest, reply: FastifyReply) {
    const code = (error as FastifyError).code ?? '';
    const refusal = error instanceof Refusal ? error : new Refusal(codesOfFastify[code] ?? ((error as FastifyError).statusCode === 400 ? 'not-http' : 'unavailable'));
    if (!(error instanceof Refusal) && refusal.code === 'unavailable') log.error('not foreseen', error, { route: request.routeOptions?.url });
    // What is left of a body nobody reads is not to be taken for the next request.
    if (refusal.code === 'too-large' || refusal.code === 'closing') void reply.header('connection', 'close');
    void reply.headers(usualHeaders);
    return answerProblem(reply, refusal);
  }

  app.setErrorHandler((error: FastifyError, request, reply) => refuse(error, request, reply));
  function refuseUnknown(request: FastifyRequest, reply: FastifyReply) {
    const path = request.url.split('?')[0]!;
    const allowed = methodsAt.find(([form]) => form.test(path))?.[1];
    if (allowed) void reply.header('allow', allowed);
    return refuse(new Refusal(allowed ? 'method' : 'not-found'), request, reply);
  }
  app.setNotFoundHandler(refuseUnknown);

  app.addHook('onRequest', async (request, reply) => {
    void reply.headers(usualHeaders);
    if (guard.closed === 'closing') void reply.header('connection', 'close');
    // Before a body is read that belongs to nothing.
    if (request.is404) return refuseUnknown(request, reply);
    return undefined;
  });
  app.addHook('onResponse', async (request, reply) => {
    const route = request.is404 ? 'none' : request.routeOptions.url ?? 'none';
    const { problem = 'none' } = request as { problem?: string };
    metrics.answered(route, reply.statusCode, problem, reply.elapsedTime);
    log.info('answered', { route, status: reply.statusCode, problem, milliseconds: Math.round(reply.elapsedTime) });
  });

  const whole: Parts = { ...parts, networkOf: (request) => networkOf(clientOf(request.socket.remoteAddress, headerOf(request, 'x-forwarded-for'), proxies)) };
  const rooms: ((inside: FastifyInstance) => void)[] = [
    (inside) => shortlistRoutes(inside, whole, times.handler),
    (inside) => formRoutes(inside, whole),
    (inside) => linkRoutes(inside, whole),
    ...(settings.pages ? [(inside: FastifyInstance) => staticRoutes(inside, settings.pages!, [...originsOf(whole)])] : []),
  ];
  app.addHook('onRoute', (route) => {
    // Where most come it costs too much: it is seen to there.
    if (route.url !== paths.shortlists) route.handlerTimeout = times.handler;
  });
  for (const room of rooms) void app.register(async (inside) => room(inside));
  limitSockets(app.server as Server, proxies, mostSocketsOfNetwork);
  return app;
}

/** Statuses of the closed list, for whoever documents it. */
export const problemRows = Object.entries(problems).map(([code, { status, message }]) => ({ code, status, message }));
