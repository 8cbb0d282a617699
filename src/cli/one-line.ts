/** Control and formatting characters: a name or key of a file must not move the cursor, colour a line or reorder it. */
const unprintable = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu;

const escaped = (character: string) => `\\u${character.codePointAt(0)!.toString(16).padStart(4, '0')}`;

/** A line that stays one line on any terminal. */
export const oneLine = (text: string) => text.replace(unprintable, escaped);
