import { noAnswers } from '../answers/names.ts';
import type { Field } from '../answers/questions.ts';
import type { TypedFault, Typing } from '../answers/read-typed.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import { boxesFor, faultOf, type Entry } from './entry.ts';

/** How a customer is asked: on one sheet by staff, or step by step together. */
export type Way = 'sheet' | 'steps';

/** One customer at the counter. It lives in the page alone, until it is parked, sealed, or sent, sealed. */
export interface Intake extends Entry {
  /** Made by chance: names its fields, so that no browser offers what was typed in another's. */
  key: string;
  /** What staff call it. */
  name: string;
  notes: string;
  way: Way;
  units: 'us' | 'metric';
  /** Faults of fields that were left. */
  faults: ReadonlyMap<string, TypedFault>;
}

/** What is kept of a parked intake, sealed; the boxes are made of the answers again. */
export interface ParkedIntake {
  v: 1;
  name: string;
  notes: string;
  way: Way;
  units: 'us' | 'metric';
  answers: AnswersDocument;
}

export const newIntake = (typing: Typing, { name = '', answers = noAnswers, notes = '', way = 'sheet', units = typing.units }: Partial<ParkedIntake> = {}): Intake => ({
  key: crypto.randomUUID().slice(0, 8), name, notes, way, units, answers, boxes: boxesFor(answers, { ...typing, units }), faults: new Map(),
});

export const toPark = ({ name, notes, way, units, answers }: Intake): ParkedIntake => ({ v: 1, name, notes, way, units, answers });

/** Whether anything would be lost with it. */
export const holdsAnything = ({ name, notes, boxes }: Intake) =>
  name.trim() !== '' || notes.trim() !== '' || Object.values(boxes).some(({ chosen, ticked = [], typed = '' }) => chosen !== undefined || ticked.length > 0 || typed.trim() !== '');

/** A field was left: what is wrong in it is told from now on, until it is right. */
export function withFaultOf(intake: Intake, field: Field, typing: Typing): Intake {
  const faults = new Map(intake.faults);
  const fault = faultOf(field, intake.boxes, typing);
  if (fault) faults.set(field.at, fault);
  else faults.delete(field.at);
  return { ...intake, faults };
}

/** While it is typed on, a fault that was told goes as soon as it is mended. */
export function withFaultsMended(intake: Intake, field: Field, typing: Typing): Intake {
  return intake.faults.has(field.at) ? withFaultOf(intake, field, typing) : intake;
}
