import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { Tallied } from '../demand/tally-lines.ts';

/** What the command is given of the world. Only `main.ts` has the real one. */
export interface Io {
  /** What was typed behind the command's name. */
  argv: readonly string[];
  version: string;
  /** Fails as Node does, with a `code` such as ENOENT. */
  readFile(path: string): Promise<Uint8Array>;
  readStdin(): Promise<Uint8Array>;
  /** Lines of a file, of a folder's files, or of what a relay counted, one after the other and never all at once; `-` is standard input. Fails as Node does, or with what the relay said. */
  lines(path: string): AsyncIterable<string>;
  /** Judges requests, on as many processors as there are; `progress` hears now and then how many are done. */
  tally(catalogue: CatalogueDocument, lines: readonly string[], progress: (done: number) => void): Promise<Tallied>;
  /** Fails as Node does, with a `code` such as EACCES. */
  writeFile(path: string, text: string): Promise<void>;
  /** The day it is where the command runs, as 2026-04-30. */
  today(): string;
  out(line: string): void;
  err(line: string): void;
}

/** 0 all well, 1 the documents have faults, 2 the command was wrong, 70 the program itself has a fault. */
export type ExitCode = 0 | 1 | 2 | 70;
