/** Longest address that is followed. */
const longest = 2_000;

const followed = { link: ['https:', 'mailto:', 'tel:'], picture: ['https:'] } as const;
const here = ['localhost', '127.0.0.1', '[::1]'];

function parsed(written: string): URL | undefined {
  try {
    return new URL(written);
  } catch {
    return undefined;
  }
}

/**
 * An address from a catalogue as a page may follow it: whole, to a place and not a script, with no credentials
 * in it. `http:` counts only to the machine the page is on.
 *
 * @returns undefined where there is to be no link
 */
export function safeUrl(written: string | undefined, as: keyof typeof followed = 'link'): string | undefined {
  // The address is read without its control characters, so that "java\tscript:" would pass for what it isn't.
  if (written === undefined || written.length > longest || /[\p{Cc}\s]/u.test(written)) return undefined;
  const url = parsed(written);
  if (!url) return undefined;
  const isFollowed = (followed[as] as readonly string[]).includes(url.protocol) || (url.protocol === 'http:' && here.includes(url.hostname));
  return isFollowed && url.username === '' && url.password === '' ? url.href : undefined;
}

/** Nothing of an address may become a further recipient, a subject or a text. */
export const mailUrl = (address: string | undefined) =>
  (address && /^[^\s@?&]+@[^\s@?&]+$/.test(address) ? safeUrl(`mailto:${address.split('@').map(encodeURIComponent).join('@')}`) : undefined);

export const phoneUrl = (number: string | undefined) => {
  const digits = number?.replaceAll(/[^+\d]/g, '');
  return digits ? safeUrl(`tel:${digits}`) : undefined;
};
