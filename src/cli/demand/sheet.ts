import type { SaidReport } from '../../demand/say-report.ts';
import { heading, item, paragraph, table } from '../sheet/layout.ts';

/** A report for a terminal. */
export function demandSheet({ title, lead, served, sections, bring, closing }: SaidReport, buyers: string): string[] {
  return [
    ...heading(title).slice(1), '',
    ...lead.flatMap((line) => paragraph(line)), '',
    ...table(served.map(([what, many]) => [what, many])),
    ...heading(bring.heading), ...paragraph(bring.explained), ...(bring.lines.length > 0 ? [''] : []), ...bring.lines.flatMap((line) => paragraph(line, 2)),
    ...sections.flatMap((section) => [...heading(section.heading), ...paragraph(section.explained), '', ...table([[section.column, buyers], ...section.rows])]),
    '', ...closing.flatMap((line) => item('-', line)),
  ];
}
