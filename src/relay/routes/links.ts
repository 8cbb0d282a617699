import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { minute } from '../clock.ts';
import { wordsFor } from '../pages/language.ts';
import { pageOf, pagePolicy } from '../pages/page.ts';
import type { PageWords, SaidPage } from '../pages/words/words.ts';
import { Buckets } from '../way/buckets.ts';
import { headerOf, notSooner, type Parts } from './parts.ts';

const form = /^[A-Za-z0-9_-]{20,64}$/;
const mostBytesOfForm = 8_192;

type Link = 'stop' | 'notAsked' | 'confirm';
/** Where the links of a mail lead. */
export const linkPaths: Record<Link, string> = { stop: '/u/', notAsked: '/n/', confirm: '/c/' };

/**
 * The links of a mail. To look at one changes nothing, for machines look at links; its button does, and so does the
 * provider's own (RFC 8058): by POST, without a cookie, as often as one likes.
 */
export function linkRoutes(app: FastifyInstance, { store, clock, log, metrics, intake, wake, networkOf }: Parts): void {
  /** Only links that aren't known count: a provider's machines use many good ones. */
  const wrong = new Buckets(clock, 30, 10 * minute);

  const done: Record<Link, (token: string) => Promise<boolean>> = {
    stop: async (token) => (await store.stop(token, 'stop', clock.now())) !== undefined,
    notAsked: async (token) => {
      const stopped = await store.stop(token, 'not-asked', clock.now());
      if (stopped) intake.denied(stopped.dealer, token);
      return stopped !== undefined;
    },
    confirm: async (token) => {
      const confirmed = await store.confirm(token, clock.now());
      if (confirmed) wake();
      return confirmed;
    },
  };

  app.removeAllContentTypeParsers();
  app.addContentTypeParser('*', { parseAs: 'buffer', bodyLimit: mostBytesOfForm }, (_request, _body, next) => next(null, undefined));

  const show = (reply: FastifyReply, status: number, said: SaidPage, words: PageWords) =>
    reply.code(status).headers({ 'content-type': 'text/html; charset=utf-8', 'content-security-policy': pagePolicy, 'x-robots-tag': 'noindex' }).send(pageOf(said, words));
  const wordsOf = (request: FastifyRequest) => wordsFor(headerOf(request, 'accept-language'));

  for (const link of ['stop', 'notAsked', 'confirm'] as const) {
    const path = `${linkPaths[link]}:token`;
    app.get(path, (request, reply) => {
      const words = wordsOf(request);
      return show(reply, 200, words[link].ask, words);
    });
    app.post<{ Params: { token: string } }>(path, async (request, reply) => {
      const since = clock.elapsed();
      const words = wordsOf(request);
      const network = networkOf(request);
      if (wrong.isEmpty(network)) return show(reply.header('retry-after', '600'), 429, words.tooOften, words);
      let known: boolean;
      try {
        known = form.test(request.params.token) && await done[link](request.params.token);
      } catch (error) {
        log.error('link not served', error, { link });
        return show(reply.header('retry-after', '60'), 503, words.notNow, words);
      }
      if (known) metrics.linkUsed(link);
      else wrong.take(network);
      log.info('link', { link, known });
      await notSooner(clock, since);
      return known ? show(reply, 200, words[link].done, words) : show(reply, 404, words.unknown, words);
    });
  }
}
