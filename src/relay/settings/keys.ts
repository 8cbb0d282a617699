import { readFile, stat, writeFile } from 'node:fs/promises';
import { readDocument } from '../../documents/read.ts';
import { fromBase64Url } from '../../request/base64url.ts';
import { newRelayKey } from '../../request/seal.ts';
import * as z from '../../zod.ts';
import { day } from '../clock.ts';
import { newSecret } from '../hashes.ts';
import type { Instant } from '../store/store.ts';
import { replaceFile } from './replace-file.ts';

const keysFormat = 'acre-to-axle/relay-keys/1';
/** How long what was replaced is still taken: what a counter sealed before, lying in its queue. */
const overlap = 60 * day;

const secret = z.string().check(z.regex(/^[A-Za-z0-9_-]{43}$/));
const id = z.string().check(z.regex(/^[a-z0-9-]{1,64}$/));
const until = z.optional(z.int().check(z.minimum(0)));
const keysDocument = z.strictObject({
  format: z.literal(keysFormat),
  /** Keyed hashes of addresses are made with it. Never replaced: the stop list goes by them. */
  addresses: secret,
  tickets: z.array(z.strictObject({ id, secret, until })).check(z.minLength(1)),
  seals: z.array(z.strictObject({ id, publicKey: z.string(), privateKey: z.string(), until })).check(z.minLength(1)),
});
type KeysDocument = z.infer<typeof keysDocument>;

/** What a relay keeps secret. Of each kind the first is used, and the others are still taken until their time is over. */
export interface Keys {
  addresses: Uint8Array;
  ticketSecrets(now: Instant): readonly { id: string; secret: Uint8Array }[];
  seals(now: Instant): readonly { id: string; publicKey: string; privateKey: string }[];
}

const inTime = <T extends { until?: number | undefined }>(all: readonly T[], now: Instant) => all.filter((each) => each.until === undefined || each.until > now);

const keysOf = ({ addresses, tickets, seals }: KeysDocument): Keys => ({
  addresses: fromBase64Url(addresses),
  ticketSecrets: (now) => inTime(tickets, now).map((each) => ({ id: each.id, secret: fromBase64Url(each.secret) })),
  seals: (now) => inTime(seals, now),
});

const nameOf = (now: Instant, taken: readonly string[]) => {
  const stem = `k${new Date(now).toISOString().slice(0, 10)}`;
  const tries = Array.from({ length: taken.length + 1 }, (_, index) => (index === 0 ? stem : `${stem}-${index + 1}`));
  return tries.find((name) => !taken.includes(name))!;
};

async function newest(now: Instant, taken: readonly string[]) {
  const name = nameOf(now, taken);
  const { key, privateKey } = await newRelayKey(name);
  return { ticket: { id: name, secret: newSecret() }, seal: { ...key, privateKey } };
}

const shown = (document: KeysDocument) => `${JSON.stringify(document, undefined, 1)}\n`;
/** Read and written by the owner alone. */
const ownerOnly = 0o600;
const anybodyElse = 0o077;

/** Makes the file of a new relay. @throws where there is one */
export async function makeKeys(path: string, now: Instant): Promise<Keys> {
  const { ticket, seal } = await newest(now, []);
  const document: KeysDocument = { format: keysFormat, addresses: newSecret(), tickets: [ticket], seals: [seal] };
  await writeFile(path, shown(document), { mode: ownerOnly, flag: 'wx' });
  return keysOf(document);
}

/** What is the matter with a file of keys; never what is in it. */
export class KeysFault extends Error {}

async function readKeysDocument(path: string): Promise<KeysDocument> {
  const { mode } = await stat(path);
  if (process.platform !== 'win32' && (mode & anybodyElse) !== 0) throw new KeysFault(`${path}: others on this machine can read the relay’s secrets; make it the owner’s alone: chmod 600 ${path}`);
  let parsed: unknown;
  try {
    parsed = JSON.parse(await readFile(path, 'utf8'));
  } catch {
    throw new KeysFault(`${path}: the file of secrets can’t be read as JSON; put it back from a backup`);
  }
  const { value, faults, unknownKeys } = readDocument(keysDocument, parsed);
  if (!value || unknownKeys.length > 0) {
    const places = [...faults, ...unknownKeys].map(({ place }) => place || 'the whole').join(', ');
    throw new KeysFault(`${path}: this is no file of a relay’s secrets (see ${places}); put it back from a backup`);
  }
  return value;
}

/** @throws KeysFault, or as Node does where there is none */
export const readKeys = async (path: string) => keysOf(await readKeysDocument(path));

/** Puts new ones first, and lets those before them be taken for sixty days more. What is past that is left out. */
export async function rotateKeys(path: string, now: Instant): Promise<void> {
  const old = await readKeysDocument(path);
  const { ticket, seal } = await newest(now, old.seals.map(({ id: each }) => each));
  const ending = <T extends { until?: number | undefined }>(all: readonly T[]) => inTime(all, now).map((each) => ({ ...each, until: each.until ?? now + overlap }));
  await replaceFile(path, shown({ ...old, tickets: [ticket, ...ending(old.tickets)], seals: [seal, ...ending(old.seals)] }), ownerOnly);
}
