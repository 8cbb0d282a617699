/** A text that begins a sentence. */
export const capital = (text: string, language: string) => text.charAt(0).toLocaleUpperCase(language) + text.slice(1);
