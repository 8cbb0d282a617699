import type { RefusalCode } from '../../../handoff/refusal.ts';
import type { HandoffWords, SaidRefusal } from '../../../handoff/words/words.ts';
import type { CameraTrouble, NoCamera } from '../camera.ts';
import type { NotCarried } from '../not-carried.ts';

/** What is said while a buyer's answers are opened at the counter, to whoever works there; and beside the code he takes along. What is missing fails the type check. */
export interface OpeningWords {
  handoff: HandoffWords;
  heading: string;
  explained: string;
  field: { label: string; hint: string; open: string };
  /** By why, the sign and the group of a typed form it stands in, where it is one. */
  refusals: Readonly<Record<RefusalCode, (said: { sign: string; group: number }) => SaidRefusal>>;
  camera: {
    start: string; starting: string; stop: string; picture: string;
    /** While it looks. */
    hint: string;
    /** Why there is none to start. */
    absent: Readonly<Record<NoCamera, string>>;
    trouble: Readonly<Record<CameraTrouble, string>>;
    /** A code was seen that holds no answers that can be used. */
    seen: Readonly<Record<'other' | 'damaged' | 'newer', string>>;
  };
  /** What no link carries, as a thing to ask for. */
  kept: Readonly<Record<NotCarried, string>>;
  ask(things: string): string;
  /** Beside the code the buyer takes along. */
  takeAlong: { heading: string; scan: string; link: string; typed: string; noLink: string };
}
