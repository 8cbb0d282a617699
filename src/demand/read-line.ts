import { readAnswers } from '../answers/read-answers.ts';
import type { AnswersDocument } from '../answers/schema.ts';

/** Longest line that is read: beyond what any buyer can say. */
const longest = 64_000;

function parsed(line: string): unknown {
  const document = JSON.parse(line) as { answers?: unknown } | null;
  return document !== null && typeof document === 'object' && 'answers' in document ? document.answers : document;
}

/** What a line of a file of requests holds: answers by themselves, or with what else a relay tells of a request. */
export function readLine(line: string): AnswersDocument | undefined {
  if (line.length > longest) return undefined;
  try {
    return readAnswers(parsed(line)).value;
  } catch {
    return undefined;
  }
}

/** The answers of a line and nothing else of it, as text that is the same where they are; what can't be read is empty. */
export function textOf(line: string): string {
  if (line.length > longest) return '';
  try {
    return JSON.stringify(parsed(line));
  } catch {
    return '';
  }
}
