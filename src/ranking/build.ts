import type { Backhoe, Cab, Deck, Implement, Loader } from '../catalogue/catalogue.ts';
import type { Candidate, Have } from './candidate.ts';
import type { Verdict } from './verdict.ts';

export interface Fitted<T> {
  part: T;
  have: Exclude<Have, 'never'>;
}

/** How the lawn is mown: by a deck under the belly on a mid-PTO, or by a finish mower on the hitch. */
export type Mower =
  | { kind: 'belly'; deck: Fitted<Deck>; midPto: Exclude<Have, 'never'> }
  | { kind: 'rear'; mower: Tool };

/** An implement the buyer has, or would buy from the dealer. */
export interface Tool {
  implement: Partial<Implement>;
  owned: boolean;
}

/** One way to make a candidate serve: what is chosen where there is a choice. */
export interface Build extends Candidate {
  loader?: Fitted<Loader>;
  mower?: Mower;
  backhoe?: Fitted<Backhoe>;
  cab?: Fitted<Cab>;
  cutter?: Tool;
  forks?: Tool;
  spear?: Tool;
  /** Ids of wishes this build goes without, though they could be met. */
  leftOut?: readonly string[];
  /** Wishes that nothing there is to buy would meet, by id, with what came nearest: nothing is bought for them. */
  unmet?: Readonly<Record<string, Verdict>>;
}

/** The ids of what was chosen, to order builds that are alike in all else: never by their place in a file. */
export const keyOf = ({ loader, mower, cutter, forks, spear, cab }: Partial<Build>) =>
  [
    loader?.part.id, mower?.kind === 'belly' ? mower.deck.part.id : mower?.mower.implement.id,
    cutter?.implement.id, forks?.implement.id, spear?.implement.id, cab?.part.id,
  ].join(' ');
