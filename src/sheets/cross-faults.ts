import type { Fault } from '../documents/fault.ts';
import type { FindingCode, FindingFacts, SheetKind } from './finding.ts';
import type { RowsReading } from './read-rows.ts';

type Entry = Record<string, unknown>;

/** A fault between rows or cells that no cell has by itself: its code, and the entry without what is in doubt; without an entry the row goes. */
interface Rule {
  sheet: SheetKind;
  /** Where the check of the catalogue puts it, inside the entry. */
  at: RegExp;
  code: FindingCode;
  /** The entry with what is in doubt unknown. */
  mend?: (entry: Entry, index: number) => Entry;
}

const without = (entry: Entry, ...keys: readonly string[]) => Object.fromEntries(Object.entries(entry).filter(([key]) => !keys.includes(key)));
const inside = (entry: Entry, key: string, ...keys: readonly string[]) => ({ ...entry, [key]: without(entry[key] as Entry, ...keys) });

const rules: readonly Rule[] = [
  { sheet: 'machines', at: /^frame$/, code: 'row.no-frame' },
  { sheet: 'machines', at: /^years$/, code: 'row.years-overlap' },
  { sheet: 'machines', at: /^years\.to$/, code: 'row.years-turned' },
  { sheet: 'machines', at: /^height\.ropsFolded$/, code: 'cell.folded-higher', mend: (entry) => inside(entry, 'height', 'ropsUp', 'ropsFolded') },
  { sheet: 'machines', at: /^engine\.ptoPower$/, code: 'cell.pto-above-engine', mend: (entry) => inside(entry, 'engine', 'power', 'ptoPower') },
  {
    sheet: 'machines', at: /^loaders\[(\d+)\]\.ratings/, code: 'cell.ratings',
    mend: (entry, index) => ({ ...entry, loaders: (entry.loaders as Entry[]).map((loader, at) => (at === index ? { ...loader, ratings: [] } : loader)) }),
  },
  { sheet: 'units', at: /^machine$/, code: 'row.no-machine' },
  { sheet: 'units', at: /^(loader|deck|cab)$/, code: 'row.no-part' },
  { sheet: 'units', at: /^attachments\[/, code: 'cell.no-implement', mend: (entry) => without(entry, 'attachments') },
  { sheet: 'units', at: /^year$/, code: 'cell.year-outside', mend: (entry) => without(entry, 'year') },
  { sheet: 'units', at: /^price$/, code: 'cell.zero', mend: (entry) => without(entry, 'price') },
];

/** The column that a place inside an entry comes from: its own, or the first of what it is part of. */
function columnOf(field: string, { columns }: RowsReading) {
  const numbered = field.replace(/\[(\d+)\]/, (_, index: string) => `[${Number(index) + 1}]`);
  const parts = [numbered, numbered.replace(/\.ratings.*$/, '.ratings'), numbered.replace(/\[\d+\]$/, ''), `${numbered}.from`];
  return columns.find((column) => parts.some((part) => column.field === part || column.field.startsWith(`${part}.`)));
}

/** What a fault of the whole says of the row it comes from, and the entry without what is in doubt, if that leaves one. */
export function crossFault(fault: Fault, field: string, entry: object, source: RowsReading) {
  const rule = rules.find(({ sheet, at }) => sheet === source.sheet && at.test(field));
  const column = columnOf(field, source);
  const mended = rule?.mend?.(entry as Entry, Number(rule.at.exec(field)?.[1] ?? 0));
  const facts: FindingFacts['catalogue.faulty'] = { expected: fault.expected, nearest: fault.nearest };
  return {
    finding: {
      code: rule?.code ?? 'catalogue.faulty', weight: 'fault', facts,
      ...(column && { column: column.column, heading: column.heading }),
      ...(!mended && { dropsRow: true }),
    },
    entry: mended,
  };
}
