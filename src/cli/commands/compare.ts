import { nearest } from '../../documents/nearest.ts';
import { comparableIds, compare } from '../../reasons/compare.ts';
import type { Command, Given } from '../command.ts';
import type { ExitCode, Io } from '../io.ts';
import { languageTags, languages, type LanguageTag } from '../languages.ts';
import { oneLine } from '../one-line.ts';
import { inOrder, readDocumentFile } from '../read-document.ts';
import { comparisonOf } from '../sheet/comparison.ts';

function strangeId(id: string, known: readonly string[]): string {
  const near = nearest(id, known);
  return oneLine(`acre-to-axle: no machine or unit for sale has the id ${JSON.stringify(id)}${near ? ` (nearest: ${near})` : ''}`);
}

async function runCompare({ options, rest: [one = '', other = ''] }: Given, io: Io): Promise<ExitCode> {
  const { catalogue: catalogueFile = '', answers: answersFile = '', format = 'text', language = 'en', units } = options;
  const wrong = (line: string): ExitCode => {
    io.err(line);
    return 2;
  };
  if (one === other) return wrong(oneLine(`acre-to-axle: compare needs two that differ, and ${JSON.stringify(one)} stands there twice`));
  if (catalogueFile === '-' && answersFile === '-') return wrong('acre-to-axle: only one of --catalogue and --answers can be read from standard input');
  const lot = await readDocumentFile(catalogueFile, ['catalogue'], io);
  const buyer = await readDocumentFile(answersFile, ['answers'], io);
  [...inOrder(lot.faults), ...inOrder(buyer.faults)].forEach(io.err);
  if (lot.document?.kind !== 'catalogue' || buyer.document?.kind !== 'answers') return 1;

  const { document: { value: catalogue } } = lot;
  const known = comparableIds(catalogue);
  const strange = [one, other].filter((id) => !known.includes(id));
  strange.forEach((id) => io.err(strangeId(id, known)));
  if (strange.length > 0) return 2;

  [...inOrder(lot.unknown), ...inOrder(buyer.unknown)].forEach((line) => io.err(`${line}; went on without it`));
  const contrast = compare(catalogue, buyer.document.value, one, other);
  if (format === 'json') io.out(JSON.stringify(contrast));
  else {
    const shownIn = units === 'us' || units === 'metric' ? units : catalogue.dealer.units;
    comparisonOf(contrast, catalogue, languages[language as LanguageTag].words, shownIn).forEach(io.out);
  }
  return 0;
}

export const compareCommand: Command = {
  name: 'compare',
  summary: 'why one of two machines or units stands above the other',
  rest: { shown: 'A B', least: 2, most: 2 },
  options: [
    { name: 'catalogue', takes: 'FILE', required: true, says: 'The dealer’s line-up and lot; - for standard input.' },
    { name: 'answers', takes: 'FILE', required: true, says: 'What the buyer said; - for standard input.' },
    { name: 'format', takes: 'text|json', choices: ['text', 'json'], says: 'A sheet to read, or ids and figures as JSON; text if not said.' },
    { name: 'language', takes: languageTags.join('|'), choices: languageTags, says: 'Language of the sheet; en if not said.' },
    { name: 'units', takes: 'us|metric', choices: ['us', 'metric'], says: 'Units of the sheet; the dealer’s if not said.' },
  ],
  details: [
    'A and B are ids of machines or of units in the catalogue. Says which of them stands above the other for this buyer and why: the musts one meets and the other fails or leaves unknown, the points they differ by with both figures, what neither has, and what would bring the lower level.',
    'A machine is told as the shortlist tells it: by its best unit on the lot, or by its typical price. A unit is told by itself.',
  ],
  run: runCompare,
};
