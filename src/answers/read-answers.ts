import { readDocument, type Reading } from '../documents/read.ts';
import { answers, taskIds, type AnswersDocument } from './schema.ts';

export interface AnswersReading extends Reading<AnswersDocument> {
  /** Tasks of a newer version: kept as cautions, never dropped in silence. */
  unknownTasks: string[];
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

/**
 * Reads a parsed answers document. A reader that only reckons goes on past unknown keys and tasks; a
 * check takes them for faults. Never throws.
 */
export function readAnswers(document: unknown): AnswersReading {
  const tasks = isRecord(document) && Array.isArray(document.tasks) ? document.tasks : [];
  const unknown = tasks.filter(
    (each) => isRecord(each) && typeof each.task === 'string' && !(taskIds as string[]).includes(each.task),
  );
  const known = unknown.length > 0 ? { ...(document as object), tasks: tasks.filter((each) => !unknown.includes(each)) } : document;
  return { ...readDocument(answers, known), unknownTasks: unknown.map(({ task }) => String(task)) };
}

/** Every fault of an answers document for whoever writes one: unknown tasks and keys are faults too. */
export const checkAnswers = (document: unknown) => {
  const { faults, unknownKeys } = readDocument(answers, document);
  return [...faults, ...unknownKeys];
};
