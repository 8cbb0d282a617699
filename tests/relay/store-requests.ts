import type { RequestDocument } from '../../src/request/schema.ts';
import type { NewMessage, NewRequest, Take } from '../../src/relay/store/store.ts';
import { aRequest } from '../request/a-request.ts';

/** A moment to begin with: 12 May 2026, noon. */
export const noon = Date.UTC(2026, 4, 12, 12);

interface Wanted {
  /** What tells it from others: key, likeness, ids and tokens are made of it. */
  name: string;
  dealer?: string;
  address?: string;
  roles?: readonly NewMessage['role'][];
  state?: NewMessage['state'];
  /** Keyed hash of the buyer. */
  recipient?: string;
  statistics?: boolean;
  likeness?: string;
}

/** A request to store, all of whose ids are told from its name. */
export function newRequest({ name, dealer = 'demo-lot', address = 'ann@buyer.example', roles = ['buyer'], state = 'queued', recipient = `hash of ${address}`, statistics = false, likeness = `like ${name}` }: Wanted): NewRequest {
  const request: RequestDocument = { ...aRequest, dealer, address, consent: { ...aRequest.consent, dealerCopy: roles.includes('dealer'), statistics } };
  return {
    id: name, dealer, fingerprint: `print of ${name}`, likeness, request,
    messages: roles.map((role) => ({
      role, state, recipient: role === 'dealer' ? `hash of ${dealer}` : recipient, messageId: `<${name}.${role}@relay.example>`, token: `token-${name}-${role}`,
    })),
  };
}

export const take = (bucket: string, most: number, fills: number): Take => ({ bucket, most, fills });
