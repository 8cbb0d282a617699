import type { Verdict } from './verdict.ts';

/** A mail ready to go out, to one person. */
export interface OutgoingMail {
  envelope: { from: string; to: string };
  /** As RFC 5322 has it. */
  raw: Uint8Array;
  /** The same over every attempt, and fit for a file's name. */
  name: string;
}

/** A way out. */
export interface Transport {
  /** Never throws. */
  send(mail: OutgoingMail): Promise<Verdict>;
  /** Breaks off what is on its way: each then says how far it had come. */
  abort(): void;
  close(): Promise<void>;
}
