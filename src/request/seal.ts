/**
 * Sealing to a relay (HPKE, RFC 9180: base mode, DHKEM(P-256, HKDF-SHA256), HKDF-SHA256, AES-256-GCM). What is sealed
 * here can't be read here again: a device that is stolen holds nothing of a buyer.
 */
import { Aes256Gcm, CipherSuite, DhkemP256HkdfSha256, HkdfSha256 } from '@hpke/core';
import { fromBase64Url, toBase64Url } from './base64url.ts';
import { sealedFormat } from './names.ts';
import type { RelayKey, RequestDocument, SealedRequest } from './schema.ts';

const suite = new CipherSuite({ kem: new DhkemP256HkdfSha256(), kdf: new HkdfSha256(), aead: new Aes256Gcm() });
const bytesOf = (text: string) => new TextEncoder().encode(text);

/** Bound to what stands outside the seal, so that nobody puts a box under another dealer or another key of the request. */
const bound = (dealer: string, key: string, idempotencyKey: string) => bytesOf(JSON.stringify([dealer, key, idempotencyKey]));
const info = bytesOf(sealedFormat);
/** Lengths of boxes are made alike in steps of so many bytes: a length would tell something of what is in it. */
const step = 1_024;

const padded = (text: string) => {
  const bytes = bytesOf(text);
  const whole = new Uint8Array(Math.ceil(bytes.length / step) * step).fill(' '.charCodeAt(0));
  whole.set(bytes);
  return whole;
};

/**
 * Seals a request before it is written anywhere.
 *
 * @param idempotencyKey  the request's own; a box opens with it alone
 * @throws Error where the relay's key is none
 */
export async function seal(request: RequestDocument, relayKey: RelayKey, idempotencyKey: string): Promise<SealedRequest> {
  const recipientPublicKey = await suite.kem.deserializePublicKey(fromBase64Url(relayKey.publicKey).buffer);
  const { ct, enc } = await suite.seal({ recipientPublicKey, info }, padded(JSON.stringify(request)).buffer, bound(request.dealer, relayKey.id, idempotencyKey).buffer as ArrayBuffer);
  return { format: sealedFormat, key: relayKey.id, dealer: request.dealer, enc: toBase64Url(new Uint8Array(enc)), box: toBase64Url(new Uint8Array(ct)) };
}

/**
 * Opens a sealed request.
 *
 * @param privateKey  the relay's, as {@link newRelayKey} gave it: base64url
 * @returns the parsed text, still to be read by `readRequest`; undefined where key, dealer or idempotency key aren't those it was sealed with
 */
export async function open(box: SealedRequest, privateKey: string, idempotencyKey: string): Promise<unknown> {
  try {
    const recipientKey = await suite.kem.deserializePrivateKey(fromBase64Url(privateKey).buffer);
    const opened = await suite.open({ recipientKey, enc: fromBase64Url(box.enc).buffer, info }, fromBase64Url(box.box).buffer, bound(box.dealer, box.key, idempotencyKey).buffer as ArrayBuffer);
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(opened)) as unknown;
  } catch {
    return undefined;
  }
}

/** A pair for a relay to begin with. */
export async function newRelayKey(id: string): Promise<{ key: RelayKey; privateKey: string }> {
  const { publicKey, privateKey } = await suite.kem.generateKeyPair();
  const [open, secret] = await Promise.all([suite.kem.serializePublicKey(publicKey), suite.kem.serializePrivateKey(privateKey)]);
  return { key: { id, publicKey: toBase64Url(new Uint8Array(open)) }, privateKey: toBase64Url(new Uint8Array(secret)) };
}
