import { lookup as find } from 'node:dns';
import { get } from 'node:https';
import { BlockList, isIPv4 } from 'node:net';
import type { LookupFunction } from 'node:net';

/** Longest a fetch may take [ms], and most bytes of a catalogue. */
const [longest, mostBytes] = [10_000, 20 * 1024 * 1024];

/** Networks nothing of a dealer's is in: this machine's, its neighbours', its host's (IANA special-purpose address registries, RFC 6890). */
const closed = new BlockList();
for (const [network, bits] of [['0.0.0.0', 8], ['10.0.0.0', 8], ['100.64.0.0', 10], ['127.0.0.0', 8], ['169.254.0.0', 16], ['172.16.0.0', 12], ['192.0.0.0', 24], ['192.168.0.0', 16], ['198.18.0.0', 15], ['224.0.0.0', 3]] as const) closed.addSubnet(network, bits, 'ipv4');
for (const [network, bits] of [['::', 96], ['::ffff:0:0', 96], ['64:ff9b::', 96], ['fc00::', 7], ['fe80::', 10], ['ff00::', 8]] as const) closed.addSubnet(network, bits, 'ipv6');

/** Whether an address is one of the open net. */
export const isOpen = (address: string) => !closed.check(address, isIPv4(address) ? 'ipv4' : 'ipv6');

/** Looked up once, and that very address is connected to: a name that answers otherwise a moment later gains nothing. */
const lookupOpen: LookupFunction = (hostname, options, callback) => find(hostname, { ...options, all: true }, (error, found) => {
  const open = error ? [] : found.filter(({ address }) => isOpen(address));
  if (open.length === 0) callback(error ?? Object.assign(new Error('no open address'), { code: 'ENOTOPEN' }), '', 0);
  else if (options.all) callback(null, open);
  else callback(null, open[0]!.address, open[0]!.family);
});

/** The text behind an https address. Fails with a code: of Node, of the status, or of ours; redirects are not followed. */
export function fetchText(address: string): Promise<string> {
  const { hostname } = new URL(address);
  const bare = hostname.replace(/^\[|\]$/g, '');
  const isNumber = isIPv4(bare) || bare.includes(':');
  return new Promise((resolve, reject) => {
    const fail = (code: string) => reject(Object.assign(new Error(code), { code }));
    if (isNumber && !isOpen(bare)) {
      fail('ENOTOPEN');
      return;
    }
    const asked = get(address, { lookup: lookupOpen, signal: AbortSignal.timeout(longest), headers: { accept: 'application/json' } }, (response) => {
      if (response.statusCode !== 200) {
        response.destroy();
        fail(`HTTP ${response.statusCode}`);
        return;
      }
      const pieces: Buffer[] = [];
      let bytes = 0;
      response.on('data', (piece: Buffer) => {
        bytes += piece.length;
        pieces.push(piece);
        if (bytes > mostBytes) asked.destroy(Object.assign(new Error('too large'), { code: 'EFBIG' }));
      });
      response.on('end', () => resolve(Buffer.concat(pieces).toString('utf8')));
      response.on('error', reject);
    });
    asked.on('error', reject);
  });
}
