/** Longest address that is followed. */
const longest = 2_000;
const onThisMachine = ['localhost', '127.0.0.1', '[::1]'];

/**
 * An address as a mail may hold it: whole, by TLS or to the machine the relay is tried out on, with no credentials in it.
 *
 * @returns undefined where there is to be no link
 */
export function safeLink(written: string | undefined): string | undefined {
  // An address is read without its control characters, so that one with them would pass for what it isn't.
  if (written === undefined || written.length > longest || /[\p{Cc}\s]/u.test(written) || !URL.canParse(written)) return undefined;
  const { protocol, hostname, username, password, href } = new URL(written);
  const isFollowed = protocol === 'https:' || (protocol === 'http:' && onThisMachine.includes(hostname));
  return isFollowed && username === '' && password === '' ? href : undefined;
}
