/** Signs that are no part of a name or number and could make a line, a direction or a second text of it. */
const hidden = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}\p{Co}\p{Cn}]/u;

/**
 * Whether a text can be a person's name: letters, marks, blanks and what stands in names. So it can be no address of
 * a page or a mailbox.
 */
export const isName = (text: string) => text.trim() !== '' && !hidden.test(text) && /^[\p{L}\p{M}\p{Zs}'’.,-]+$/u.test(text) && !/\p{L}\.\p{L}{2,}/u.test(text);

const fewestDigits = 5;

/** Whether a text can be a telephone number. */
export const isPhone = (text: string) => /^\+?[\d\s()./-]+$/.test(text) && !hidden.test(text) && text.replace(/\D/g, '').length >= fewestDigits;
