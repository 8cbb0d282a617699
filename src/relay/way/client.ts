import { BlockList, isIP, isIPv4 } from 'node:net';

const ofIpv4 = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i;

/** An address as it is written everywhere here: without a zone, IPv4 as such even where it came in IPv6 (RFC 4291, section 2.5.5.2). */
export function plainAddress(written: string): string | undefined {
  const bare = written.trim().replace(/%.*$/, '');
  const address = ofIpv4.exec(bare)?.[1] ?? bare;
  return isIP(address) ? address.toLowerCase() : undefined;
}

const groups = 8;
/** Groups of an IPv6 address that name a network: the first 64 bits. */
const networkGroups = 4;

function groupsOf(address: string): string[] {
  const [head = '', tail] = address.split('::');
  const before = head === '' ? [] : head.split(':');
  const after = tail === undefined || tail === '' ? [] : tail.split(':');
  const between = tail === undefined ? 0 : groups - before.length - after.length;
  return [...before, ...Array.from({ length: between }, () => '0'), ...after].map((group) => group.replace(/^0+(?=.)/, ''));
}

/** What counts as one client: an IPv4 address, or the /64 of an IPv6 address, for one household or server has all of that. */
export const networkOf = (address: string) => (isIPv4(address) ? address : `${groupsOf(address).slice(0, networkGroups).join(':')}::/64`);

/** Peers whose word on a client's address is taken. */
export interface Proxies {
  has(address: string): boolean;
}

/** @param listed  addresses, or networks such as 10.0.0.0/8 */
export function proxiesOf(listed: readonly string[]): Proxies {
  const list = new BlockList();
  // Nearly all come by the same few, and asking the list is dear.
  const alone = new Set(listed);
  const family = (address: string) => (isIPv4(address) ? 'ipv4' : 'ipv6');
  for (const each of listed) {
    const [address = '', bits] = each.split('/');
    if (bits === undefined) list.addAddress(address, family(address));
    else list.addSubnet(address, Number(bits), family(address));
  }
  return { has: (address) => alone.has(address) || list.check(address, family(address)) };
}

/**
 * The client behind a connection: the peer, or, where the peer is a proxy we know, the last address of X-Forwarded-For that
 * isn't one. What stands before it anybody can have written.
 */
export function clientOf(peer: string | undefined, forwarded: string | undefined, proxies: Proxies): string {
  const near = plainAddress(peer ?? '') ?? '0.0.0.0';
  if (!proxies.has(near) || forwarded === undefined) return near;
  let client = near;
  for (const written of forwarded.split(',').reverse()) {
    const address = plainAddress(written);
    if (!address) return client;
    client = address;
    if (!proxies.has(address)) return client;
  }
  return client;
}
