import { answersOf } from '../../src/answers/answers.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { catalogueOf, type Catalogue } from '../../src/catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { considered } from '../../src/lot/considered.ts';
import type { Candidate } from '../../src/ranking/candidate.ts';
import { catalogueForTests, feet, lb, usd } from '../support/catalogue-for-tests.ts';
import { saying } from '../support/reckon.ts';

/** The catalogue of the tests with a dealer who delivers, takes fees and tax, and lends. */
export const dealing = (more: Partial<CatalogueDocument['dealer']> = {}): CatalogueDocument => {
  const document = catalogueForTests();
  return {
    ...document,
    dealer: {
      ...document.dealer, delivery: { perDistance: usd(3.75), per: { value: 1, unit: 'mi' }, radius: { value: 85, unit: 'mi' } }, fees: usd(245), taxShare: 0.0575,
      finance: [{ annualRate: 0.069, months: 60, depositShare: 0.1 }], ...more,
    },
  };
};

export const machineIn = ({ machines }: Catalogue, id: string) => machines.find((each) => each.id === id)!;
export const unitIn = ({ units }: Catalogue, id: string) => units!.find((each) => each.id === id)!;
export const candidateIn = (catalogue: Catalogue, unit: string): Candidate => {
  const found = unitIn(catalogue, unit);
  return { machine: machineIn(catalogue, found.machine), unit: found };
};

/** A buyer who lifts pallets of some weight. */
export const lifting = (weight: number, more: Partial<AnswersDocument> = {}) =>
  saying({ tasks: [{ task: 'lift-pallets', weight: lb(weight), height: feet(4), must: true }], ...more });

/** Both documents in SI, and what is made of one unit. */
export function before(document: CatalogueDocument, answers: AnswersDocument = saying()) {
  const catalogue = catalogueOf(document);
  const read = answersOf(answers);
  return { catalogue, ...considered(catalogue, read) };
}
