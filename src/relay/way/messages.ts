import { randomBytes, randomUUID } from 'node:crypto';
import type { RequestDocument } from '../../request/schema.ts';
import { recipientOf } from '../hashes.ts';
import type { Dealer } from '../settings/dealer.ts';
import type { MessageIds, NewMessage, Role } from '../store/store.ts';
import type { Standing } from './score.ts';

/** 192 random bits: what the links to stop, to deny and to confirm go by. */
const tokenBytes = 24;

/** @param domain  as in {@link messagesOf} */
export const newIds = (domain: string): MessageIds => ({ messageId: `<${randomUUID()}@${domain}>`, token: randomBytes(tokenBytes).toString('base64url') });

/**
 * The mails a request makes: to the buyer, to the dealer where the buyer let him have a copy, and before both the question
 * whether it was he, where that isn't certain enough.
 *
 * @param domain  of the sender: the right-hand side of Message-IDs (RFC 5322, section 3.6.4)
 */
export function messagesOf(request: RequestDocument, dealer: Dealer, standing: Standing, secret: Uint8Array, domain: string): NewMessage[] {
  const message = (role: Role, address: string, state: NewMessage['state']): NewMessage => ({
    role, state,
    recipient: recipientOf(secret, address),
    ...newIds(domain),
  });
  return [
    ...(standing === 'unconfirmed' ? [message('confirm', request.address, 'queued')] : []),
    message('buyer', request.address, standing),
    ...(request.consent.dealerCopy ? [message('dealer', dealer.mail, standing)] : []),
  ];
}
