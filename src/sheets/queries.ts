import type { CatalogueDocument } from '../catalogue/schema.ts';
import { queriesExhaust } from '../catalogue/check.ts';
import { ruleBook } from '../trade/book.ts';
import type { Finding, SheetKind } from './finding.ts';
import { headingText } from './headings/headings.ts';
import { oddOfMachine, oddOfUnit, type Odd } from './plausible.ts';
import type { RowsReading } from './read-rows.ts';

/** The tables that entries of a catalogue came from, by which a finding names row and column. */
export interface Sources {
  machines?: RowsReading<'machines'>;
  units?: RowsReading<'units'>;
}

/** The place in a document of a field as headings number it: `loaders[2].breakout` is the second, with the index 1. */
export const placeOfField = (field: string) => field.replace(/\[(\d+)\]/, (_, number: string) => `[${Number(number) - 1}]`).replace(/\.ratings\.\w+$/, '.ratings');

/** Row and column of each field whose entry came from a table. */
function placesIn(sources: Sources) {
  const rows = (sheet: SheetKind) => new Map((sources[sheet]?.entries as readonly { row: number; entry: { id: string } }[] | undefined)?.map(({ row, entry }) => [entry.id, row]));
  const known = { machines: rows('machines'), units: rows('units') };
  return (sheet: SheetKind, id: string, field: string): Pick<Finding, 'row' | 'column' | 'heading'> => {
    const row = known[sheet].get(id);
    const column = sources[sheet]?.columns.find((each) => each.field === field);
    return { ...(row !== undefined && { row }), ...(row !== undefined && column && { column: column.column, heading: column.heading }) };
  };
}

const shownFigure = ({ value, unit }: Odd['read']) => `${value} ${unit}`;

/**
 * What is no fault but should be looked at again: figures that can hardly be, by the rule book's bounds, with what may
 * have been meant; an exhaust said to have no filter where most have; languages without the dealer's terms.
 *
 * @param catalogue  a checked one
 * @param languages  those the buyers may read in
 */
export function queriesOf(catalogue: CatalogueDocument, sources: Sources = {}, languages: readonly string[] = []): Finding[] {
  const { machines, units = [], dealer, rules } = catalogue;
  const book = ruleBook(rules);
  const placed = placesIn(sources);
  const query = (sheet: SheetKind, id: string, index: number, { field, read, least, most, by, meant }: Odd): Finding => {
    const place = { sheet, place: `${sheet}[${index}].${placeOfField(field)}`, read: shownFigure(read), weight: 'query' as const, ...placed(sheet, id, field) };
    return by
      ? { ...place, code: 'query.ratio', facts: { id, least, most, meant, by: { heading: headingText('machines', by.field), read: by.read } } }
      : { ...place, code: 'query.range', facts: { id, least, most, meant } };
  };
  const byId = new Map(machines.map((machine) => [machine.id, machine]));
  const exhausts = machines.flatMap((machine, index): Finding[] => {
    if (!queriesExhaust(machine)) return [];
    const place = { sheet: 'machines' as const, place: `machines[${index}].exhaust`, ...(machine.exhaust && { read: machine.exhaust }) };
    return [{ ...place, code: 'catalogue.exhaust', weight: 'query', facts: { id: machine.id }, ...placed('machines', machine.id, 'exhaust') }];
  });
  const own = dealer.locale.split('-')[0]!;
  const without = [...new Set([own, ...languages])].filter((language) => !dealer.terms?.[language]);
  return [
    ...machines.flatMap((machine, index) => oddOfMachine(machine, book).map((odd) => query('machines', machine.id, index, odd))),
    ...units.flatMap((unit, index) => oddOfUnit(unit, byId.get(unit.machine), book).map((odd) => query('units', unit.id, index, odd))),
    ...exhausts,
    ...(without.length > 0 ? [{ code: 'catalogue.terms' as const, weight: 'query' as const, facts: { languages: without }, sheet: 'dealer' as const, place: 'dealer.terms' }] : []),
  ];
}
