import type { TaskId } from '../answers/schema.ts';
import type { Backhoe, Cab, Deck, Implement, Loader } from '../catalogue/catalogue.ts';
import { byCodeUnit } from '../units/compare.ts';
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
  /** The implement each task is done with: on the hitch, or on the loader to hold its load. */
  tools?: Readonly<Partial<Record<TaskId, Tool>>>;
  /** Ballast bought for it: it travels along [kg]. */
  ballast?: { rear: number; front: number };
  /** Ids of wishes this build goes without, though they could be met. */
  leftOut?: readonly string[];
  /** Wishes that nothing there is to buy would meet, by id, with what came nearest: nothing is bought for them. */
  unmet?: Readonly<Record<string, Verdict>>;
}

/** The ids of what was chosen, to order builds that are alike in all else: never by their place in a file. */
export const keyOf = ({ loader, mower, tools = {}, cab }: Partial<Build>) =>
  [
    loader?.part.id, mower?.kind === 'belly' ? mower.deck.part.id : mower?.mower.implement.id,
    ...Object.entries(tools).sort(([a], [b]) => byCodeUnit(a, b)).map(([, tool]) => tool.implement.id), cab?.part.id,
  ].join(' ');

/** Whether a tool goes on the loader and not behind. */
export const isHolder = ({ implement: { kind } }: Tool) => kind === 'pallet-forks' || kind === 'bale-spear' || kind === 'grapple';

/** What hangs behind for a task: an implement on the hitch, or the mower there. */
export function hungFor(task: TaskId, { mower, tools }: Build): Tool | undefined {
  if (task === 'mow-lawn') return mower?.kind === 'rear' ? mower.mower : undefined;
  const tool = tools?.[task];
  return tool && !isHolder(tool) ? tool : undefined;
}

/** What is chosen in one place, or in several. */
export type Option = Partial<Build>;

/** Two choices of one build, with what each leaves out or can't meet. */
export const joined = <B extends Option>(build: B, option: Option): B => {
  const leftOut = [...(build.leftOut ?? []), ...(option.leftOut ?? [])];
  const unmet = { ...build.unmet, ...option.unmet };
  const tools = { ...build.tools, ...option.tools };
  return { ...build, ...option, ...(Object.keys(tools).length > 0 && { tools }), ...(leftOut.length > 0 && { leftOut }), ...(Object.keys(unmet).length > 0 && { unmet }) };
};
