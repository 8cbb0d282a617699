import type { Command, Given } from '../command.ts';
import type { ExitCode, Io } from '../io.ts';
import { lotAndBuyerOptions, readLotAndBuyer } from '../lot-and-buyer.ts';
import { sheetOf } from '../sheet/sheet.ts';
import { shortlist } from '../../reasons/shortlist.ts';

async function runShortlist(given: Given, io: Io): Promise<ExitCode> {
  const read = await readLotAndBuyer(given, io);
  if (typeof read === 'number') return read;

  const { catalogue, answers, unknownTasks, unknown, asJson, language, units } = read;
  unknown.forEach(io.err);
  const result = shortlist(catalogue, answers, unknownTasks);
  if (asJson) io.out(JSON.stringify(result));
  else sheetOf({ result, catalogue, answers }, language, units).forEach(io.out);
  return 0;
}

export const shortlistCommand: Command = {
  name: 'shortlist',
  summary: 'what fits a buyer’s work, with reasons, prices and the working',
  options: lotAndBuyerOptions('A sheet to read, or the shortlist document, the same bytes as in the browser; text if not said.'),
  details: [
    'Reckons from a catalogue and a buyer’s answers which machines stand, which must be asked about and which are ruled out.',
    'Faults of either file are listed, one a line, and nothing is reckoned. Keys and tasks this version doesn’t know are named on standard error, and it goes on without them; each such task becomes a caution of the result.',
  ],
  run: runShortlist,
};
