import type { AcreErrorCode } from './events.ts';

/** Why there is nothing to reckon with, or not what should be. The details are for whoever embeds. */
export interface CatalogueTrouble {
  code: AcreErrorCode;
  details: readonly string[];
}

export const isTrouble = (outcome: object): outcome is CatalogueTrouble => 'code' in outcome;
