import { answersOf } from '../answers/answers.ts';
import { catalogueOf } from '../catalogue/catalogue.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import { outcomeOf, type Outcome } from './outcome.ts';
import { readLine } from './read-line.ts';

/** Judges answers as text; undefined where they are none. What was judged before is remembered as long as the judge stays. */
export type JudgeText = (text: string) => Outcome | undefined;

/** @param catalogue  without faults; machines without units are judged at their typical price */
export function judgeOf(catalogue: CatalogueDocument): JudgeText {
  const inSi = catalogueOf(catalogue);
  return (text) => {
    const answers = readLine(text);
    return answers && outcomeOf(inSi, answersOf(answers));
  };
}
