import { readMended } from '../catalogue/read-mended.ts';
import { catalogueFormat, type CatalogueDocument } from '../catalogue/schema.ts';
import type { Fault } from '../documents/fault.ts';
import type { CatalogueTrouble } from './trouble.ts';

/** Most machines, units and implements of a catalogue that a page is asked to judge. */
export const mostRows = 5_000;
/** Most faults that are told of at once. */
const mostTold = 20;

export interface Usable {
  value: CatalogueDocument;
  /** What was wrong in single units and taken out. */
  setAside: readonly string[];
}

const tell = (faults: readonly Fault[]) => [
  ...faults.slice(0, mostTold).map(({ place, read, expected }) => `${place}: read ${read}, expected ${expected}`),
  ...(faults.length > mostTold ? [`and ${faults.length - mostTold} more`] : []),
];

const refuse = (code: CatalogueTrouble['code'], ...details: string[]): CatalogueTrouble => ({ code, details });

/** What can be seen without reading all of it. */
function refusal(document: unknown): CatalogueTrouble | undefined {
  const { format, machines, ...lists } = (document ?? {}) as Readonly<Record<string, unknown>>;
  const [name, major] = catalogueFormat.split(/\/(?=\d+$)/) as [string, string];
  const [writtenName, writtenMajor] = typeof format === 'string' ? format.split(/\/(?=\d+)/) : [];
  if (writtenName === name && Number.parseInt(writtenMajor ?? '', 10) > Number(major)) {
    return refuse('catalogue.newer', `format: read ${JSON.stringify(format)}, this script knows ${catalogueFormat}; load a newer script`);
  }
  const rows = [machines, lists.units, lists.implements].reduce<number>((sum, list) => sum + (Array.isArray(list) ? list.length : 0), 0);
  if (rows > mostRows) return refuse('catalogue.too-large', `${rows} machines, units and implements, where ${mostRows} are allowed`);
  if (Array.isArray(machines) && machines.length === 0) return refuse('catalogue.empty', 'machines: none are listed');
  return undefined;
}

function read(document: unknown): Usable | CatalogueTrouble {
  const refused = refusal(document);
  if (refused) return refused;
  const mended = readMended(document);
  return 'value' in mended ? { value: mended.value, setAside: mended.setAside.flatMap(tell) } : refuse('catalogue.faulty', ...tell(mended.faults));
}

/**
 * Checks a catalogue that was handed in or fetched, makes its texts harmless, and sets aside what is wrong in
 * single units. Never throws.
 */
export function usable(document: unknown): Usable | CatalogueTrouble {
  try {
    return read(document);
  } catch (trouble) {
    // Nested deeper than any catalogue, or made to be so.
    return refuse('catalogue.faulty', String(trouble));
  }
}
