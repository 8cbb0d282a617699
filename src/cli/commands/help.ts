import type { Command } from '../command.ts';
import { oneLine } from '../one-line.ts';
import { wrongWord } from '../read-arguments.ts';
import { helpOf, helpOfAll } from '../usage.ts';

/** The help, which speaks of the other commands and of itself. */
export function helpAmong(others: readonly Command[]): Command {
  const help: Command = {
    name: 'help',
    summary: 'this, or the help of a command',
    options: [],
    rest: { shown: '[COMMAND]', least: 0, most: 1 },
    details: ['Lists the commands, or says all about one of them.'],
    async run({ rest: [name] }, io) {
      const commands = [...others, help];
      const command = commands.find((each) => each.name === name);
      if (name !== undefined && !command) {
        io.err(oneLine(`acre-to-axle: ${wrongWord('command', name, commands.map((each) => each.name))}`));
        return 2;
      }
      (command ? helpOf(command) : helpOfAll(commands)).forEach(io.out);
      return 0;
    },
  };
  return help;
}
