import type { AnswersDocument } from '../../../answers/schema.ts';
import type { CatalogueDocument } from '../../../catalogue/schema.ts';
import type { HandoffWords } from '../../../handoff/words/words.ts';
import type { Voice } from '../../../reasons/say.ts';
import type { Shortlist } from '../../../reasons/schema.ts';
import type { SheetSize } from '../sizes.ts';
import type { PaperWords } from '../words/words.ts';

/** All that a sheet is made from. What the staff noted is no part of it, nor who the buyer is. */
export interface SheetView {
  shortlist: Shortlist;
  catalogue: CatalogueDocument;
  answers: AnswersDocument;
  voice: Voice;
  /** Words of paper and of handing on, in the language of the voice. */
  own: PaperWords;
  handoff: HandoffWords;
  size: SheetSize;
  /** Address of the page where the answers can be gone on with; without it there is no code. */
  page?: string;
}
