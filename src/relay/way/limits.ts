import { day, hour, minute } from '../clock.ts';
import type { Take } from '../store/store.ts';
import type { DealerLimits } from '../settings/dealer.ts';

/**
 * From a bucket that holds `most` and fills in `fills`, at most most + ⌊time × most ÷ fills⌋ can be taken in any stretch of
 * time. So three in one that fills in a little more than a week are at most three in any day and five in any week: the
 * figure that makes a relay useless against a victim, whatever the number of senders.
 */
const recipient = { most: 3, fills: 7 * day + hour };
const recipientAtDealer = { most: 1, fills: 10 * minute };
const clientSoon = { most: 5, fills: 10 * minute };
const clientDay = { most: 30, fills: day };
/** Of a provider's quota, how much is used: the rest is for what he counts otherwise. */
const ofQuota = 0.8;

export interface Counted {
  dealer: string;
  limits: DealerLimits;
  /** Keyed hash of the mailbox. */
  mailbox: string;
  /** A device of the dealer with limits of its own, or keyed hash of a stranger's network. */
  sender: { device: string } | { client: string };
  /** How many mails it makes at once. */
  mails: number;
  /** What the provider takes in a day. */
  quota: number;
}

/** What a request takes; it is stored only where all of it is there. */
export function takesOf({ dealer, limits, mailbox, sender, mails, quota }: Counted): Take[] {
  const ofSender: Take[] = 'device' in sender
    ? [{ bucket: `device-hour:${dealer}:${sender.device}`, most: limits.devicePerHour, fills: hour }]
    : [{ bucket: `client-soon:${sender.client}`, ...clientSoon }, { bucket: `client-day:${sender.client}`, ...clientDay }];
  const used = Math.max(mails, Math.floor(quota * ofQuota));
  return [
    { bucket: `recipient:${mailbox}`, ...recipient },
    { bucket: `recipient-at:${dealer}:${mailbox}`, ...recipientAtDealer },
    ...ofSender,
    { bucket: `dealer-hour:${dealer}`, most: limits.perHour, fills: hour },
    { bucket: `dealer-day:${dealer}`, most: limits.perDay, fills: day },
    ...Array.from({ length: mails }, () => ({ bucket: 'relay-day', most: used, fills: day })),
  ];
}

const [shortestWait, longestWait] = [60, 3_600];
/** Seconds told to whoever was too often: rounded, so that they don't tell which limit it was. */
export const vagueAfter = (milliseconds: number) => Math.min(longestWait, Math.max(shortestWait, Math.ceil(milliseconds / minute) * 60));
