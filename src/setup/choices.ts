import { headingsOf, headingText, type Mapping, type SheetKind } from '../sheets/sheets.ts';

const numberIn = /\[(\d+)\]/;

/**
 * All fields a column may be taken for: those it is near to, then the documented ones; of things there may be several of,
 * each that is there already and one more.
 */
export function choicesOf(sheet: SheetKind, mapping: Mapping, near: readonly string[] = []): readonly { field: string; heading: string }[] {
  const most = new Map<string, number>();
  for (const taken of mapping) {
    const [thing = ''] = taken?.field.split('[', 1) ?? [];
    most.set(thing, Math.max(most.get(thing) ?? 0, Number(numberIn.exec(taken?.field ?? '')?.[1] ?? 0)));
  }
  const documented = headingsOf(sheet).flatMap(({ field }) => {
    if (!field.includes('[]')) return [field];
    const count = (most.get(field.split('[', 1)[0]!) ?? 0) + 1;
    return Array.from({ length: count }, (_, index) => field.replace('[]', `[${index + 1}]`));
  });
  return [...new Set([...near, ...documented])].map((field) => ({ field, heading: headingText(sheet, field) }));
}
