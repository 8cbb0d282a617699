import type { Fault } from '../documents/fault.ts';
import { withPlainText } from '../documents/plain-text.ts';
import { mended } from './mend.ts';
import { readCatalogue } from './read-catalogue.ts';
import type { CatalogueDocument } from './schema.ts';

/** What came of a catalogue whose faulty units were set aside: what was wrong in them, round by round, or what can't be mended. */
export type MendedReading =
  | { value: CatalogueDocument; setAside: readonly (readonly Fault[])[] }
  | { faults: readonly Fault[] };

/**
 * Reads a catalogue that is to be used as it is: its texts made harmless, what is wrong in single units taken out.
 *
 * @param longestLabel  characters of a text; as many as there are where it isn't said
 */
export function readMended(document: unknown, longestLabel?: number): MendedReading {
  const setAside: (readonly Fault[])[] = [];
  // The schema finds faults before the checks do, so what is mended may still have some.
  for (let now = withPlainText(document, ['terms'], longestLabel); ;) {
    const { value, faults, unknownKeys } = readCatalogue(now);
    if (value) return { value, setAside };
    const better = mended(now, faults);
    if (!better) return { faults: [...faults, ...unknownKeys] };
    setAside.push(faults);
    now = better;
  }
}
