const numbersOf = (version: unknown) => (typeof version === 'string' && /^\d{1,5}(?:\.\d{1,5}){2}$/.test(version) ? version.split('.').map(Number) : undefined);

/**
 * Whether a page is older than what its relay wants at least.
 *
 * @param own    version of three numbers, such as `0.2.0`
 * @param least  as a relay answered it
 * @returns false too where either can't be read: a page that was never built has no version, and an answer no number
 */
export function isOlder(own: string, least: unknown): boolean {
  const [mine, wanted] = [numbersOf(own), numbersOf(least)];
  if (!mine || !wanted) return false;
  const at = mine.findIndex((number, place) => number !== wanted[place]);
  return at >= 0 && mine[at]! < wanted[at]!;
}
