import type { CatalogueDocument } from '../../catalogue/schema.ts';
import type { Voice } from '../../reasons/say.ts';
import type { Shortlist } from '../../reasons/schema.ts';
import type { HandoffWords } from '../words/words.ts';

/** All that a letter is made from. */
export interface Telling {
  shortlist: Shortlist;
  catalogue: CatalogueDocument;
  voice: Voice;
  /** Words of this room, in the language of the voice. */
  own: HandoffWords;
  /** Where the answers can be gone on with; left out where there is no page. */
  link?: string;
}
