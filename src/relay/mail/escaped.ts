const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };
/** Signs XML has no room for, and halves of others. */
const noSign = /(?![\t\n\r])\p{Cc}|[\ufffe\uffff]|\p{Cs}/gu;

/** A text among markup or within an attribute in quotes: it stays a text. The only way into a template. */
export const escaped = (text: string) => text.replace(noSign, '').replace(/[\p{Zl}\p{Zp}]/gu, '\n').replace(/[&<>"']/g, (sign) => signs[sign]!);
