/** Octets of an address that are passed on, and of its part before the @ (RFC 5321, sections 4.5.3.1.1 and 4.5.3.1.3). */
export const longestAddress = 254;
const longestLocal = 64;

const local = "[\\w!#$%&'*+/=?^`{|}~-]+";
const label = '[A-Za-z0-9](?:[A-Za-z0-9-]{0,61}[A-Za-z0-9])?';
const plainAddress = new RegExp(`^(?=[^@]{1,${longestLocal}}@)${local}(?:\\.${local})*@(?:${label}\\.)+${label}$`);

/** Whether a text is one address and nothing else: no second one, no comment, no quoted part, no number for a domain. */
export const isAddress = (text: string) => text.length <= longestAddress && plainAddress.test(text);
