import type { ExitCode, Io } from './io.ts';

/** An option that takes a value: `--name VALUE`. */
export interface Option {
  name: string;
  /** A letter that serves as well: `-o`. */
  short?: string;
  /** What stands for the value in the help. */
  takes: string;
  /** The words it may be, where it may not be any. */
  choices?: readonly string[];
  required?: boolean;
  says: string;
}

export interface Given {
  /** Value of each option that was given, by its name. */
  options: Readonly<Record<string, string | undefined>>;
  /** What was typed besides options, in its order. */
  rest: readonly string[];
}

export interface Command {
  name: string;
  /** One line for the list of commands. */
  summary: string;
  options: readonly Option[];
  /** What may be typed besides options, as the help shows it; absent where nothing may. */
  rest?: { shown: string; least: number; most: number };
  /** Paragraphs of its help. */
  details: readonly string[];
  run(given: Given, io: Io): Promise<ExitCode>;
}
