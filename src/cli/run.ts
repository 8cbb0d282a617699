import type { Command } from './command.ts';
import { check } from './commands/check.ts';
import { compareCommand } from './commands/compare.ts';
import { demand } from './commands/demand.ts';
import { helpAmong } from './commands/help.ts';
import { importCommand } from './commands/import.ts';
import { relay } from './commands/relay.ts';
import { rulebook } from './commands/rulebook.ts';
import { shortlistCommand } from './commands/shortlist.ts';
import type { ExitCode, Io } from './io.ts';
import { oneLine } from './one-line.ts';
import { readArguments, wrongWord } from './read-arguments.ts';
import { helpOf, helpOfAll } from './usage.ts';

const working = [shortlistCommand, compareCommand, check, importCommand, demand, rulebook, relay];
/** In the order of the help. */
export const commands: readonly Command[] = [...working, helpAmong(working)];

function refuse(io: Io, wrong: string, command?: Command): ExitCode {
  io.err(oneLine(`acre-to-axle: ${wrong}`));
  io.err(`See: acre-to-axle help${command ? ` ${command.name}` : ''}`);
  return 2;
}

async function runCommand(io: Io): Promise<ExitCode> {
  const [first, ...behind] = io.argv;
  if (first === undefined) return refuse(io, `expected a command: ${commands.map(({ name }) => name).join(', ')}`);
  if (first === '--version' || first === '-V') {
    io.out(`acre-to-axle ${io.version}`);
    return 0;
  }
  if (first === '--help' || first === '-h') {
    helpOfAll(commands).forEach(io.out);
    return 0;
  }
  const command = commands.find(({ name }) => name === first);
  if (!command && first.startsWith('-')) return refuse(io, wrongWord('option', first, ['--help', '--version']));
  if (!command) return refuse(io, wrongWord('command', first, commands.map(({ name }) => name)));
  const given = readArguments(command, behind);
  if (given === 'help') {
    helpOf(command).forEach(io.out);
    return 0;
  }
  return 'wrong' in given ? refuse(io, given.wrong, command) : command.run(given, io);
}

/** Runs what was typed. Never throws: what nobody foresaw is one line, and 70. */
export async function run(io: Io): Promise<ExitCode> {
  try {
    return await runCommand(io);
  } catch (error) {
    const what = error instanceof Error ? error.message : String(error);
    io.err(oneLine(`acre-to-axle: this should not have happened; please report it with the files you used: ${what}`));
    return 70;
  }
}
