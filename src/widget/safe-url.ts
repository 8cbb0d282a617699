import { safeAddress } from '../request/safe-address.ts';

const followed = { link: ['https:', 'mailto:', 'tel:'], picture: ['https:'] } as const;

/** An address from a catalogue as a page may follow it: to a place and not a script. @returns undefined where there is to be no link */
export const safeUrl = (written: string | undefined, as: keyof typeof followed = 'link') => safeAddress(written, followed[as]);

/** Nothing of an address may become a further recipient, a subject or a text. */
export const mailUrl = (address: string | undefined) =>
  (address && /^[^\s@?&]+@[^\s@?&]+$/.test(address) ? safeUrl(`mailto:${address.split('@').map(encodeURIComponent).join('@')}`) : undefined);

export const phoneUrl = (number: string | undefined) => {
  const digits = number?.replaceAll(/[^+\d]/g, '');
  return digits ? safeUrl(`tel:${digits}`) : undefined;
};
