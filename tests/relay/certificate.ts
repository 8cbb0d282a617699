/** Certificates for servers of tests, made on the spot (X.509 v3 in DER, RFC 5280), so that no key lies in the repository. */
import { generateKeyPairSync, sign } from 'node:crypto';

const length = (count: number): number[] => {
  if (count < 128) return [count];
  const bytes = [];
  for (let left = count; left > 0; left = Math.floor(left / 256)) bytes.unshift(left % 256);
  return [128 + bytes.length, ...bytes];
};
const tagged = (tag: number, ...contents: readonly (Buffer | number[])[]): Buffer => {
  const content = Buffer.concat(contents.map((each) => Buffer.from(each)));
  return Buffer.concat([Buffer.from([tag, ...length(content.length)]), content]);
};
const sequence = (...contents: readonly Buffer[]) => tagged(0x30, ...contents);
const ecdsaWithSha256 = sequence(tagged(0x06, [0x2a, 0x86, 0x48, 0xce, 0x3d, 0x04, 0x03, 0x02]));
const commonName = (name: string) => sequence(tagged(0x31, sequence(tagged(0x06, [0x55, 0x04, 0x03]), tagged(0x0c, Buffer.from(name)))));
const time = (at: Date) => tagged(0x18, Buffer.from(`${at.toISOString().replace(/[-:T]|\.\d+/g, '')}`));
const alternativeName = (name: string) =>
  sequence(tagged(0x06, [0x55, 0x1d, 0x11]), tagged(0x04, sequence(tagged(0x82, Buffer.from(name)))));
const pem = (der: Buffer) => `-----BEGIN CERTIFICATE-----\n${der.toString('base64').match(/.{1,64}/g)!.join('\n')}\n-----END CERTIFICATE-----\n`;

/** A certificate that vouches for itself. */
export function certificate(name: string, { from, until }: { from: Date; until: Date }): { key: string; cert: string } {
  const { privateKey, publicKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const body = sequence(
    tagged(0xa0, tagged(0x02, [2])), tagged(0x02, [1]), ecdsaWithSha256, commonName(name), sequence(time(from), time(until)), commonName(name),
    publicKey.export({ type: 'spki', format: 'der' }), tagged(0xa3, sequence(alternativeName(name))),
  );
  const signature = sign('sha256', body, privateKey);
  return { key: privateKey.export({ type: 'pkcs8', format: 'pem' }).toString(), cert: pem(sequence(body, ecdsaWithSha256, tagged(0x03, [0], signature))) };
}
