/** What stands in the boxes of a step before Continue: text, ticks and choices, as the buyer left them. */
import { answerAt } from '../answers/at.ts';
import type { Field, Question } from '../answers/questions.ts';
import { readTyped, type TypedFault, type Typing } from '../answers/read-typed.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { Amount } from '../units/quantity.ts';

export interface Box {
  /** Chosen option, or undefined. */
  chosen?: string | undefined;
  /** Ticked options, or the order of the priorities. */
  ticked?: readonly string[];
  /** Text typed. */
  typed?: string;
}

export type Boxes = Readonly<Record<string, Box>>;

const isAmount = (value: unknown): value is Amount => typeof value === 'object' && value !== null && 'unit' in value;
const plain = (value: number, decimalMark: string) => String(value).replace('.', decimalMark);

function boxOf(field: Field, value: unknown, { decimalMark }: Typing): Box {
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
      return isAmount(value)
        ? { chosen: field.opens, typed: `${plain(value.value, decimalMark)} ${value.unit}` }
        : { chosen: String(value) };
    case 'money':
      return { typed: plain((value as { value: number }).value, decimalMark) };
    case 'number':
      return { typed: plain(value as number, decimalMark) };
    default:
      return isAmount(value) ? { typed: `${plain(value.value, decimalMark)} ${value.unit}` } : {};
  }
}

/** The boxes of a question as its answers fill them. */
export const boxesOf = ({ fields }: Question, answers: AnswersDocument, typing: Typing): Boxes =>
  Object.fromEntries(fields.map((field) => [field.at, boxOf(field, answerAt(answers, field.at), typing)]));

/** A fault of a step: of one field, or that nothing at all was answered. */
export type StepFault = TypedFault | { at: string; fault: 'nothing-chosen' };

function readBox(field: Field, box: Box, typing: Typing): { value: unknown } | { fault: TypedFault } {
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

/**
 * Reads the boxes of a step on Continue: all faults at once, or the values by path. A step where nothing
 * was answered is a fault too; "not sure" has a button of its own.
 */
export function readBoxes({ fields, id }: Question, boxes: Boxes, typing: Typing): { values: Record<string, unknown> } | { faults: StepFault[] } {
  const read = fields.map((field) => ({ at: field.at, ...readBox(field, boxes[field.at] ?? {}, typing) }));
  const faults = read.flatMap((each) => ('fault' in each ? [each.fault] : []));
  if (faults.length > 0) return { faults };
  const values = Object.fromEntries(read.map((each) => [each.at, 'value' in each ? each.value : undefined]));
  const empty = Object.values(values).every((value) => value === undefined) || (id === 'tasks' && (values.tasks as string[]).length === 0);
  return empty ? { faults: [{ at: fields[0]!.at, fault: 'nothing-chosen' }] } : { values };
}
