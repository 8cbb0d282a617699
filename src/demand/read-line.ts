import { readAnswers } from '../answers/read-answers.ts';
import type { AnswersDocument } from '../answers/schema.ts';

/** Longest line that is read: beyond what any buyer can say. */
const longest = 64_000;

/** What a line of a file of requests holds: answers by themselves, or with what else a relay tells of a request. */
export function readLine(line: string): AnswersDocument | undefined {
  if (line.length > longest) return undefined;
  try {
    const parsed = JSON.parse(line) as { answers?: unknown } | null;
    return readAnswers(parsed !== null && typeof parsed === 'object' && 'answers' in parsed ? parsed.answers : parsed).value;
  } catch {
    return undefined;
  }
}
