/** A time of the day as it is written in a place. @param at  milliseconds since 1970 */
export const sayTime = (locale: string, at: number) => new Intl.DateTimeFormat(locale, { timeStyle: 'short' }).format(at);
