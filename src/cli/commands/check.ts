import type { Command } from '../command.ts';
import { fileName } from '../fault-line.ts';
import type { Io } from '../io.ts';
import { languages, languageTags, type Language, type LanguageTag } from '../languages.ts';
import { oneLine } from '../one-line.ts';
import { inOrder, readDocumentFile, type DocumentReading, type OurDocument } from '../read-document.ts';
import { findingLine } from '../tables/finding-line.ts';
import type { CatalogueDocument } from '../../catalogue/schema.ts';
import { queriesOf, sayUnknown, unknownsOf } from '../../sheets/sheets.ts';

const count = (many: number, one: string) => `${many} ${one}${many === 1 ? '' : 's'}`;

function described(document: OurDocument): string {
  if (document.kind === 'answers') return `answers with ${count(document.value.tasks?.length ?? 0, 'task')}`;
  const { machines, units = [] } = document.value;
  return `a catalogue with ${count(machines.length, 'machine')} and ${count(units.length, 'unit')}`;
}

/** What is no fault of a catalogue but should be looked at, and what is unknown with what that costs: the words of `import`. */
function tellOfCatalogue(path: string, catalogue: CatalogueDocument, positionOf: DocumentReading['positionOf'], { sheets, own }: Language, io: Io) {
  for (const query of queriesOf(catalogue, {}, languageTags)) {
    const { line, column } = positionOf(query.place ?? '');
    io.out(findingLine(path, { ...query, row: line, column }, sheets, own));
  }
  for (const unknown of unknownsOf(catalogue)) io.out(oneLine(`${fileName(path)}: ${sayUnknown(unknown, sheets)}`));
}

/** Checks one file and says what it found; whether it is all right. */
async function checkFile(path: string, language: Language, io: Io): Promise<boolean> {
  const { document, faults, unknown, positionOf } = await readDocumentFile(path, ['catalogue', 'answers'], io);
  const all = [...faults, ...unknown];
  inOrder(all).forEach(io.err);
  if (!document || all.length > 0) return false;
  io.out(oneLine(`${fileName(path)}: all right, ${described(document)}`));
  if (document.kind === 'catalogue') tellOfCatalogue(path, document.value, positionOf, language, io);
  return true;
}

export const check: Command = {
  name: 'check',
  summary: 'list every fault of a catalogue or of answers',
  options: [{ name: 'language', takes: languageTags.join('|'), choices: languageTags, says: 'Language of the queries and of what is unknown; en if not said.' }],
  rest: { shown: 'FILE…', least: 1, most: Infinity },
  details: [
    'Reads each file as a catalogue or as answers, told apart by their "format", and lists every fault, one a line: file, line, column, place, what was read, what was expected. FILE may be - for standard input.',
    'Keys and tasks that this version doesn’t know are faults here, for they are mostly slips of the pen. Keys that begin with x- are yours.',
    'Of a catalogue without faults it also tells, on standard output, figures that can hardly be, as queries, and what is unknown with what that costs.',
    'What stands between the rows of a catalogue, such as a unit whose machine isn’t there, is checked once each row is right by itself.',
  ],
  async run({ rest, options: { language = 'en' } }, io) {
    let right = true;
    if (rest.filter((path) => path === '-').length > 1) {
      io.err('acre-to-axle: standard input can be read only once');
      return 2;
    }
    for (const path of rest) right = (await checkFile(path, languages[language as LanguageTag], io)) && right;
    return right ? 0 : 1;
  },
};
