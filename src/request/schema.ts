/** What is handed to a relay. The single definition of `acre-to-axle/request/1` and of its sealed form. */
import { answers } from '../answers/schema.ts';
import { isAddress, longestAddress } from '../documents/mail-address.ts';
import * as z from '../zod.ts';
import { goodTimes, longest, requestFormat, requestKinds, sealedFormat } from './names.ts';
import { isName, isPhone } from './typed.ts';

const id = z.string().check(z.regex(new RegExp(`^[A-Za-z0-9][A-Za-z0-9._-]{0,${longest.dealer - 1}}$`)));
const language = z.string().check(z.regex(/^[a-z]{2,3}(?:-[A-Za-z0-9]{2,8}){0,3}$/));
/** As a catalogue has it: `2026-04-30`. */
const day = z.string().check(z.regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/));
const version = z.string().check(z.minLength(1), z.maxLength(100));
const base64Url = (most: number) => z.string().check(z.maxLength(most), z.regex(/^[A-Za-z0-9_-]+$/));

/** Most signs of what a form or a machine adds, and of a sealed request. */
const [mostTicket, mostWork, mostSealed] = [600, 200, 90_000];

export const request = z.strictObject({
  format: z.literal(requestFormat),
  kind: z.enum(requestKinds),
  /** The id of the dealer's catalogue. */
  dealer: id,
  answers,
  /** Where the shortlist goes: one address. */
  address: z.string().check(z.maxLength(longestAddress), z.refine(isAddress)),
  /** Without `mail` nothing is sent, so there is no request without it. */
  consent: z.strictObject({ mail: z.literal(true), dealerCopy: z.boolean(), statistics: z.boolean() }),
  /** For the dealer's copy alone; read only with `consent.dealerCopy`. */
  contact: z.optional(z.strictObject({
    name: z.optional(z.string().check(z.maxLength(longest.name), z.refine(isName))),
    phone: z.optional(z.string().check(z.maxLength(longest.phone), z.refine(isPhone))),
    goodTime: z.optional(z.enum(goodTimes)),
  })),
  /** Of the mail, as BCP 47 has it. */
  language,
  /** In what the buyer reads figures. */
  units: z.enum(['us', 'metric']),
  /** What he saw his shortlist reckoned with. */
  seen: z.strictObject({ catalogue: z.strictObject({ id, version: z.optional(version), asOf: z.optional(day) }), rules: z.strictObject({ version }) }),
  /** What shows that a form was open: given out by the relay. */
  ticket: z.optional(z.string().check(z.maxLength(mostTicket))),
  /** A field no person sees; what is in it counts against the request and refuses none. */
  leftEmpty: z.optional(z.string().check(z.maxLength(200))),
  /** What a page reckoned where the relay asked for it. */
  work: z.optional(base64Url(mostWork)),
});
export type RequestDocument = z.infer<typeof request>;

/** A request that only the relay can read (RFC 9180), for wherever it has to lie a while. */
export const sealed = z.strictObject({
  format: z.literal(sealedFormat),
  /** Which of the relay's keys it is sealed to. */
  key: id,
  dealer: id,
  /** The encapsulated key, and the request under it: base64url. */
  enc: base64Url(200),
  box: base64Url(mostSealed),
});
export type SealedRequest = z.infer<typeof sealed>;

/** A key to seal to: an uncompressed P-256 point, base64url. */
export const relayKey = z.strictObject({ id, publicKey: base64Url(100) });
export type RelayKey = z.infer<typeof relayKey>;
export const relayKeys = z.strictObject({ keys: z.array(relayKey).check(z.minLength(1), z.maxLength(10)) });
