import { safeAddress } from '../../request/safe-address.ts';

/** An address as a mail may hold it: by TLS, or to the machine the relay is tried out on. @returns undefined where there is to be no link */
export const safeLink = (written: string | undefined) => safeAddress(written, ['https:']);
