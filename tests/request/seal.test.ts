import { createCipheriv, createDecipheriv, createECDH, createHmac } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { newRelayKey, open, seal } from '../../src/request/seal.ts';
import { aRequest } from './a-request.ts';

const [id, other] = ['5f0c9f0e-5a3b-4c1d-9a86-2f4a1f0f7e01', '5f0c9f0e-5a3b-4c1d-9a86-2f4a1f0f7e02'];

/** RFC 9180, sections 4, 4.1 and 5.1, written out for this one suite with Node's own ECDH, HMAC and AES: no code shared with ours. */
const bytes = (text: string) => Buffer.from(text, 'utf8');
const number = (value: number, length: number) => Buffer.from(value.toString(16).padStart(length * 2, '0'), 'hex');
const [kemSuite, suite] = [Buffer.concat([bytes('KEM'), number(0x10, 2)]), Buffer.concat([bytes('HPKE'), number(0x10, 2), number(1, 2), number(2, 2)])];
const hmac = (key: Buffer, ...parts: Buffer[]) => parts.reduce((mac, part) => mac.update(part), createHmac('sha256', key)).digest();
const extract = (id: Buffer, salt: Buffer, label: string, secret: Buffer) => hmac(salt, bytes('HPKE-v1'), id, bytes(label), secret);
const expand = (id: Buffer, secret: Buffer, label: string, info: Buffer, length: number) =>
  hmac(secret, number(length, 2), bytes('HPKE-v1'), id, bytes(label), info, number(1, 1)).subarray(0, length);
const none = Buffer.alloc(0);

function scheduleOf(enc: Buffer, publicKey: Buffer, shared: Buffer, info: Buffer) {
  const secret = expand(kemSuite, extract(kemSuite, none, 'eae_prk', shared), 'shared_secret', Buffer.concat([enc, publicKey]), 32);
  const context = Buffer.concat([number(0, 1), extract(suite, none, 'psk_id_hash', none), extract(suite, none, 'info_hash', info)]);
  const key = extract(suite, secret, 'secret', none);
  return { key: expand(suite, key, 'key', context, 32), nonce: expand(suite, key, 'base_nonce', context, 12) };
}

test('what is sealed opens by RFC 9180 written out again', async () => {
  const { key, privateKey } = await newRelayKey('k1');
  const box = await seal(aRequest, key, id);
  const [enc, sealed] = [Buffer.from(box.enc, 'base64url'), Buffer.from(box.box, 'base64url')];
  const curve = createECDH('prime256v1');
  curve.setPrivateKey(Buffer.from(privateKey, 'base64url'));
  const { key: aes, nonce } = scheduleOf(enc, Buffer.from(key.publicKey, 'base64url'), curve.computeSecret(enc), bytes(box.format));
  const cipher = createDecipheriv('aes-256-gcm', aes, nonce).setAAD(bytes(JSON.stringify([box.dealer, box.key, id]))).setAuthTag(sealed.subarray(-16));
  const text = Buffer.concat([cipher.update(sealed.subarray(0, -16)), cipher.final()]).toString('utf8');
  expect(JSON.parse(text)).toEqual(aRequest);
});

test('what is sealed by RFC 9180 written out again opens', async () => {
  const { key, privateKey } = await newRelayKey('k1');
  const [curve, publicKey] = [createECDH('prime256v1'), Buffer.from(key.publicKey, 'base64url')];
  const enc = curve.generateKeys();
  const { key: aes, nonce } = scheduleOf(enc, publicKey, curve.computeSecret(publicKey), bytes('acre-to-axle/sealed/1'));
  const cipher = createCipheriv('aes-256-gcm', aes, nonce).setAAD(bytes(JSON.stringify(['demo-lot', 'k1', id])));
  const box = Buffer.concat([cipher.update(JSON.stringify(aRequest)), cipher.final(), cipher.getAuthTag()]);
  const sealed = { format: 'acre-to-axle/sealed/1', key: 'k1', dealer: 'demo-lot', enc: enc.toString('base64url'), box: box.toString('base64url') } as const;
  expect(await open(sealed, privateKey, id)).toEqual(aRequest);
});

test('a box opens only with its own key, dealer, relay and untouched', async () => {
  const [mine, his] = await Promise.all([newRelayKey('k1'), newRelayKey('k1')]);
  const box = await seal(aRequest, mine.key, id);
  expect(await open(box, mine.privateKey, id)).toEqual(aRequest);
  expect(await open(box, mine.privateKey, other)).toBeUndefined();
  expect(await open(box, his.privateKey, id)).toBeUndefined();
  expect(await open({ ...box, dealer: 'other-lot' }, mine.privateKey, id)).toBeUndefined();
  expect(await open({ ...box, key: 'k2' }, mine.privateKey, id)).toBeUndefined();
  await fc.assert(fc.asyncProperty(fc.nat(box.box.length - 2), async (at) => {
    const altered = box.box[at] === 'A' ? 'B' : 'A';
    expect(await open({ ...box, box: box.box.slice(0, at) + altered + box.box.slice(at + 1) }, mine.privateKey, id)).toBeUndefined();
  }), { numRuns: 50 });
});

test('nothing of the buyer can be read in a box, nor told by its length', async () => {
  const { key } = await newRelayKey('k1');
  const [one, another] = await Promise.all([seal(aRequest, key, id), seal({ ...aRequest, address: 'a-rather-longer-address@buyer.example' }, key, id)]);
  const read = JSON.stringify(one) + Buffer.from(one.box, 'base64url').toString('latin1');
  for (const word of ['ann', 'buyer.example', 'Neill', '0199', 'mow-lawn']) expect(read).not.toContain(word);
  expect(one.box).toHaveLength(another.box.length);
});
