/** Making a format costs about a hundred times what formatting does, so each is made once. */
const numbers = new Map<string, Intl.NumberFormat>();
const plurals = new Map<string, Intl.PluralRules>();

function made<T>(known: Map<string, T>, key: string, make: () => T): T {
  const format = known.get(key) ?? make();
  known.set(key, format);
  return format;
}

/**
 * A number in the marks of a locale.
 *
 * @param options  of `Intl.NumberFormat`
 * @throws RangeError where the locale or an option can't be read
 */
export const formatNumber = (value: number, locale: string, options: Intl.NumberFormatOptions = {}): string =>
  made(numbers, `${locale} ${JSON.stringify(options)}`, () => new Intl.NumberFormat(locale, options)).format(value);

/** Which form of a word goes with a count, in a locale's language. */
export const pluralOf = (count: number, locale: string): Intl.LDMLPluralRule => made(plurals, locale, () => new Intl.PluralRules(locale)).select(count);
