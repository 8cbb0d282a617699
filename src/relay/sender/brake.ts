import { hour, minute } from '../clock.ts';

/** Failures one after the other, of one dealer and in all, after which nothing more is tried for a while. */
const [mostOfDealer, mostInAll] = [20, 50];
/** Refusals for the sake of policy one after the other, after which it isn't the recipients. */
const mostByPolicy = 3;
/** Of a dealer's mails within an hour, how many may go to nobody, where there are enough to tell. */
const [mostToNobody, enoughToTell] = [0.05, 40];
/** How long nothing goes out, longer each time it was in vain [ms]. */
const [shortestPause, longestPause] = [minute, 5 * minute];
const dealerPause = 30 * minute;

const failed = 'failures';

type Ended = 'well' | 'failed' | 'nobody';

interface OfDealer { failures: number; until: number; hour: number; ended: number; nobody: number }

/** Holds mail back where going on would only do harm. By a clock that never goes back [ms]. */
export class Brake {
  readonly #onPause: (what: 'all' | 'dealer', reason: string, dealer?: string) => void;
  readonly #dealers = new Map<string, OfDealer>();
  #failures = 0;
  #byPolicy = 0;
  #until = -Infinity;
  #pause = shortestPause;
  /** Why nothing went out, until the next mail, sent to see how it goes, has shown that it does. */
  #trying: string | undefined;

  constructor(onPause: (what: 'all' | 'dealer', reason: string, dealer?: string) => void) {
    this.#onPause = onPause;
  }

  #pauseAll(now: number, reason: string): void {
    // What was on its way when it was pulled says the same again.
    if (now < this.#until) return;
    this.#until = now + this.#pause;
    this.#pause = Math.min(longestPause, this.#pause * 2);
    this.#trying = reason;
    this.#onPause('all', reason);
  }

  /** The way out is closed: nothing is tried until somebody had time to look. */
  closed(now: number, reason: string): void {
    this.#pauseAll(now, reason);
  }

  /** @returns whether it is the third in a row, so that it is a matter of the way out */
  byPolicy(): boolean {
    this.#byPolicy += 1;
    return this.#byPolicy >= mostByPolicy;
  }

  ended(now: number, dealer: string, how: Ended): void {
    const of = this.#dealers.get(dealer) ?? { failures: 0, until: -Infinity, hour: now, ended: 0, nobody: 0 };
    this.#dealers.set(dealer, of);
    if (now - of.hour >= hour) Object.assign(of, { hour: now, ended: 0, nobody: 0 });
    of.ended += 1;
    if (how === 'nobody') of.nobody += 1;
    // Whoever answers is reached, whatever he says.
    if (how === 'well' || (this.#trying !== undefined && this.#trying !== failed)) {
      this.#failures = 0;
      this.#pause = shortestPause;
      this.#trying = undefined;
    }
    if (how === 'well') {
      of.failures = this.#byPolicy = 0;
    } else {
      this.#failures += 1;
      of.failures += 1;
    }
    if (now >= of.until && (of.failures >= mostOfDealer || (of.ended >= enoughToTell && of.nobody / of.ended > mostToNobody))) {
      of.until = now + dealerPause;
      Object.assign(of, { failures: mostOfDealer - 1, ended: 0, nobody: 0 });
      this.#onPause('dealer', failed, dealer);
    }
    if (this.#failures >= mostInAll || this.#trying !== undefined) this.#pauseAll(now, failed);
  }

  /** Nobody was reached: no matter of the dealer's. */
  unreached(now: number): void {
    this.#failures += 1;
    if (this.#failures >= mostInAll || this.#trying !== undefined) this.#pauseAll(now, 'not reached');
  }

  /** How long nothing may go out [ms], and how much at once then. */
  all(now: number): { wait: number; most: number } {
    return { wait: Math.max(0, this.#until - now), most: this.#trying === undefined ? Infinity : 1 };
  }

  /** Dealers for whom nothing goes out now. */
  dealers(now: number): string[] {
    return [...this.#dealers].filter(([, { until }]) => now < until).map(([dealer]) => dealer);
  }
}
