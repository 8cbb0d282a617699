import { shown } from '../../documents/fault.ts';
import { nearest } from '../../documents/nearest.ts';
import { headingsOf, isSure, mappingOf, matchColumns, type Mapping, type SheetKind, type Table } from '../../sheets/sheets.ts';

/** What a dealer says of his own headings: by table, his heading and the documented one, or `null` to leave the column out. */
export type OwnHeadings = Readonly<Partial<Record<SheetKind, Readonly<Record<string, string | null>>>>>;

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);

/** Reads what a columns file holds, with what is wrong in it, as a fault of a document is told. */
export function readOwnHeadings(value: unknown): { headings: OwnHeadings; wrong: string[] } {
  const wrong: string[] = [];
  const headings: Partial<Record<SheetKind, Record<string, string | null>>> = {};
  const refuse = (place: string, read: unknown, expected: string, near?: string) =>
    wrong.push(`${place}: read ${shown(read)}, expected ${expected}${near ? ` (nearest: ${near})` : ''}`);
  if (!isRecord(value)) refuse('document', value, 'an object with "machines" or "units"');
  else {
    for (const [sheet, own] of Object.entries(value)) {
      if ((sheet !== 'machines' && sheet !== 'units') || !isRecord(own)) {
        refuse(sheet, own, 'an object under "machines" or "units"');
        continue;
      }
      const known: Record<string, string | null> = Object.create(null) as Record<string, string | null>;
      for (const [written, meant] of Object.entries(own)) {
        const [match] = typeof meant === 'string' ? matchColumns({ sheet, headings: [meant] }) : [];
        if (meant === null || (match && isSure(match))) known[written] = meant as string | null;
        else refuse(`${sheet}.${written}`, meant, 'a documented heading, or null to leave the column out', nearest(String(meant), headingsOf(sheet).map(({ heading }) => heading)));
      }
      headings[sheet] = known;
    }
  }
  return { headings, wrong };
}

/** The mapping of a table's columns, his own headings first; a unit in his heading counts where the documented one has none. */
export function mappingWith({ sheet, headings }: Table, own: OwnHeadings): Mapping {
  const meant = own[sheet] ?? {};
  const taken = mappingOf(matchColumns({ sheet, headings: headings.map((heading) => (Object.hasOwn(meant, heading) ? meant[heading] ?? '' : heading)) }));
  const units = matchColumns({ sheet, headings });
  return taken.map((column, index) => (column && !column.unit && units[index]!.unit && units[index]!.field === column.field ? { ...column, unit: units[index]!.unit } : column));
}
