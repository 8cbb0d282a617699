import { canonicalJson } from '../../sheets/sheets.ts';
import type { RequestDocument } from '../../request/schema.ts';
import { keyedHash, personOf, sha256 } from '../hashes.ts';

/** What is kept of a request: what the form or a machine added is not, nor a contact nobody may pass on. */
export function keptOf(request: RequestDocument): RequestDocument {
  const kept = { ...request };
  for (const key of ['ticket', 'leftEmpty', 'work', ...(request.consent.dealerCopy ? [] : ['contact'])] as const) delete kept[key as keyof RequestDocument];
  return kept;
}

/** SHA-256 over the canonical form (RFC 8785) of what is asked for; a ticket fetched anew for another attempt makes no other request. */
export const fingerprintOf = (kept: RequestDocument) => sha256(canonicalJson(kept));

/** Alike are requests of one person to one dealer for the same, whatever key they come under. */
export const likenessOf = (secret: Uint8Array, { dealer, kind, address, answers }: RequestDocument) =>
  keyedHash(secret, 'likeness', canonicalJson([dealer, kind, personOf(address), answers]));
