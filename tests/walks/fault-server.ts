import { createServer, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { gzipSync } from 'node:zlib';

/** What a server of another host may do with a catalogue; each under its name as a path. */
export interface FaultServer {
  /** Without a slash at its end. */
  address: string;
  /** How often each path was asked for. */
  asked: ReadonlyMap<string, number>;
  close(): Promise<void>;
}

type Answer = (response: ServerResponse, time: number) => void;

const megabytes = (count: number) => ' '.repeat(count * 1_000_000);
const open = { 'access-control-allow-origin': '*' };
const json = { ...open, 'content-type': 'application/json' };

/** @param good  a catalogue that can be used, as text */
export async function serveFaults(good: string): Promise<FaultServer> {
  const send = (body: string | Buffer, headers: Record<string, string> = json, status = 200): Answer => (response) => { response.writeHead(status, headers).end(body); };
  const altered = (change: (document: Record<string, unknown>) => void) => {
    const document = JSON.parse(good) as Record<string, unknown>;
    change(document);
    return JSON.stringify(document);
  };
  const answers: Readonly<Record<string, Answer>> = {
    good: send(good),
    'as-text': send(good, { ...open, 'content-type': 'text/plain; charset=utf-8' }),
    'byte-order-mark': send(`\uFEFF${good}`),
    'not-there': send('Not found', json, 404),
    'server-error': send('Oops', json, 500),
    'error-once': (response, time) => (time === 1 ? response.writeHead(503, open).end() : response.writeHead(200, json).end(good)),
    'log-in': send('<!doctype html><title>Log in</title>', { ...open, 'content-type': 'text/html' }),
    'wrong-type': send(good, { ...open, 'content-type': 'image/svg+xml' }),
    'no-cors': send(good, { 'content-type': 'application/json' }),
    'broken-off': (response) => {
      response.writeHead(200, { ...json, 'content-length': String(Buffer.byteLength(good)) });
      response.write(good.slice(0, good.length / 2), () => response.destroy());
    },
    truncated: send(good.slice(0, good.length * 0.9)),
    'trailing-comma': send(good.replace(/\}\s*$/, ',}')),
    empty: send(''),
    'utf-16': send(Buffer.from(`\uFEFF${good}`, 'utf16le')),
    'empty-list': send('[]'),
    'no-machines': send(altered((document) => { document['machines'] = []; })),
    newer: send(altered((document) => { document['format'] = 'acre-to-axle/catalogue/2'; })),
    'not-one': send('{"format":"something else"}'),
    'too-many-rows': send(altered((document) => { document['units'] = Array.from({ length: 5_001 }, () => ({})); })),
    'too-large': send(`${good}${megabytes(6)}`),
    'gzip-bomb': send(gzipSync(megabytes(60)), { ...json, 'content-encoding': 'gzip' }),
    sold: send(altered((document) => { document['units'] = (document['units'] as object[]).map((unit) => ({ ...unit, status: 'sold' })); })),
    old: send(altered((document) => { document['asOf'] = '2021-03-01'; })),
    'bad-unit': send(altered((document) => { document['units'] = (document['units'] as object[]).map((unit, index) => (index === 0 ? { ...unit, hours: -5, photo: 'javascript:alert(1)' } : unit)); })),
    'bad-machine': send(altered((document) => { document['machines'] = (document['machines'] as object[]).map((machine, index) => (index === 0 ? { ...machine, mass: { value: -5, unit: 'lb' } } : machine)); })),
    // Ends only when the client does.
    stalled: (response) => {
      response.writeHead(200, json);
      response.write(good.slice(0, good.length * 0.9));
    },
    'no-answer': () => {},
    'gone-later': (response, time) => (time === 1 ? response.writeHead(200, json).end(good) : response.writeHead(404, open).end()),
    'bad-later': (response, time) => { response.writeHead(200, json).end(time === 1 ? good : '{"format":"acre-to-axle/catalogue/1"}'); },
  };
  const asked = new Map<string, number>();
  const server = createServer((request, response) => {
    const name = new URL(request.url ?? '/', 'http://host').pathname.slice(1);
    const time = (asked.get(name) ?? 0) + 1;
    asked.set(name, time);
    const answer = answers[name];
    if (answer) answer(response, time);
    else response.writeHead(418).end();
  });
  await new Promise<void>((resolve) => { server.listen(0, '127.0.0.1', resolve); });
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    asked,
    close: () => new Promise<void>((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    }),
  };
}
