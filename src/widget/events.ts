import type { QuestionId } from '../answers/questions.ts';

/**
 * What may keep the wizard from working as it was told to; public from its first release. What a buyer reads
 * then and what to do about it stands in the README's table.
 */
export type AcreErrorCode =
  | 'catalogue.unnamed' | 'catalogue.missing' | 'catalogue.slow' | 'catalogue.wrong-type' | 'catalogue.not-json' | 'catalogue.too-large'
  | 'catalogue.newer' | 'catalogue.faulty' | 'catalogue.empty' | 'catalogue.mended' | 'catalogue.no-stock' | 'catalogue.stale' | 'catalogue.kept'
  | 'script.missing' | 'language.missing' | 'answers.faulty';

/** Events of `<acre-to-axle>`: only for what the buyer did, and none with anything personal in it. */
export interface AcreEventDetails {
  /** A question was answered, or left unsure. */
  'acre-answered': { question: QuestionId; unsure: boolean };
  /** The result was shown, with the machines that stand, best first. */
  'acre-result-shown': { machines: readonly string[]; toAsk: readonly string[] };
  /** Answers or shortlist were taken along, and how. */
  'acre-handed-on': { how: 'link-copied' | 'typed-copied' | 'shared' | 'mail-saved' | 'mail-opened' };
  /** A link with answers was opened: they were taken over, or why not. */
  'acre-opened': { outcome: 'taken-over' | 'nothing' | 'not-ours' | 'too-long' | 'sign' | 'damaged' | 'newer' | 'not-understood' };
  /** The form by which a shortlist is mailed, or word of one asked for, was sent off by the buyer; a page that calls `preventDefault` keeps it from being sent. */
  'acre-before-submit': { kind: 'shortlist' | 'notify' };
  /** The relay took it. */
  'acre-submitted': { kind: 'shortlist' | 'notify' };
  /** Something keeps the wizard from working as it was told to; the code is stable. */
  'acre-error': { code: AcreErrorCode };
}

export type AcreEvents = { [E in keyof AcreEventDetails]: CustomEvent<AcreEventDetails[E]> };

declare global {
  // Events bubble out of the element, so whatever is around it may listen too.
  interface GlobalEventHandlersEventMap extends AcreEvents {}
}

/** Events leave the element once and reach any listener above it. */
export const acreEvent = <E extends keyof AcreEventDetails>(type: E, detail: AcreEventDetails[E], cancelable = false) =>
  new CustomEvent(type, { detail, bubbles: true, composed: true, cancelable });
