import type { Answers } from '../../answers/answers.ts';
import type { AnswersDocument } from '../../answers/schema.ts';
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../catalogue/schema.ts';
import type { Considered } from '../../lot/considered.ts';
import type { Candidate } from '../../ranking/candidate.ts';
import type { Voice } from '../../reasons/say.ts';
import type { Shortlist } from '../../reasons/schema.ts';
import { showAmount } from '../../units/show.ts';
import type { Buyer } from './buyer.ts';
import type { UnitWords } from './words/words.ts';

/** A machine of the result, or one unit of it, by their ids. */
export interface Named {
  machine: string;
  unit?: string | undefined;
}

export const keyOf = ({ machine, unit }: Named) => (unit === undefined ? `machine ${machine}` : `unit ${unit}`);

/** The result that is looked at more closely. */
export interface CloserView {
  answers: AnswersDocument;
  shortlist: Shortlist;
  catalogue: CatalogueDocument;
  inSi: Catalogue;
  voice: Voice;
  /** CSS pixels there are for a picture. */
  width: number;
  /** What comes out of the printer, where that is known; else it goes by the place. */
  paper?: 'letter' | 'a4';
}

/** One unit of it, before one buyer. */
export interface UnitView extends CloserView {
  key: string;
  words: UnitWords;
  candidate: Candidate;
  read: Answers;
  considered: Considered;
  buyer: Buyer;
  say(what: Partial<Buyer>): void;
}

/** A machine or unit by name, year and hours, as far as they are known. */
export function nameOf({ machine, unit }: Candidate, { voice: { nameOf: name, reader }, words }: Pick<UnitView, 'voice' | 'words'>): string {
  return words.lot.owning.named(name(machine.id), unit?.year === undefined ? '' : String(unit.year), unit?.hours === undefined ? '' : showAmount(unit.hours, 'hours', reader));
}

/** What a document names, in SI; undefined where it isn't in the catalogue. */
export function candidateOf({ machine: id, unit: unitId }: Named, { machines, units = [] }: Catalogue): Candidate | undefined {
  const machine = machines.find((each) => each.id === id);
  const unit = units.find((each) => each.id === unitId);
  return !machine || (unitId !== undefined && !unit) ? undefined : { machine, ...(unit && { unit }) };
}
