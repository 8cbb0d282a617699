import { shown, type Fault } from '../documents/fault.ts';
import { readDocument, type Reading } from '../documents/read.ts';
import { answers, taskIds, type AnswersDocument } from './schema.ts';

export interface AnswersReading extends Reading<AnswersDocument> {
  /** Tasks of a newer version: kept as cautions, never dropped in silence. */
  unknownTasks: string[];
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

/** A task named twice: only one of the two could count, and neither may be dropped in silence. */
function tasksTwice(document: unknown): Fault[] {
  const tasks: unknown[] = isRecord(document) && Array.isArray(document.tasks) ? document.tasks : [];
  const names = tasks.map((each) => (isRecord(each) ? each.task : undefined));
  return names.flatMap((task, index) => (typeof task === 'string' && names.indexOf(task) < index
    ? [{ place: `tasks[${index}].task`, read: shown(task), expected: 'a task no other entry of tasks has' }]
    : []));
}

/**
 * Reads a parsed answers document. A reader that only reckons goes on past unknown keys and tasks; a
 * check takes them for faults. Never throws.
 */
export function readAnswers(document: unknown): AnswersReading {
  const tasks: unknown[] = isRecord(document) && Array.isArray(document.tasks) ? document.tasks : [];
  const isUnknown = (each: unknown) => isRecord(each) && typeof each.task === 'string' && !(taskIds as string[]).includes(each.task);
  const unknownTasks = tasks.flatMap((each) => (isUnknown(each) ? [String((each as Record<string, unknown>).task)] : []));
  const whole = readDocument(answers, document);
  const twice = tasksTwice(document);
  if (unknownTasks.length === 0) {
    const faults = [...whole.faults, ...twice];
    return { ...whole, value: faults.length > 0 ? undefined : whole.value, faults, unknownTasks };
  }
  // Faults keep the places of the document as it was written; the value leaves the unknown tasks out.
  const places = tasks.flatMap((each, index) => (isUnknown(each) ? [`tasks[${index}].task`] : []));
  const faults = [...whole.faults, ...twice].filter(({ place }) => !places.includes(place));
  const known = readDocument(answers, { ...(document as object), tasks: tasks.filter((each) => !isUnknown(each)) });
  return { value: faults.length > 0 ? undefined : known.value, faults, unknownKeys: whole.unknownKeys, unknownTasks };
}

/** Every fault of an answers document for whoever writes one: unknown tasks and keys are faults too. */
export const checkAnswers = (document: unknown) => {
  const { faults, unknownKeys } = readDocument(answers, document);
  return [...faults, ...unknownKeys, ...tasksTwice(document)];
};
