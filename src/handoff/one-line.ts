/** What ends a line or turns its direction, and what would be half a letter. */
const unruly = /[\p{Cc}\p{Zl}\p{Zp}\u202a-\u202e]+/gu;

/** A text of one line, whatever a catalogue holds: what a mail is made of must not begin a line, or a header, of its own. */
export const onOneLine = (text: string) => text.replace(/\p{Cs}/gu, '\ufffd').replace(unruly, ' ').replace(/ +/g, ' ').trim();
