import type { Command, Given } from '../command.ts';
import type { ExitCode, Io } from '../io.ts';
import { languageTags, languages, type LanguageTag } from '../languages.ts';
import { inOrder, readDocumentFile } from '../read-document.ts';
import { sheetOf } from '../sheet/sheet.ts';
import { shortlist } from '../../reasons/shortlist.ts';

async function runShortlist({ options }: Given, io: Io): Promise<ExitCode> {
  const { catalogue: catalogueFile = '', answers: answersFile = '', format = 'text', language = 'en', units } = options;
  if (catalogueFile === '-' && answersFile === '-') {
    io.err('acre-to-axle: only one of --catalogue and --answers can be read from standard input');
    return 2;
  }
  const lot = await readDocumentFile(catalogueFile, ['catalogue'], io);
  const buyer = await readDocumentFile(answersFile, ['answers'], io);
  [...inOrder(lot.faults), ...inOrder(buyer.faults)].forEach(io.err);
  if (lot.document?.kind !== 'catalogue' || buyer.document?.kind !== 'answers') return 1;

  [...inOrder(lot.unknown), ...inOrder(buyer.unknown)].forEach((line) => io.err(`${line}; went on without it`));
  const catalogue = lot.document.value;
  const { value: answers, unknownTasks } = buyer.document;
  const result = shortlist(catalogue, answers, unknownTasks);
  if (format === 'json') io.out(JSON.stringify(result));
  else {
    const shownIn = units === 'us' || units === 'metric' ? units : catalogue.dealer.units;
    sheetOf({ result, catalogue, answers }, languages[language as LanguageTag], shownIn).forEach(io.out);
  }
  return 0;
}

export const shortlistCommand: Command = {
  name: 'shortlist',
  summary: 'what fits a buyer’s work, with reasons, prices and the working',
  options: [
    { name: 'catalogue', takes: 'FILE', required: true, says: 'The dealer’s line-up and lot; - for standard input.' },
    { name: 'answers', takes: 'FILE', required: true, says: 'What the buyer said; - for standard input.' },
    { name: 'format', takes: 'text|json', choices: ['text', 'json'], says: 'A sheet to read, or the shortlist document, the same bytes as in the browser; text if not said.' },
    { name: 'language', takes: languageTags.join('|'), choices: languageTags, says: 'Language of the sheet; en if not said.' },
    { name: 'units', takes: 'us|metric', choices: ['us', 'metric'], says: 'Units of the sheet; the dealer’s if not said.' },
  ],
  details: [
    'Reckons from a catalogue and a buyer’s answers which machines stand, which must be asked about and which are ruled out.',
    'Faults of either file are listed, one a line, and nothing is reckoned. Keys and tasks this version doesn’t know are named on standard error, and it goes on without them; each such task becomes a caution of the result.',
  ],
  run: runShortlist,
};
