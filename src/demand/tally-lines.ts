import { answersOf } from '../answers/answers.ts';
import { catalogueOf } from '../catalogue/catalogue.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import { outcomeOf, type Outcome } from './outcome.ts';
import { readLine } from './read-line.ts';
import { count, emptyTally, type Tally } from './tally.ts';

export interface Tallied {
  tally: Tally;
  unreadable: number;
}

/**
 * Judges lines of requests by a catalogue; those that say the same, once.
 *
 * @param catalogue  without faults; machines without units are judged at their typical price
 * @param lines  each a JSON document
 * @returns  yields how many lines are judged after each of them, so that it can be told how far it is
 */
export function* tallyLines(catalogue: CatalogueDocument, lines: readonly string[]): Generator<number, Tallied> {
  const inSi = catalogueOf(catalogue);
  const judged = new Map<string, Outcome>();
  const tally = emptyTally();
  let unreadable = 0;
  for (const [index, line] of lines.entries()) {
    const answers = readLine(line);
    if (answers) {
      const said = JSON.stringify(answers);
      const outcome = judged.get(said) ?? outcomeOf(inSi, answersOf(answers));
      judged.set(said, outcome);
      count(tally, outcome);
    } else unreadable += 1;
    yield index + 1;
  }
  return { tally, unreadable };
}
