import { answersOf } from '../../answers/answers.ts';
import type { AnswersDocument } from '../../answers/schema.ts';
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../catalogue/schema.ts';
import { rank } from '../../ranking/rank.ts';
import { shortlist } from '../../reasons/shortlist.ts';
import { standingSoFar } from '../../reasons/standing-so-far.ts';
import type { Said } from './calls.ts';

/** What is reckoned for one state of the answers, in two steps between which something newer may come. */
export function* reckoned(id: number, answers: AnswersDocument, document: CatalogueDocument, inSi: Catalogue): Generator<Said> {
  yield { id, standing: standingSoFar(rank(inSi, answersOf(answers))) };
  yield { id, shortlist: shortlist(document, answers, [], inSi) };
}
