import { isRefusal, type Refusal } from '../../src/trade/working.ts';
import type { Quantity } from '../../src/units/quantity.ts';
import type { MoneyInput } from './calls/money-and-operator.ts';
import type { WorkInput } from './calls/work-and-loads.ts';

/** What an input of a worked example may be called. */
export type InputName =
  | 'age' | 'ahead' | 'altitude' | 'amount' | 'area' | 'atPins' | 'attachment' | 'attachmentAhead' | 'back'
  | 'bareFront' | 'behind' | 'by' | 'c1' | 'c2' | 'c3' | 'density' | 'distance' | 'efficiency' | 'free' | 'front'
  | 'height' | 'hoursPerYear' | 'labour' | 'length' | 'link' | 'loadAhead' | 'margin' | 'mass' | 'overlap'
  | 'percent' | 'perStep' | 'perWidth' | 'pivot' | 'rank' | 'ranks' | 'rate' | 'rated' | 'ratedAt' | 'rating'
  | 'rear' | 'rearShare' | 'rearTrack' | 'room' | 'share' | 'speed' | 'step' | 'tractor' | 'trailer' | 'wheelbase'
  | 'width'
  | WorkInput | MoneyInput;
export type Given = Record<InputName, Quantity<never>>;

/** What a formula gives, where it doesn't refuse. */
export const known = <T extends object>(outcome: T | Refusal): T => {
  if (isRefusal(outcome)) throw new Error(outcome.refused);
  return outcome;
};
