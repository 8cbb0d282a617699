import { createHash, createHmac, hash, randomBytes, timingSafeEqual } from 'node:crypto';

/** SHA-256 (FIPS 180-4) of a text, in hexadecimal digits. */
export const sha256 = (text: string) => hash('sha256', text, 'hex');

/** HMAC-SHA-256 (RFC 2104) of what is told apart by its kind, base64url: whoever hasn't the secret can't try out addresses. */
export const keyedHash = (secret: Uint8Array, kind: string, text: string) => createHmac('sha256', secret).update(`${kind}\0${text}`, 'utf8').digest('base64url');

const bytesOfSecret = 32;
/** 256 random bits, base64url. */
export const newSecret = () => randomBytes(bytesOfSecret).toString('base64url');

/** Compared in a time that tells nothing of where they differ. */
export function same(one: string, other: string): boolean {
  const [a, b] = [createHash('sha256').update(one).digest(), createHash('sha256').update(other).digest()];
  return timingSafeEqual(a, b);
}

/** One person's address, however he types it: small letters, without what some put behind a plus to sort their mail (RFC 5233). */
export function personOf(address: string): string {
  const [local = '', domain = ''] = address.toLowerCase().split('@');
  return `${local.replace(/(?<=.)\+.*$/, '')}@${domain}`;
}

/** Keyed hash of whom a mail is for: what the stop list goes by. */
export const recipientOf = (secret: Uint8Array, address: string) => keyedHash(secret, 'recipient', personOf(address));

/**
 * Keyed hash of a mailbox that limits go by. Some hosts of mail let dots stand anywhere (common practice, no source), so
 * that one mailbox has hundreds of addresses; two neighbours who differ by a dot share a limit, and nothing else.
 */
export function mailboxOf(secret: Uint8Array, address: string): string {
  const [local = '', domain = ''] = personOf(address).split('@');
  return keyedHash(secret, 'mailbox', `${local.replaceAll('.', '')}@${domain}`);
}
