import type { Skip } from '../guide/skip.ts';
import type { Visit } from '../guide/next-question.ts';
import { inSlices } from './in-slices.ts';
import type { Ready } from './ready.ts';

/** What tells two visits apart. */
const keyOf = ({ answers, seen }: Visit) => JSON.stringify([answers, seen]);

interface Proof {
  of: string;
  stop: AbortController;
  skips: readonly Skip[] | undefined;
}

/** Proves, while the buyer reads and chooses, which of the next questions need no asking. */
export class Proving {
  private proof: Proof | undefined;

  /** @param prospect  the visit as it will be, should the buyer go on with what is chosen now */
  prove(prospect: Visit | undefined, ready: Ready | undefined) {
    const of = prospect && keyOf(prospect);
    if (of === this.proof?.of) return;
    this.stop();
    if (!ready || !prospect || of === undefined) return;
    const proof: Proof = { of, stop: new AbortController(), skips: undefined };
    this.proof = proof;
    inSlices(ready.reckoner.provingSkips(prospect, ready.inSi), proof.stop.signal, (skips) => { proof.skips = skips; });
  }

  /** What was proven in time; a proof that comes later takes no question away any more. */
  of(visit: Visit): readonly Skip[] {
    return this.proof?.of === keyOf(visit) ? (this.proof.skips ?? []) : [];
  }

  stop() {
    this.proof?.stop.abort();
    this.proof = undefined;
  }
}
