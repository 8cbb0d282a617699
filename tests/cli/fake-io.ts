import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Io } from '../../src/cli/io.ts';
import { run } from '../../src/cli/run.ts';
import { judgeOf } from '../../src/demand/judge-text.ts';
import { requestsOfLines } from '../../src/demand/of-lines.ts';
import { root } from '../support/sources.ts';

export interface Ran {
  code: number;
  out: string[];
  err: string[];
  /** What was written to files, by their paths. */
  written?: Record<string, string>;
}

/** The day it is in that world. */
export const today = '2026-11-20';

/** What a file holds: text, bytes, or the code of the error that reading it gives. */
type Holding = string | Uint8Array | { code: string };

const bytes = (holding: Holding | undefined): Uint8Array => {
  if (holding === undefined) throw Object.assign(new Error('ENOENT: no such file'), { code: 'ENOENT' });
  if (typeof holding === 'string') return new TextEncoder().encode(holding);
  if (holding instanceof Uint8Array) return holding;
  throw Object.assign(new Error(`${holding.code}: refused`), holding);
};

/** Runs what was typed in a world that holds the given files; `-` is standard input. */
export async function runWith(files: Readonly<Record<string, Holding>>, ...argv: string[]): Promise<Ran> {
  const ran: Ran = { code: -1, out: [], err: [] };
  const io: Io = {
    argv,
    version: '1.2.3',
    readFile: async (path) => bytes(files[path]),
    readStdin: async () => bytes(files['-']),
    requests: async ({ path }, most, progress) => requestsOfLines((async function* lines() {
      for (const line of new TextDecoder().decode(bytes(files[path])).split('\n')) if (line !== '') yield line;
    })(), most, progress),
    judges: (catalogue) => {
      const judge = judgeOf(catalogue);
      return {
        judge: async (texts, progress) => texts.map((text, index) => {
          const outcome = judge(text);
          progress(index + 1);
          return outcome;
        }),
        end: async () => {},
      };
    },
    spent: () => ({ seconds: 90, megabytes: 120 }),
    writeFile: async (path, text) => {
      ran.written = { ...ran.written, [path]: text };
    },
    today: () => today,
    out: (line) => ran.out.push(line),
    err: (line) => ran.err.push(line),
  };
  ran.code = await run(io);
  return ran;
}

const demo = (path: string) => readFileSync(join(root, 'demo', path), 'utf8');

export const demoCatalogue = demo('catalogue.json');
export const buyers = ['first-acre', 'hay-and-barn', 'steep-and-careful'] as const;
export const demoAnswers = (buyer: (typeof buyers)[number]) => demo(`answers/${buyer}.json`);

/** The demo's catalogue with one thing about it changed. */
export function changedCatalogue(change: (catalogue: ReturnType<typeof JSON.parse>) => void): string {
  const catalogue: unknown = JSON.parse(demoCatalogue);
  change(catalogue);
  return JSON.stringify(catalogue);
}

/** The form of every line about a file: where, what was read, what was expected, the nearest right word. */
export const faultForm = /^[^\n]+:\d+:\d+ \S[^\n]*: read [^\n]+, expected [^\n]+?( \(nearest: [^\n]+\))?$/;
