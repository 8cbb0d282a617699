import { isAddress, longestAddress } from '../../documents/mail-address.ts';
import { longest } from '../../request/names.ts';
import * as z from '../../zod.ts';

export const settingsFormat = 'acre-to-axle/relay-settings/1';

/** Limits of a dealer who says nothing of his own. */
export const usualLimits = { perHour: 60, perDay: 500, devicePerHour: 60 } as const;

const onThisMachine = new Set(['localhost', '127.0.0.1', '[::1]']);
/** An origin exactly as browsers send it (RFC 6454): https, or http on this machine, no path. */
function isOrigin(text: string): boolean {
  try {
    const { origin, protocol, hostname } = new URL(text);
    return origin === text && (protocol === 'https:' || (protocol === 'http:' && onThisMachine.has(hostname)));
  } catch {
    return false;
  }
}

const isPage = (text: string) => URL.canParse(text) && isOrigin(new URL(text).origin) && new URL(text).hash === '' && new URL(text).username === '';

const many = z.int().check(z.minimum(1), z.maximum(100_000));
/** One line for people: no control or formatting signs. */
const line = (most: number) => z.string().check(z.minLength(1), z.maxLength(most), z.regex(/^[^\p{Cc}\p{Cf}\p{Zl}\p{Zp}]*$/u));
const address = z.string().check(z.maxLength(longestAddress), z.refine(isAddress));
const catalogue = z.string().check(z.minLength(1), z.maxLength(2_000), z.regex(/^(?!http:)/));

const [longestSender, longestPost] = [100, 300];

export const dealer = z.strictObject({
  /** As in his catalogue. */
  id: z.string().check(z.regex(new RegExp(`^[A-Za-z0-9][A-Za-z0-9._-]{0,${longest.dealer - 1}}$`))),
  /** Where his catalogue is: a path beside this file, or an https address. */
  catalogue,
  /** Pages that may send for him, such as https://dealer.example. */
  origins: z.array(z.string().check(z.refine(isOrigin))).check(z.minLength(1), z.maxLength(50)),
  /** The page with his wizard, for the link in a mail that goes on with the answers; without it there is none. */
  page: z.optional(z.string().check(z.maxLength(2_000), z.refine(isPage))),
  /** Where answers and copies go. */
  mail: address,
  /** Who a buyer sees it is from. */
  senderName: line(longestSender),
  /** Where he can be written to on paper: stands under every mail. */
  postalAddress: line(longestPost),
  limits: z.optional(z.strictObject({ perHour: z.optional(many), perDay: z.optional(many), devicePerHour: z.optional(many) })),
  /** Whether every buyer is asked first if it was he. */
  confirmFirst: z.optional(z.boolean()),
  /** Whether every form has to reckon something first. */
  proofOfWork: z.optional(z.boolean()),
  /** Counters, by the SHA-256 of their tokens: `acre-to-axle relay token` makes one. */
  devices: z.optional(z.array(z.strictObject({ id: z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)), hash: z.string().check(z.regex(/^[0-9a-f]{64}$/)) })).check(z.maxLength(200))),
});
export type DealerDocument = z.infer<typeof dealer>;
export type DealerLimits = Record<keyof typeof usualLimits, number>;

export const settingsDocument = z.strictObject({ format: z.literal(settingsFormat), dealers: z.array(dealer).check(z.minLength(1), z.maxLength(10_000)) });

/** A dealer as the relay goes by him. */
export interface Dealer extends Omit<DealerDocument, 'limits' | 'origins' | 'devices' | 'confirmFirst' | 'proofOfWork'> {
  origins: ReadonlySet<string>;
  limits: DealerLimits;
  confirmFirst: boolean;
  proofOfWork: boolean;
  devices: readonly { id: string; hash: string }[];
}

export const dealerOf = ({ origins, limits, devices = [], confirmFirst = false, proofOfWork = false, ...rest }: DealerDocument): Dealer => ({
  ...rest, origins: new Set(origins), limits: { ...usualLimits, ...limits }, devices, confirmFirst, proofOfWork,
});
