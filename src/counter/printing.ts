import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { FormLanguage } from './paper/form/field.ts';
import type { SheetView } from './paper/sheet/view.ts';
import type { SheetSize } from './paper/sizes.ts';
import type { PaperWords } from './paper/words/words.ts';

/** Prints the sheet and nothing else of the page. @returns whether it fits its pages */
export async function printSheet(view: SheetView): Promise<boolean> {
  const [{ printPaper }, { sheetPaper }] = await Promise.all([import('./paper/on-paper.ts'), import('./paper/sheet.ts')]);
  return (await printPaper(sheetPaper(view), window)).fits;
}

/** Prints all questions, to be answered by pen. */
export async function printForm(voice: FormLanguage, own: PaperWords, { name, phone }: CatalogueDocument['dealer'], size: SheetSize): Promise<void> {
  const [{ printPaper }, { blankFormPaper }] = await Promise.all([import('./paper/on-paper.ts'), import('./paper/blank-form.ts')]);
  await printPaper(blankFormPaper({ voice, own, dealer: { name, ...(phone !== undefined && { phone }) }, size }), window);
}
