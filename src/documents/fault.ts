/** What was wrong, and where: one fault, one line, in words a dealer's office can act on. */
export interface Fault {
  /** Path inside the document, as `machines[3].tier`; empty for the document itself. */
  place: string;
  /** What stood there, shortened. */
  read: string;
  expected: string;
  /** The nearest right word, where a word was wrong. */
  nearest?: string;
}

export type Path = readonly PropertyKey[];

/** @example placeOf(['machines', 3, 'tier']) // 'machines[3].tier' */
export const placeOf = (path: Path) =>
  path.reduce<string>((place, key) => {
    if (typeof key === 'number') return `${place}[${key}]`;
    return place ? `${place}.${String(key)}` : String(key);
  }, '');

const longest = 60;
/** What was read, on one line and short enough to print. */
export function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'number' && !Number.isFinite(value)) return 'a number too large';
  const text = JSON.stringify(value) ?? String(value);
  return text.length > longest ? `${text.slice(0, longest)}…` : text;
}
