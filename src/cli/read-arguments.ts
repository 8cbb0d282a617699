import { parseArgs } from 'node:util';
import { nearest } from '../documents/nearest.ts';
import type { Command, Given, Option } from './command.ts';

/** What was typed behind a command, or in words what is wrong with it. */
export type ReadArguments = Given | 'help' | { wrong: string };

const near = (written: string, known: readonly string[], before = '') => {
  const word = nearest(written, known);
  return word ? ` (nearest: ${before}${word})` : '';
};

const anyOf = (words: readonly string[]) =>
  (words.length < 2 ? words.join() : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`);

/** @example wrongWord('format', 'jsn', ['text', 'json']) // 'unknown format "jsn", expected text or json (nearest: json)' */
export const wrongWord = (what: string, written: string, known: readonly string[]) =>
  `unknown ${what} ${JSON.stringify(written)}, expected ${anyOf(known)}${near(written, known)}`;

function wrongValue(option: Option, value: string | undefined, inline: boolean | undefined): string | undefined {
  // `--catalogue --answers x` has a value missing; a file of such a name is written `--catalogue=--answers`.
  if (value === undefined || (inline === false && /^-./.test(value))) return `--${option.name} needs ${option.takes} behind it`;
  if (option.choices && !option.choices.includes(value)) return wrongWord(option.name, value, option.choices);
  return undefined;
}

function wrongRest({ name, rest = { shown: '', least: 0, most: 0 } }: Command, typed: readonly string[]): string | undefined {
  if (typed.length < rest.least) return `${name} needs ${rest.shown} behind it`;
  if (typed.length > rest.most) return `${name} doesn’t know what to do with ${JSON.stringify(typed[rest.most])}`;
  return undefined;
}

/** Reads what was typed behind a command; the first thing that is wrong is said, the nearest right word with it. */
export function readArguments(command: Command, argv: readonly string[]): ReadArguments {
  const known = Object.fromEntries(command.options.map(({ name, short }) => [name, { type: 'string', ...(short && { short }) } as const]));
  const { tokens, positionals } = parseArgs({
    args: [...argv],
    options: { ...known, help: { type: 'boolean', short: 'h' } },
    strict: false, allowPositionals: true, tokens: true,
  });
  const given: Record<string, string> = {};
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    if (token.name === 'help') return 'help';
    const option = command.options.find(({ name }) => name === token.name);
    if (!option) {
      const written = argv[token.index]!.split('=')[0]!;
      return { wrong: `unknown option ${JSON.stringify(written)}${near(written.replace(/^-+/, ''), [...Object.keys(known), 'help'], '--')}` };
    }
    if (given[option.name] !== undefined) return { wrong: `--${option.name} stands there twice` };
    const wrong = wrongValue(option, token.value, token.inlineValue);
    if (wrong) return { wrong };
    given[option.name] = token.value!;
  }
  const missing = command.options.find(({ name, required }) => required && given[name] === undefined);
  if (missing) return { wrong: `${command.name} needs --${missing.name} ${missing.takes}` };
  const wrong = wrongRest(command, positionals);
  return wrong ? { wrong } : { options: given, rest: positionals };
}
