import type { AnswersDocument } from '../../answers/schema.ts';
import type { CatalogueDocument } from '../../catalogue/schema.ts';
import type { Shortlist } from '../../reasons/schema.ts';
import type { StandingSoFar } from '../../reasons/standing-so-far.ts';

/** What a worker is told: the line-up once, then answers as they change. Plain data both ways. */
export type Told = { catalogue: CatalogueDocument } | { id: number; answers: AnswersDocument };

/** What it says to each: how all machines stand, which is quick, and then the shortlist. */
export type Said = { id: number; standing: StandingSoFar } | { id: number; shortlist: Shortlist };
