import type { HandoffWords, SaidRefusal } from './words/words.ts';

/** Why nothing was taken over of what was pasted, scanned or typed. */
export type Refusal =
  | { code: 'nothing' }
  /** It is something else: another page's address, a text. */
  | { code: 'not-ours' }
  | { code: 'too-long' }
  /** A sign that no typed form has, and in which group of it, counted from 1. */
  | { code: 'sign'; sign: string; group: number }
  /** The check doesn't agree: a sign is wrong, missing or one too many. */
  | { code: 'damaged' }
  /** Made by a later version than this. */
  | { code: 'newer' }
  /** The check agrees, yet it isn't what a buyer could have said. */
  | { code: 'not-understood' };

export type RefusalCode = Refusal['code'];

/** A refusal in words: what happened, why, and what to do. */
export const sayRefusal = (refusal: Refusal, { refusals }: Pick<HandoffWords, 'refusals'>): SaidRefusal =>
  refusals[refusal.code](refusal.code === 'sign' ? refusal : { sign: '', group: 0 });
