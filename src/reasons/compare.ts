import { answersOf } from '../answers/answers.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import { catalogueOf, type Catalogue } from '../catalogue/catalogue.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import { rank, type Ranking } from '../ranking/rank.ts';
import { contrast, sideOf, type Side } from './contrast.ts';
import type { Contrast } from './schema.ts';

/** Everything of a catalogue that can be compared: its machines, and its units that aren't sold. */
export const comparableIds = ({ machines, units = [] }: CatalogueDocument): string[] =>
  [...machines, ...units.filter(({ status }) => status !== 'sold')].map(({ id }) => id);

/** A unit stands alone on the lot here: what is said of it doesn't hang on the others. */
function sideOfUnit(id: string, catalogue: Catalogue, rankOf: (catalogue: Catalogue) => Ranking): Side {
  const unit = catalogue.units!.find((each) => each.id === id)!;
  const machines = catalogue.machines.filter((machine) => machine.id === unit.machine);
  const { standing, toAsk, ruledOut } = rankOf({ ...catalogue, machines, units: [unit] });
  const { weighed } = [...standing, ...toAsk, ...ruledOut][0]!.units[0]!;
  return { id, weighed };
}

/** Why one of two machines or units stands above the other, in the order they are given. Both are comparable and differ. */
export function compare(catalogueDocument: CatalogueDocument, answersDocument: AnswersDocument, one: string, other: string): Contrast {
  const catalogue = catalogueOf(catalogueDocument);
  const answers = answersOf(answersDocument);
  const ranking = rank(catalogue, answers);
  const placed = [...ranking.standing, ...ranking.toAsk, ...ranking.ruledOut];
  const side = (id: string) => {
    const place = placed.find(({ machine }) => machine.id === id);
    return place ? sideOf(place) : sideOfUnit(id, catalogue, (alone) => rank(alone, answers, undefined, ranking.world));
  };
  return contrast(side(one), side(other), ranking);
}
