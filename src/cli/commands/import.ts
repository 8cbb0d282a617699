import { assembling, queriesOf, readBase, sayUnknown, unknownsOf, type Base, type Finding, type Parts, type Sources } from '../../sheets/sheets.ts';
import type { Command, Given } from '../command.ts';
import { complaintLine, faultLine, fileName } from '../fault-line.ts';
import type { ExitCode, Io } from '../io.ts';
import { languages, languageTags, type Language, type LanguageTag } from '../languages.ts';
import { oneLine } from '../one-line.ts';
import { readJson, type JsonReading } from '../read-json.ts';
import { readText } from '../read-text.ts';
import { readOwnHeadings, type OwnHeadings } from '../tables/columns-file.ts';
import { findingLine } from '../tables/finding-line.ts';
import { readTable, withProgress, type TableOptions } from '../tables/read-table.ts';

const separators = { comma: ',', semicolon: ';', tab: '\t', bar: '|' } as const;
const decimalMarks = { point: '.', comma: ',' } as const;
const isDay = (written: string) => /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(written);

async function readJsonFile(path: string, io: Io): Promise<JsonReading | undefined> {
  const text = await readText(path, io);
  if ('complaint' in text) {
    io.err(complaintLine(path, text.complaint));
    return undefined;
  }
  const json = readJson(text.text);
  json.faults.forEach((fault) => io.err(faultLine(path, fault, json)));
  return json.document && json.faults.length === 0 ? json : undefined;
}

/** The dealer's JSON; what is wrong in it has been told where there is none. */
async function readDealer(path: string, io: Io): Promise<{ base: Base; json: JsonReading } | undefined> {
  const json = await readJsonFile(path, io);
  if (!json) return undefined;
  const { base, findings } = readBase(json.document!.value);
  for (const { place = '', read = '', facts } of findings) {
    const { expected, nearest } = facts as { expected: string; nearest: string | undefined };
    io.err(faultLine(path, json.placed({ place, read, expected, ...(nearest && { nearest }) }), json));
  }
  return base && { base, json };
}

async function readColumns(path: string | undefined, io: Io): Promise<OwnHeadings | undefined> {
  if (path === undefined) return {};
  const json = await readJsonFile(path, io);
  if (!json) return undefined;
  const { headings, wrong } = readOwnHeadings(json.document!.value);
  wrong.forEach((line) => io.err(oneLine(`${fileName(path)}: ${line}`)));
  return wrong.length > 0 ? undefined : headings;
}

interface Files {
  machines: string | undefined;
  units: string | undefined;
  dealer: string;
}

/** Tells what was found, in the order of each file. */
function tell(findings: readonly Finding[], files: Files, { sheets, own }: Language, io: Io) {
  const order = ['dealer', 'machines', 'units'];
  const sorted = [...findings].sort((a, b) => order.indexOf(a.sheet) - order.indexOf(b.sheet) || (a.row ?? 0) - (b.row ?? 0) || (a.column ?? 0) - (b.column ?? 0));
  for (const finding of sorted) io.err(findingLine(files[finding.sheet] ?? files.dealer, finding, sheets, own));
}

async function runImport({ options }: Given, io: Io): Promise<ExitCode> {
  const { machines, units, dealer = '', output, language = 'en', 'as-of': asOf = io.today() } = options;
  const files: Files = { machines, units, dealer };
  const wrong = [machines, units, dealer, options.columns].filter((path) => path === '-').length > 1
    ? 'only one file can be read from standard input'
    : !isDay(asOf) ? `--as-of needs a day such as 2026-04-30, not ${JSON.stringify(asOf)}` : undefined;
  if (wrong) {
    io.err(oneLine(`acre-to-axle: ${wrong}`));
    return 2;
  }
  const speech = languages[language as LanguageTag];
  const own = await readColumns(options.columns, io);
  const read = await readDealer(dealer, io);
  if (!own || !read) return 1;
  const { base } = read;
  const tables: TableOptions = {
    own,
    ...(options.separator && { separator: separators[options.separator as keyof typeof separators] }),
    ...(options['decimal-mark'] && { decimalMark: decimalMarks[options['decimal-mark'] as keyof typeof decimalMarks] }),
  };
  const told = (path: string) => ({ done, of }: { done: number; of: number }) => io.err(oneLine(`${fileName(path)}: ${speech.own.rowsRead(done, of)}`));
  const ofMachines = machines === undefined ? undefined : await readTable(machines, 'machines', base.dealer, tables, io, told(machines));
  const ofUnits = units === undefined ? undefined : await readTable(units, 'units', base.dealer, tables, io, told(units));
  const findings = [...(ofMachines?.findings ?? []), ...(ofUnits?.findings ?? [])];
  if ((machines !== undefined && !ofMachines?.rows) || (units !== undefined && !ofUnits?.rows)) {
    tell(findings, files, speech, io);
    return 1;
  }
  const sources: Sources = { ...(ofMachines?.rows && { machines: ofMachines.rows }), ...(ofUnits?.rows && { units: ofUnits.rows }) };
  const parts: Parts = { base, asOf, ...sources };
  const { catalogue, findings: between } = withProgress(assembling(parts), () => undefined);
  findings.push(...between, ...(catalogue ? queriesOf(catalogue, sources, languageTags) : []));
  tell(findings, files, speech, io);
  const faults = findings.filter(({ weight }) => weight === 'fault').length;
  if (!catalogue) return 1;

  const text = JSON.stringify(catalogue, undefined, 1);
  const summary = output === undefined ? io.err : io.out;
  if (output === undefined) io.out(text);
  else {
    try {
      await io.writeFile(output, `${text}\n`);
    } catch (error) {
      const { code } = error as { code?: unknown };
      if (typeof code !== 'string') throw error;
      io.err(oneLine(`${output}: the file can’t be written (${code})`));
      return 1;
    }
  }
  unknownsOf(catalogue).forEach((unknown) => summary(oneLine(sayUnknown(unknown, speech.sheets))));
  summary(oneLine(speech.own.imported(output ?? '(standard output)', catalogue.machines.length, catalogue.units?.length ?? 0, faults)));
  return faults > 0 ? 1 : 0;
}

export const importCommand: Command = {
  name: 'import',
  summary: 'make a catalogue of a dealer’s tables',
  options: [
    { name: 'dealer', takes: 'FILE', required: true, says: 'JSON with all that is in no table: id, dealer, frames, and implements and rules if there are any. A whole catalogue serves too.' },
    { name: 'machines', takes: 'FILE', says: 'The line-up as CSV; without it the machines of the dealer’s JSON stand. - for standard input.' },
    { name: 'units', takes: 'FILE', says: 'The lot as CSV; without it the units of the dealer’s JSON stand. - for standard input.' },
    { name: 'output', short: 'o', takes: 'FILE', says: 'Where the catalogue goes; to standard output if not said.' },
    { name: 'as-of', takes: 'DAY', says: 'The day that ages count from, as 2026-04-30; today if not said.' },
    { name: 'columns', takes: 'FILE', says: 'JSON that names your own headings: {"machines": {"Weight empty": "mass (kg)"}, "units": {"Salesman": null}}. null leaves a column out.' },
    { name: 'separator', takes: Object.keys(separators).join('|'), choices: Object.keys(separators), says: 'What stands between cells; found from the file if not said.' },
    { name: 'decimal-mark', takes: Object.keys(decimalMarks).join('|'), choices: Object.keys(decimalMarks), says: 'What sets off decimals; found from the file if not said, and a number such as 1.500 is then asked about.' },
    { name: 'language', takes: languageTags.join('|'), choices: languageTags, says: 'Language of what is said; en if not said.' },
  ],
  details: [
    'Reads machines and units from CSV with documented headings and makes a catalogue, with a version that is a hash of what it says. Each fault is one line: file, row, column, heading, what was read, what was expected, how to mend it. Rows are numbered as a spreadsheet does, the headings are row 1.',
    'A cell with a fault is left out, and what it says is unknown; where that could speak for the machine or unit, the row is left out. A blank cell is unknown, never zero. The catalogue of what is left is written all the same, and the command ends with 1. Queries are figures that can hardly be: they are kept.',
    'On standard error, long files tell how far they are every 10,000 rows.',
  ],
  run: runImport,
};
