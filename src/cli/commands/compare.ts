import { nearest } from '../../documents/nearest.ts';
import { comparableIds, compare } from '../../reasons/compare.ts';
import type { Command, Given } from '../command.ts';
import type { ExitCode, Io } from '../io.ts';
import { lotAndBuyerOptions, readLotAndBuyer } from '../lot-and-buyer.ts';
import { oneLine } from '../one-line.ts';
import { comparisonOf } from '../sheet/comparison.ts';

function strangeId(id: string, known: readonly string[]): string {
  const near = nearest(id, known);
  return oneLine(`acre-to-axle: no machine or unit for sale has the id ${JSON.stringify(id)}${near ? ` (nearest: ${near})` : ''}`);
}

async function runCompare(given: Given, io: Io): Promise<ExitCode> {
  const { rest: [one = '', other = ''] } = given;
  if (one === other) {
    io.err(oneLine(`acre-to-axle: compare needs two that differ, and ${JSON.stringify(one)} stands there twice`));
    return 2;
  }
  const read = await readLotAndBuyer(given, io);
  if (typeof read === 'number') return read;

  const { catalogue, answers, unknown, asJson, language, units } = read;
  const known = comparableIds(catalogue);
  const strange = [one, other].filter((id) => !known.includes(id));
  strange.forEach((id) => io.err(strangeId(id, known)));
  if (strange.length > 0) return 2;

  unknown.forEach(io.err);
  const contrast = compare(catalogue, answers, one, other);
  if (asJson) io.out(JSON.stringify(contrast));
  else comparisonOf(contrast, catalogue, language.words, units).forEach(io.out);
  return 0;
}

export const compareCommand: Command = {
  name: 'compare',
  summary: 'why one of two machines or units stands above the other',
  rest: { shown: 'A B', least: 2, most: 2 },
  options: lotAndBuyerOptions('A sheet to read, or ids and figures as JSON; text if not said.'),
  details: [
    'A and B are ids of machines or of units in the catalogue. Says which of them stands above the other for this buyer and why: the musts one meets and the other fails or leaves unknown, the points they differ by with both figures, what neither has, and what would bring the lower level.',
    'A machine is told as the shortlist tells it: by its best unit on the lot, or by its typical price. A unit is told by itself.',
  ],
  run: runCompare,
};
