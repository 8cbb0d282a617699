/** What stands in the boxes of a step before Continue: text, ticks and choices, as the buyer left them. */
import { answerAt } from '../answers/at.ts';
import type { Field, Question } from '../answers/questions.ts';
import { readTyped, type TypedFault, type Typing, type Value } from '../answers/read-typed.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { Amount } from '../units/quantity.ts';

/** Chosen where the buyer says that he isn't sure; no option has this name. */
export const notSure = 'not-sure';

export interface Box {
  /** Chosen option, {@link notSure}, or undefined. */
  chosen?: string | undefined;
  /** Ticked options, or the order of the priorities. */
  ticked?: readonly string[];
  /** Text typed. */
  typed?: string;
}

export type Boxes = Readonly<Record<string, Box>>;

/** Whether one of several options is chosen: "not sure" is then the last of them. */
export const hasOptions = ({ control }: Field) => control === 'choice' || control === 'yes-no' || control === 'choice-or-quantity';

const isAmount = (value: unknown): value is Amount => typeof value === 'object' && value !== null && 'unit' in value;
/** A number that is read one way only: three decimals could be taken for thousands. */
const plain = (value: number, decimalMark: string) => String(value).replace(/\.(\d+)$/, (_, decimals: string) => `${decimalMark}${decimals.length === 3 ? `${decimals}0` : decimals}`);

/** What is typed for a value, so that it is read as that and as nothing else. */
export function typedFor(value: Value, { decimalMark }: Typing): string {
  if (typeof value === 'number') return plain(value, decimalMark);
  return 'unit' in value ? `${plain(value.value, decimalMark)} ${value.unit}` : plain(value.value, decimalMark);
}

function boxOf(field: Field, value: unknown, typing: Typing): Box {
  if (value === undefined) return {};
  switch (field.control) {
    case 'choice':
      return { chosen: String(value) };
    case 'yes-no':
      return { chosen: value ? 'yes' : 'no' };
    case 'several':
    case 'order':
      return { ticked: value as string[] };
    case 'choice-or-quantity':
      return isAmount(value) ? { chosen: field.opens, typed: typedFor(value, typing) } : { chosen: String(value) };
    case 'quantity':
      return isAmount(value) ? { typed: typedFor(value, typing) } : {};
    default:
      return { typed: typedFor(value as Value, typing) };
  }
}

/** The boxes of a question as its answers fill them. */
export const boxesOf = ({ id, fields }: Question, answers: AnswersDocument, typing: Typing): Boxes =>
  Object.fromEntries(fields.map((field) => [
    field.at,
    answers.unsure?.includes(id) && hasOptions(field) ? { chosen: notSure } : boxOf(field, answerAt(answers, field.at), typing),
  ]));

/** A fault of a step: of one field, or that nothing at all was answered. */
export type StepFault = TypedFault | { at: string; fault: 'nothing-chosen' };

function readBox(field: Field, box: Box, typing: Typing): { value: unknown } | { fault: TypedFault } {
  if (box.chosen === notSure) return { value: undefined };
  switch (field.control) {
    case 'choice':
      return { value: box.chosen };
    case 'yes-no':
      return { value: box.chosen === undefined ? undefined : box.chosen === 'yes' };
    case 'several':
      return { value: box.ticked ?? [] };
    case 'order': {
      const order = [...new Set((box.ticked ?? []).filter((each) => each !== ''))];
      return { value: order.length > 0 ? order : undefined };
    }
    case 'choice-or-quantity': {
      if (box.chosen !== field.opens) return { value: box.chosen };
      const read = readTyped(field, box.typed ?? '', typing);
      if ('fault' in read || read.value !== undefined) return read;
      return field.amountWanted ? { fault: { at: field.at, fault: 'amount-wanted', unit: field[typing.units] } } : { value: field.opens };
    }
    default:
      return readTyped(field, box.typed ?? '', typing);
  }
}

export type Reading = { values: Record<string, unknown> } | { faults: StepFault[] } | 'unsure';

/**
 * Reads the boxes of a step on Continue: all faults at once, the values by path, or that the buyer isn't sure.
 * A step where nothing was answered, not even that, is a fault too.
 */
export function readBoxes({ fields, id }: Question, boxes: Boxes, typing: Typing): Reading {
  const read = fields.map((field) => ({ at: field.at, ...readBox(field, boxes[field.at] ?? {}, typing) }));
  const faults = read.flatMap((each) => ('fault' in each ? [each.fault] : []));
  if (faults.length > 0) return { faults };
  const values = Object.fromEntries(read.map((each) => [each.at, 'value' in each ? each.value : undefined]));
  const empty = Object.values(values).every((value) => value === undefined) || (id === 'tasks' && (values.tasks as string[]).length === 0);
  if (!empty) return { values };
  return Object.values(boxes).some(({ chosen }) => chosen === notSure) ? 'unsure' : { faults: [{ at: fields[0]!.at, fault: 'nothing-chosen' }] };
}
