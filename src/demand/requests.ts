import type { Counted } from './counted.ts';
import type { Outcome } from './outcome.ts';

/** Answers that were given, as text, and by how many in the same words. */
export interface Asked {
  text: string;
  buyers: number;
}

/** What became of all requests there were. */
export interface Gathered {
  counted: Counted;
  /** Requests there were, of which those counted may be a part drawn by lot. */
  seen: number;
  /** Of those looked at, what was no answers document. */
  unreadable: number;
  /** Whether they were made up for show. */
  isInvented: boolean;
}

/** Requests where they lie, and what counts them there. */
export interface Requests<Each extends Asked = Asked> {
  /** Those to judge, in parts that memory holds; each part is taken before the next is asked for. */
  parts(): AsyncIterable<readonly Each[]>;
  /** Takes what a part came to, in its order; undefined where it was no answers document. */
  take(part: readonly Each[], outcomes: readonly (Outcome | undefined)[]): Promise<void> | void;
  /** @param toBring  machines to bring in to name at the most */
  gathered(toBring: number): Promise<Gathered> | Gathered;
  /** Leaves nothing behind. */
  close(): Promise<void> | void;
}

/** Requests can't be had as things are. The message is one line for whoever asked for them; told by its name, for it may come from another file. */
export class RequestsUnreadable extends Error {
  override readonly name = 'RequestsUnreadable';
}

/** How many different answers make a part, at the most. */
export const partSize = 20_000;
