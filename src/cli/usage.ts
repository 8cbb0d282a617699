import type { Command } from './command.ts';
import { paragraph } from './sheet/layout.ts';

const shownOption = ({ name, short, takes, required }: Command['options'][number]) => {
  const typed = `${short ? `-${short}` : `--${name}`} ${takes}`;
  return required ? typed : `[${typed}]`;
};

/** How a command is typed. */
export const usageOf = ({ name, rest, options }: Command) =>
  ['acre-to-axle', name, rest?.shown ?? '', ...options.map(shownOption)].filter((part) => part !== '').join(' ');

/** The help of one command. */
export const helpOf = (command: Command): string[] => [
  ...paragraph(usageOf(command)),
  ...command.details.flatMap((text) => ['', ...paragraph(text)]),
  ...(command.options.length > 0 ? [''] : []),
  ...command.options.flatMap(({ name, short, takes, says }) => [`  ${short ? `-${short}, ` : ''}--${name} ${takes}`, ...paragraph(says, 6)]),
];

const general: readonly string[] = [
  'acre-to-axle COMMAND',
  '',
  ...paragraph('From a buyer’s answers to a reasoned shortlist of used compact tractors: what fits the work, what it costs with all it needs, and why.'),
  '',
];

const ends: readonly string[] = [
  '',
  '  --help           this, or the help of a command',
  '  --version        which version this is',
  '',
  'It ends with 0 if all is well, 1 if a document has faults, 2 if the command was',
  'wrong, 70 if the program itself failed.',
];

/** The help that lists the commands. */
export const helpOfAll = (commands: readonly Command[]): string[] => [
  ...general,
  ...commands.map(({ name, summary }) => `  ${name.padEnd(15)}  ${summary}`),
  ...ends,
];
