import { ruleIds, rules, rulesVersion, sayRefusal } from '../../trade/book.ts';
import type { Command, Given } from '../command.ts';
import type { ExitCode, Io } from '../io.ts';
import { languages, languageTags, type LanguageTag } from '../languages.ts';
import { oneLine } from '../one-line.ts';
import { inOrder, readDocumentFile } from '../read-document.ts';
import { dealersFiguresOf, type DealersFigures } from '../rulebook/dealers-figures.ts';
import { pageOf } from '../rulebook/page.ts';
import { textOf } from '../rulebook/text.ts';
import { translationsAt } from '../rulebook/translations.ts';

const jsonOf = (dealers: DealersFigures | undefined) => JSON.stringify({
  version: rulesVersion,
  ...(dealers && { dealer: dealers.dealer, refused: dealers.refused.map(({ refusal, ...written }) => ({ ...written, expected: sayRefusal(refusal) })) }),
  rules: ruleIds.map((id) => ({ id, ...rules[id], ...(dealers?.own[id] && { dealers: dealers.own[id] }) })),
});

const formats = ['text', 'json', 'html'];

async function runRuleBook({ options: { format, catalogue, language = 'en', translations } }: Given, io: Io): Promise<ExitCode> {
  const others = translations === undefined ? [] : translationsAt(translations);
  const wrong = !others ? `--translations needs an address with {language} in it, not ${JSON.stringify(translations)}`
    : translations !== undefined && format !== 'html' ? '--translations is for --format html alone' : undefined;
  if (!others || wrong) {
    io.err(oneLine(`acre-to-axle: ${wrong}`));
    return 2;
  }
  const reading = catalogue === undefined ? undefined : await readDocumentFile(catalogue, ['catalogue'], io);
  inOrder(reading?.faults ?? []).forEach(io.err);
  const dealers = reading && dealersFiguresOf(reading.parsed);
  if (reading && !dealers) return 1;
  inOrder(reading?.unknown ?? []).forEach((line) => io.err(`${line}; went on without it`));
  const { words, ruleBook: own } = languages[language as LanguageTag];
  if (format === 'json') io.out(jsonOf(dealers));
  else if (format === 'html') io.out(pageOf({ words, own }, dealers, others));
  else textOf({ words, own }, dealers).forEach(io.out);
  return reading && reading.faults.length > 0 ? 1 : 0;
}

export const rulebook: Command = {
  name: 'rulebook',
  summary: 'every figure and formula the tool goes by, with its source',
  options: [
    { name: 'format', takes: formats.join('|'), choices: formats, says: 'How to print it: as text, as JSON, or as one page for a browser; text if not said.' },
    { name: 'catalogue', takes: 'FILE', says: 'A dealer’s line-up and lot, to show his own figures beside the book’s; - for standard input.' },
    { name: 'language', takes: languageTags.join('|'), choices: languageTags, says: 'Language of the text or the page; en if not said.' },
    { name: 'translations', takes: 'ADDRESS', says: 'Where the page is to be had in the other languages, with {language} in the place of the tag, such as rulebook.{language}.html. The page then links to them; to nothing else, and to none if not said.' },
  ],
  details: [
    'Prints every record of the rule book: id, statement, value and unit or formula, kind, source, and where it is used. A dealer’s own values, by the same ids, belong under "rules" in his catalogue.',
    'With a catalogue each of his values shows as this dealer’s figure; one that is refused is named, and why. Faults of the catalogue are listed as check lists them, and the book is printed all the same where his rules can be read.',
  ],
  run: runRuleBook,
};
