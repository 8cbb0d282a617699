import { readFileSync } from 'node:fs';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { composedOf } from '../../src/relay/mail/compose.ts';
import type { Composed, Composing } from '../../src/relay/sender/composed.ts';
import { messageOf } from '../../src/relay/sender/message.ts';
import { requestFormat } from '../../src/request/names.ts';
import type { RequestDocument } from '../../src/request/schema.ts';
import { rulesVersion } from '../../src/trade/book.ts';

export const demo = JSON.parse(readFileSync('demo/catalogue.json', 'utf8')) as CatalogueDocument;
export const relayAddress = 'https://mail.relay.example/';
export const token = 'tokenTokenTokenTokenTokenTokenToken';
export const page = 'https://www.dealer-of-used-tractors.example/used/';

/** What a scene changes of the usual one. */
export interface Scene {
  role?: Composing['role'];
  isWord?: boolean;
  catalogue?: CatalogueDocument;
  request?: Partial<RequestDocument>;
  dealer?: Partial<Composing['dealer']>;
  asSeen?: boolean;
}

let read = 0;
export function composing(answers: AnswersDocument, { role = 'buyer', isWord = false, catalogue = demo, request = {}, dealer = {}, asSeen = true }: Scene = {}): Composing {
  const document: RequestDocument = {
    format: requestFormat, kind: 'shortlist', dealer: catalogue.id, answers, address: 'ann@buyer.example', consent: { mail: true, dealerCopy: true, statistics: false },
    contact: { name: 'Ann Buyer', phone: '555-555-0199', goodTime: 'evening' }, language: 'en', units: 'us',
    seen: { catalogue: { id: catalogue.id, version: 'v-seen' }, rules: { version: rulesVersion } }, ...request,
  };
  read += catalogue === demo ? 0 : 1;
  return {
    role, isWord, document, asSeen, token,
    dealer: { id: catalogue.id, mail: 'yard@dealer.example', senderName: 'Hollowmere Valley Tractors', postalAddress: '41 Quarry Lane, Hollowmere', page, ...dealer },
    catalogue: { dealer: catalogue.id, hash: catalogue === demo ? 'demo' : `other ${read}`, version: 'v-seen', asOf: catalogue.asOf, text: JSON.stringify(catalogue) },
  };
}

export const mailOf = (answers: AnswersDocument, scene?: Scene): Composed => composedOf(composing(answers, scene), relayAddress);

/** The mail as it goes out. */
export async function sentMail(mail: Composed, to = 'ann@buyer.example'): Promise<string> {
  const { raw } = await messageOf(mail, { to, sender: 'shortlists@relay.example', bounces: 'bounce.relay.example', messageId: '<0123456789abcdef@relay.example>', token, date: Date.UTC(2026, 10, 26, 9) });
  return new TextDecoder().decode(raw);
}
