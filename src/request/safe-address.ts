/** Longest address that is followed. */
const longest = 2_000;
const onThisMachine = ['localhost', '127.0.0.1', '[::1]'];

function parsed(written: string): URL | undefined {
  try {
    return new URL(written);
  } catch {
    return undefined;
  }
}

/**
 * An address that somebody else wrote as a page or a mail of ours may hold it: whole, by one of the protocols or, without
 * TLS, to this machine, and with no credentials in it.
 *
 * @param protocols  each with its colon
 * @returns undefined where there is to be no link
 */
export function safeAddress(written: string | undefined, protocols: readonly string[]): string | undefined {
  // An address is read without its control characters, so that "java\tscript:" would pass for what it isn't.
  if (written === undefined || written.length > longest || /[\p{Cc}\s]/u.test(written)) return undefined;
  const address = parsed(written);
  if (!address) return undefined;
  const { protocol, hostname, username, password, href } = address;
  const isFollowed = protocols.includes(protocol) || (protocol === 'http:' && onThisMachine.includes(hostname));
  return isFollowed && username === '' && password === '' ? href : undefined;
}
