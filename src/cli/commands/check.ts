import type { Command } from '../command.ts';
import { complaintLine, fileName } from '../fault-line.ts';
import type { Io } from '../io.ts';
import { oneLine } from '../one-line.ts';
import { inOrder, readDocumentFile, type OurDocument } from '../read-document.ts';

const count = (many: number, one: string) => `${many} ${one}${many === 1 ? '' : 's'}`;

function described(document: OurDocument): string {
  if (document.kind === 'answers') return `answers with ${count(document.value.tasks?.length ?? 0, 'task')}`;
  const { machines, units = [] } = document.value;
  return `a catalogue with ${count(machines.length, 'machine')} and ${count(units.length, 'unit')}`;
}

/** Checks one file and says what it found; whether it is all right. */
async function checkFile(path: string, io: Io): Promise<boolean> {
  const { document, faults, unknown } = await readDocumentFile(path, ['catalogue', 'answers'], io);
  const all = [...faults, ...unknown];
  inOrder(all).forEach(io.err);
  if (!document || all.length > 0) return false;
  io.out(oneLine(`${fileName(path)}: all right, ${described(document)}`));
  if (document.kind === 'catalogue') document.warnings.forEach((warning) => io.out(complaintLine(path, `warning: ${warning}`)));
  return true;
}

export const check: Command = {
  name: 'check',
  summary: 'list every fault of a catalogue or of answers',
  options: [],
  rest: { shown: 'FILE…', least: 1, most: Infinity },
  details: [
    'Reads each file as a catalogue or as answers, told apart by their "format", and lists every fault, one a line: file, line, column, place, what was read, what was expected. FILE may be - for standard input.',
    'Keys and tasks that this version doesn’t know are faults here, for they are mostly slips of the pen. Keys that begin with x- are yours.',
    'What stands between the rows of a catalogue, such as a unit whose machine isn’t there, is checked once each row is right by itself.',
  ],
  async run({ rest }, io) {
    let right = true;
    if (rest.filter((path) => path === '-').length > 1) {
      io.err('acre-to-axle: standard input can be read only once');
      return 2;
    }
    for (const path of rest) right = (await checkFile(path, io)) && right;
    return right ? 0 : 1;
  },
};
