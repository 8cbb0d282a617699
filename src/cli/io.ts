import type { CatalogueDocument } from '../catalogue/schema.ts';
import type { Outcome } from '../demand/outcome.ts';
import type { Requests } from '../demand/requests.ts';
import type { RequestsFrom } from './demand/requests-at.ts';

/** Judges requests, on as many processors as there are. */
export interface Judges {
  /** @param progress  hears now and then how many are done. @returns in their order; undefined where one can't be read */
  judge(texts: readonly string[], progress: (done: number) => void): Promise<(Outcome | undefined)[]>;
  end(): Promise<void>;
}

/** What a job has cost so far. */
export interface Spent {
  seconds: number;
  /** Memory held at the most [MB]. */
  megabytes: number;
}

/** What the command is given of the world. Only `main.ts` has the real one. */
export interface Io {
  /** What was typed behind the command's name. */
  argv: readonly string[];
  version: string;
  /** Fails as Node does, with a `code` such as ENOENT. */
  readFile(path: string): Promise<Uint8Array>;
  readStdin(): Promise<Uint8Array>;
  /**
   * Requests in files, in what a relay counted, or in its database; `-` is standard input. Reading them fails as Node does, or
   * with what the relay or its database said.
   *
   * @param most  to judge at the most
   * @param progress  hears now and then how many were read
   */
  requests(from: RequestsFrom, most: number, progress: (read: number) => void): Promise<Requests>;
  judges(catalogue: CatalogueDocument): Judges;
  spent(): Spent;
  /** Fails as Node does, with a `code` such as EACCES. */
  writeFile(path: string, text: string): Promise<void>;
  /** The day it is where the command runs, as 2026-04-30. */
  today(): string;
  out(line: string): void;
  err(line: string): void;
}

/** 0 all well, 1 the documents have faults, 2 the command was wrong, 70 the program itself has a fault. */
export type ExitCode = 0 | 1 | 2 | 70;
