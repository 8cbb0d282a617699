/**
 * Sealing to this device: whatever is parked is readable with its private key alone, and parking needs none. One
 * ephemeral ECDH P-256 key a box, HKDF-SHA256, AES-256-GCM: the relay's seal has the same parts, but takes requests only.
 */
const curve = { name: 'ECDH', namedCurve: 'P-256' } as const;
const bytesOf = (text: string) => new TextEncoder().encode(text);
const info = bytesOf('acre-to-axle/parked/1');
/** Each key seals one box, so one nonce does for all. */
const nonce = new Uint8Array(12);
/** Lengths are made alike in steps of so many bytes: a length would tell something of what is in it. */
const step = 1_024;

export interface DeviceBox {
  /** The ephemeral public key, an uncompressed point. */
  enc: Uint8Array<ArrayBuffer>;
  box: Uint8Array<ArrayBuffer>;
}

function padded(text: string) {
  const bytes = bytesOf(text);
  const whole = new Uint8Array(Math.ceil(bytes.length / step) * step).fill(' '.charCodeAt(0));
  whole.set(bytes);
  return whole;
}

async function keyOf(privateKey: CryptoKey, publicKey: CryptoKey, enc: Uint8Array<ArrayBuffer>) {
  const shared = await crypto.subtle.importKey('raw', await crypto.subtle.deriveBits({ name: 'ECDH', public: publicKey }, privateKey, 256), 'HKDF', false, ['deriveKey']);
  return crypto.subtle.deriveKey({ name: 'HKDF', hash: 'SHA-256', salt: enc, info }, shared, { name: 'AES-GCM', length: 256 }, false, ['encrypt', 'decrypt']);
}

const publicKeyOf = (bytes: Uint8Array<ArrayBuffer>) => crypto.subtle.importKey('raw', bytes, curve, true, []);

/** A pair whose private key can be wrapped and nothing else. */
export const newDeviceKeys = () => crypto.subtle.generateKey(curve, true, ['deriveBits']);

/**
 * @param value  anything JSON can hold
 * @param bound  what the box belongs to: it opens with it alone
 */
export async function sealToDevice(value: unknown, devicePublicKey: Uint8Array<ArrayBuffer>, bound: string): Promise<DeviceBox> {
  const ephemeral = await crypto.subtle.generateKey(curve, false, ['deriveBits']);
  const enc = new Uint8Array(await crypto.subtle.exportKey('raw', ephemeral.publicKey));
  const key = await keyOf(ephemeral.privateKey, await publicKeyOf(devicePublicKey), enc);
  return { enc, box: new Uint8Array(await crypto.subtle.encrypt({ name: 'AES-GCM', iv: nonce, additionalData: bytesOf(bound) }, key, padded(JSON.stringify(value)))) };
}

/** @returns undefined where it was sealed to another device or for something else, or is damaged */
export async function openOnDevice({ enc, box }: DeviceBox, privateKey: CryptoKey, bound: string): Promise<unknown> {
  try {
    const key = await keyOf(privateKey, await publicKeyOf(enc), enc);
    return JSON.parse(new TextDecoder().decode(await crypto.subtle.decrypt({ name: 'AES-GCM', iv: nonce, additionalData: bytesOf(bound) }, key, box))) as unknown;
  } catch {
    return undefined;
  }
}

/** What a private key is wrapped under: slow to try PINs against. */
async function wrappingKey(pin: string, salt: Uint8Array<ArrayBuffer>, iterations: number) {
  const typed = await crypto.subtle.importKey('raw', bytesOf(pin.normalize('NFKC')), 'PBKDF2', false, ['deriveKey']);
  return crypto.subtle.deriveKey({ name: 'PBKDF2', hash: 'SHA-256', salt, iterations }, typed, { name: 'AES-GCM', length: 256 }, false, ['wrapKey', 'unwrapKey']);
}

/** A private key as it lies on the disk. */
export interface WrappedKey {
  salt: Uint8Array<ArrayBuffer>;
  iterations: number;
  nonce: Uint8Array<ArrayBuffer>;
  wrapped: Uint8Array<ArrayBuffer>;
}

export async function wrapKey(privateKey: CryptoKey, pin: string, iterations: number): Promise<WrappedKey> {
  const [salt, iv] = [crypto.getRandomValues(new Uint8Array(16)), crypto.getRandomValues(new Uint8Array(12))];
  const wrapped = await crypto.subtle.wrapKey('pkcs8', privateKey, await wrappingKey(pin, salt, iterations), { name: 'AES-GCM', iv });
  return { salt, iterations, nonce: iv, wrapped: new Uint8Array(wrapped) };
}

/**
 * @param extractable  only to wrap it anew
 * @returns undefined with a wrong PIN
 */
export async function unwrapKey({ salt, iterations, nonce: iv, wrapped }: WrappedKey, pin: string, { extractable = false } = {}): Promise<CryptoKey | undefined> {
  try {
    return await crypto.subtle.unwrapKey('pkcs8', wrapped, await wrappingKey(pin, salt, iterations), { name: 'AES-GCM', iv }, curve, extractable, ['deriveBits']);
  } catch {
    return undefined;
  }
}
