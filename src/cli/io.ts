/** What the command is given of the world. Only `main.ts` has the real one. */
export interface Io {
  /** What was typed behind the command's name. */
  argv: readonly string[];
  version: string;
  /** Fails as Node does, with a `code` such as ENOENT. */
  readFile(path: string): Promise<Uint8Array>;
  readStdin(): Promise<Uint8Array>;
  /** Fails as Node does, with a `code` such as EACCES. */
  writeFile(path: string, text: string): Promise<void>;
  /** The day it is where the command runs, as 2026-04-30. */
  today(): string;
  out(line: string): void;
  err(line: string): void;
}

/** 0 all well, 1 the documents have faults, 2 the command was wrong, 70 the program itself has a fault. */
export type ExitCode = 0 | 1 | 2 | 70;
