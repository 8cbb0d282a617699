const millisecondsADay = 86_400_000;
const daysAnEra = 146_097;
const yearsAnEra = 400;
/** From 1 March of year 0 to 1 January 1970. */
const daysBefore1970 = 719_468;

/** Days from 1 January 1970 (H. Hinnant, "chrono-Compatible Low-Level Date Algorithms", days_from_civil). */
function daysFrom1970(year: number, month: number, day: number): number {
  const since = month > 2 ? year : year - 1;
  const era = Math.floor(since / yearsAnEra);
  const yearOfEra = since - era * yearsAnEra;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  return era * daysAnEra + yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear - daysBefore1970;
}

/**
 * A day as it is written in a place.
 *
 * @param day  as `2026-04-30`; what isn't one comes back as it is
 */
export function dayIn(locale: string, day: string): string {
  const [, year, month, date] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(day) ?? [];
  if (!year || !month || !date) return day;
  return new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' }).format(daysFrom1970(Number(year), Number(month), Number(date)) * millisecondsADay);
}
