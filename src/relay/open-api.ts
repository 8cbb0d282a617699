import { jsonSchemaOf } from '../documents/json-schema.ts';
import { keyHeader, paths, requestFormat, sealedFormat } from '../request/names.ts';
import { relayKeys, request, sealed } from '../request/schema.ts';
import { problems } from './problems.ts';

const json = (schema: object) => ({ 'application/json': { schema } });
const ref = (name: string) => ({ $ref: `#/components/schemas/${name}` });
const problem = { description: 'A refusal, with one of the codes.', content: { 'application/problem+json': { schema: ref('problem') } } };

/** What every path can be refused with, by status, from the closed list of problems. */
const refusals = (codes: readonly (keyof typeof problems)[]) => Object.fromEntries(codes.map((code) => [String(problems[code].status), problem]));

/**
 * What the relay takes and answers, as OpenAPI 3.1 has it. The schemas are those the relay reads by.
 *
 * @param address  of the relay
 */
export function openApiOf(address: string): object {
  const page = (summary: string) => ({
    parameters: [{ name: 'token', in: 'path', required: true, schema: { type: 'string' } }],
    get: { summary: `${summary}: asks, and changes nothing`, responses: { 200: { description: 'A page with a button.', content: { 'text/html': {} } } } },
    post: { summary, responses: { 200: { description: 'Done, or done before.', content: { 'text/html': {} } }, 404: { description: 'The token isn’t known.', content: { 'text/html': {} } }, 429: { description: 'Too many tokens that aren’t known.', content: { 'text/html': {} } } } },
  });
  return {
    openapi: '3.1.0',
    info: { title: 'acre-to-axle relay', version: '1', description: 'Takes what a buyer wants sent, and sends it.' },
    jsonSchemaDialect: 'https://json-schema.org/draft/2020-12/schema',
    servers: [{ url: address }],
    paths: {
      [paths.shortlists]: {
        post: {
          summary: 'Hands in a request. 202 means that it is on disk.',
          parameters: [{ name: keyHeader, in: 'header', required: true, schema: { type: 'string', format: 'uuid' }, description: 'Made once for what is sent, kept over every attempt.' }],
          security: [{}, { device: [] }],
          requestBody: { required: true, content: json({ oneOf: [ref('request'), ref('sealed')] }) },
          responses: {
            202: { description: 'Taken, now or before.', content: json({ type: 'object', required: ['id'], properties: { id: { type: 'string', format: 'uuid' } } }) },
            ...refusals(['not-a-request', 'device', 'origin', 'dealer', 'slow', 'too-large', 'type', 'other-body', 'limited', 'busy']),
          },
        },
      },
      [paths.ticket]: {
        get: {
          summary: 'What shows that a form was open, and what it has to reckon: a text whose SHA-256, behind the ticket and a colon, begins with so many zero bits.',
          parameters: [{ name: 'dealer', in: 'query', required: true, schema: { type: 'string' } }],
          responses: {
            200: {
              description: 'A ticket, good for so many seconds and for one request.',
              content: json({ type: 'object', required: ['ticket', 'goodFor'], properties: { ticket: { type: 'string' }, goodFor: { type: 'integer' }, work: { type: 'object', properties: { bits: { type: 'integer' } } } } }),
            },
            ...refusals(['origin', 'dealer', 'limited']),
          },
        },
      },
      [paths.keys]: { get: { summary: 'The key to seal to.', responses: { 200: { description: 'The key in use.', content: json(ref('keys')) } } } },
      [paths.health]: { get: { summary: 'Whether the relay is there, and the oldest page that may still send.', responses: { 200: { description: 'It is.', content: json({ type: 'object', properties: { ok: { const: true }, minVersion: { type: 'string' } } }) } } } },
      '/readyz': { get: { summary: 'Whether requests are taken.', responses: { 200: { description: 'They are.' }, ...refusals(['busy']) } } },
      '/u/{token}': page('Stops mail to the person it went to'),
      '/n/{token}': page('Stops mail, and says it wasn’t asked for'),
      '/c/{token}': page('Says that it was the buyer'),
    },
    components: {
      securitySchemes: { device: { type: 'http', scheme: 'bearer', description: 'A counter’s token.' } },
      schemas: {
        request: jsonSchemaOf(request, requestFormat, 'What a buyer wants sent'),
        sealed: jsonSchemaOf(sealed, sealedFormat, 'The same, sealed to the relay’s key'),
        keys: jsonSchemaOf(relayKeys, 'acre-to-axle/relay-keys-open/1', 'Keys to seal to'),
        problem: {
          type: 'object', required: ['status', 'code', 'message'],
          properties: {
            status: { type: 'integer' }, code: { enum: Object.keys(problems) }, message: { type: 'string' },
            faults: { type: 'array', items: { type: 'object', properties: { place: { type: 'string' }, expected: { type: 'string' } } } },
          },
        },
      },
    },
  };
}
