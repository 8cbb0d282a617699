import { readAnswers } from '../answers/read-answers.ts';
import type { ParkedIntake } from './intake.ts';

const text = (value: unknown) => (typeof value === 'string' ? value : '');

/** Reads what was parked, with suspicion: an older page may have written it. Undefined where its answers can't be read. */
export function readParked(draft: unknown): ParkedIntake | undefined {
  if (typeof draft !== 'object' || draft === null) return undefined;
  const { name, notes, way, units, answers } = draft as Readonly<Record<string, unknown>>;
  const { value } = readAnswers(answers);
  return value && { v: 1, name: text(name), notes: text(notes), way: way === 'steps' ? 'steps' : 'sheet', units: units === 'metric' ? 'metric' : 'us', answers: value };
}
