const made = new WeakMap<object, Map<unknown, unknown>>();

/** A thing made of another, the same each time: what is remembered of builds tells their parts by which they are. */
export function once<T>(of: object, as: unknown, make: () => T): T {
  const known = made.get(of) ?? new Map<unknown, unknown>();
  made.set(of, known);
  if (!known.has(as)) known.set(as, make());
  return known.get(as) as T;
}
