import type { AnswersDocument } from '../answers/schema.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { Given, Option } from './command.ts';
import type { ExitCode, Io } from './io.ts';
import { languageTags, languages, type Language, type LanguageTag } from './languages.ts';
import { inOrder, readDocumentFile } from './read-document.ts';

/** What a command reckons with that takes a dealer's lot and a buyer's answers, and how it tells the outcome. */
export interface LotAndBuyer {
  catalogue: CatalogueDocument;
  answers: AnswersDocument;
  unknownTasks: readonly string[];
  /** A line for each thing this version doesn't know and goes on without. */
  unknown: readonly string[];
  asJson: boolean;
  language: Language;
  units: 'us' | 'metric';
}

/** The options of such a command. */
export const lotAndBuyerOptions = (formats: string): readonly Option[] => [
  { name: 'catalogue', takes: 'FILE', required: true, says: 'The dealer’s line-up and lot; - for standard input.' },
  { name: 'answers', takes: 'FILE', required: true, says: 'What the buyer said; - for standard input.' },
  { name: 'format', takes: 'text|json', choices: ['text', 'json'], says: formats },
  { name: 'language', takes: languageTags.join('|'), choices: languageTags, says: 'Language of the sheet; en if not said.' },
  { name: 'units', takes: 'us|metric', choices: ['us', 'metric'], says: 'Units of the sheet; the dealer’s if not said.' },
];

/** Reads both files. Where one can't be used it says why and gives the code to end with. */
export async function readLotAndBuyer({ options }: Given, io: Io): Promise<LotAndBuyer | ExitCode> {
  const { catalogue: catalogueFile = '', answers: answersFile = '', format = 'text', language = 'en', units } = options;
  if (catalogueFile === '-' && answersFile === '-') {
    io.err('acre-to-axle: only one of --catalogue and --answers can be read from standard input');
    return 2;
  }
  const lot = await readDocumentFile(catalogueFile, ['catalogue'], io);
  const buyer = await readDocumentFile(answersFile, ['answers'], io);
  [...inOrder(lot.faults), ...inOrder(buyer.faults)].forEach(io.err);
  if (lot.document?.kind !== 'catalogue' || buyer.document?.kind !== 'answers') return 1;

  const { value: catalogue } = lot.document;
  const { value: answers, unknownTasks } = buyer.document;
  return {
    catalogue, answers, unknownTasks,
    unknown: [...inOrder(lot.unknown), ...inOrder(buyer.unknown)].map((line) => `${line}; went on without it`),
    asJson: format === 'json',
    language: languages[language as LanguageTag],
    units: units === 'us' || units === 'metric' ? units : catalogue.dealer.units,
  };
}
