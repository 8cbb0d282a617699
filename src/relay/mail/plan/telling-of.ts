import type { Telling } from '../../../handoff/letter/telling.ts';
import type { MailInput } from '../input.ts';

/** What the letter's own sentences are made from. */
export const tellingOf = ({ shortlist, catalogue, voice, own }: MailInput): Telling => ({ shortlist, catalogue, voice, own });
