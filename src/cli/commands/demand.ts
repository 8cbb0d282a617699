import { readCatalogue } from '../../catalogue/read-catalogue.ts';
import type { CatalogueDocument } from '../../catalogue/schema.ts';
import { reportOf, type DemandReport, type Told } from '../../demand/report.ts';
import { RequestsUnreadable } from '../../demand/requests.ts';
import { sayReport } from '../../demand/say-report.ts';
import { readerFor } from '../../reasons/asking-voice.ts';
import { namesIn } from '../../reasons/say.ts';
import type { Command, Given } from '../command.ts';
import { judged, type Wanted } from '../demand/judged.ts';
import { demandPage, type Shares } from '../demand/page.ts';
import { demandSheet } from '../demand/sheet.ts';
import { complaintLine } from '../fault-line.ts';
import type { ExitCode, Io } from '../io.ts';
import { languages, languageTags, type LanguageTag } from '../languages.ts';
import { oneLine } from '../one-line.ts';
import { inOrder, readDocumentFile } from '../read-document.ts';
import { readJson } from '../read-json.ts';
import { readText } from '../read-text.ts';

/** Requests that are judged where more differ and not all are asked for: a share is then right to within 0.7 points. */
const usuallyDrawn = 20_000;
/** Machines to bring in that are named if nothing is said, and at most. */
const [usuallyBrought, mostBrought] = [3, 20];

/** The line-up with the machines somebody thinks of; undefined where they have faults, which are told. */
async function withMachines(catalogue: CatalogueDocument, path: string, io: Io): Promise<CatalogueDocument | undefined> {
  const text = await readText(path, io);
  if ('complaint' in text) {
    io.err(complaintLine(path, text.complaint));
    return undefined;
  }
  const json = readJson(text.text);
  const written: unknown = json.document?.value;
  if (json.faults.length > 0 || typeof written !== 'object' || written === null) {
    io.err(complaintLine(path, 'expected JSON: a machine, or an array of them, as they stand under "machines" of a catalogue'));
    return undefined;
  }
  const machines = Array.isArray(written) ? written as unknown[] : [written];
  const from = catalogue.machines.length;
  const { value, faults } = readCatalogue({ ...catalogue, machines: [...catalogue.machines, ...machines] });
  for (const { place, read, expected, nearest } of faults) {
    const here = place.replace(/^machines\[(\d+)\]/, (_whole, index) => `[${Number(index) - from}]`);
    io.err(oneLine(`${path}: ${here}: read ${read}, expected ${expected}${nearest ? ` (nearest: ${nearest})` : ''}`));
  }
  return value;
}

const shareOf = (told: Told) => ('share' in told ? told.share : undefined);
const sharesOf = ({ served, toAsk, unserved, beyond, first, lacked, would }: DemandReport): Shares => ({
  served: [served, toAsk, unserved, beyond].map(shareOf),
  sections: [first, lacked, would].filter((rows) => rows.length > 0).map((rows) => rows.map(({ told }) => shareOf(told))),
});

/** What stands for where requests are, without the password an address may hold. */
const shownOf = (requests: string) => requests.replace(/^(\w+:\/\/[^/]*?):[^/]*@/, '$1@');

/** Why requests can't be read; a fault of the program's own is thrown on. */
function complaintOf(error: unknown): string {
  const { name, code, message } = error as NodeJS.ErrnoException;
  if (name === RequestsUnreadable.name) return `can’t be read (${message})`;
  if (code === undefined || code.startsWith('ERR_')) throw error;
  return code === 'ENOENT' ? 'no such file or folder' : `can’t be read (${code})`;
}

async function reported(wanted: Wanted, io: Io) {
  const { path } = wanted.requests;
  try {
    const { counted, isInvented, ...of } = await judged(wanted, io);
    if (of.seen > 0) return { report: reportOf(counted, of), isInvented };
    io.err(complaintLine(shownOf(path), 'holds no requests: expected answers documents, one a line'));
  } catch (error) {
    io.err(complaintLine(shownOf(path), complaintOf(error)));
  }
  return undefined;
}

const wholeNumber = (typed: string | undefined, usually: number) => (typed === undefined ? usually : /^[1-9]\d{0,8}$/.test(typed) ? Number(typed) : undefined);

async function runDemand({ options: { catalogue: file = '', requests = '', format = 'text', language = 'en', draw, bring, machine, dealer: of } }: Given, io: Io): Promise<ExitCode> {
  const [most, toBring] = [draw === 'all' ? Infinity : wholeNumber(draw, usuallyDrawn), wholeNumber(bring, usuallyBrought)];
  const wrong = most === undefined ? `--draw needs a whole number or all, not ${JSON.stringify(draw)}`
    : toBring === undefined || toBring > mostBrought ? `--bring needs a whole number from 1 to ${mostBrought}, not ${JSON.stringify(bring)}` : undefined;
  if (wrong || most === undefined || toBring === undefined) {
    io.err(oneLine(`acre-to-axle: ${wrong}`));
    return 2;
  }
  const lot = await readDocumentFile(file, ['catalogue'], io);
  inOrder(lot.faults).forEach(io.err);
  if (lot.document?.kind !== 'catalogue') return 1;
  const catalogue = machine === undefined ? lot.document.value : await withMachines(lot.document.value, machine, io);
  const found = catalogue && await reported({ catalogue, requests: { path: requests, dealer: of }, most, toBring }, io);
  if (!catalogue || !found) return 1;

  const { words, demand: own } = languages[language as LanguageTag];
  const { dealer } = catalogue;
  const reader = readerFor(words, dealer.units, dealer.locale, dealer.currency);
  const said = sayReport(found.report, { words, reader, nameOf: namesIn(catalogue, reader) }, own, found.isInvented);
  if (format === 'json') io.out(JSON.stringify(found.report));
  else if (format === 'html') io.out(demandPage(said, sharesOf(found.report), { language, buyers: own.buyers }));
  else demandSheet(said, own.buyers).forEach(io.out);
  return 0;
}

const formats = ['text', 'json', 'html'];

export const demand: Command = {
  name: 'demand',
  summary: 'what buyers asked for, whom the lot serves, and what to bring in next',
  options: [
    { name: 'catalogue', takes: 'FILE', required: true, says: 'The dealer’s line-up and lot; - for standard input.' },
    { name: 'requests', takes: 'FILE|DIR|DATABASE', required: true, says: 'Answers documents, one a line, without addresses; a folder of such files (.jsonl, .ndjson); a relay’s data folder, or its database (postgres://…, the password in PGPASSWORD), of which it takes what buyers agreed to; - for standard input.' },
    { name: 'dealer', takes: 'NAME', says: 'Of the dealers a relay serves, the one whose requests count; all of them if not said.' },
    { name: 'machine', takes: 'FILE', says: 'Machines to think of besides the line-up: JSON as it stands under "machines" of a catalogue.' },
    { name: 'bring', takes: 'N', says: `How many machines to bring in to name, up to ${mostBrought}; ${usuallyBrought} if not said.` },
    { name: 'draw', takes: 'N|all', says: `How many requests to judge, drawn by lot where more differ; ${usuallyDrawn} if not said.` },
    { name: 'format', takes: formats.join('|'), choices: formats, says: 'A sheet to read, the figures as JSON, or one page for a browser; text if not said.' },
    { name: 'language', takes: languageTags.join('|'), choices: languageTags, says: 'Language of the sheet or page; en if not said.' },
  ],
  details: [
    'Judges each request by today’s lot and rules: for how many buyers each machine on the lot comes first, by which needs the others fail, and which machine, from the line-up or thought of, would serve the most of those at their budgets.',
    'Requests are streamed, and what is the same is judged once. Of more than are drawn no more are kept, and each share says within what it is right; the draw is the same each time. Counts below 5 are told as that alone.',
    'A relay’s database counts by itself, in tables of this connection alone that are gone when it ends; its role needs to read acre.statistics and to make temporary tables.',
  ],
  run: runDemand,
};
