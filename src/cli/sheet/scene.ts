import type { AnswersDocument } from '../../answers/schema.ts';
import type { CatalogueDocument, MachineDocument, UnitDocument } from '../../catalogue/schema.ts';
import type { Voice } from '../../reasons/say.ts';
import type { Shortlist } from '../../reasons/schema.ts';
import { formatNumber } from '../../units/formats.ts';
import type { CliWords } from '../words/words.ts';
import type { Notes } from './notes.ts';

/** All that the parts of a sheet are made from. */
export interface Scene {
  result: Shortlist;
  catalogue: CatalogueDocument;
  answers: AnswersDocument;
  voice: Voice;
  /** The words of the sheet that are said nowhere else. */
  own: CliWords;
  notes: Notes;
  /** Ids of the needs that tell the machines apart. */
  decisive: ReadonlySet<string>;
}

/** A bare number in the reader's language. */
export const numberIn = ({ voice }: Scene, value: number, digits = 0) =>
  formatNumber(value, voice.reader.locale, { minimumFractionDigits: digits, maximumFractionDigits: Math.max(digits, 2) });

export const machineOf = ({ catalogue }: Scene, id: string): MachineDocument => catalogue.machines.find((each) => each.id === id)!;
export const unitOf = ({ catalogue }: Scene, id: string): UnitDocument => catalogue.units!.find((each) => each.id === id)!;
