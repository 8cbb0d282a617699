import { sequence } from '../units/sequence.ts';

/**
 * Draws so many of a stream, each as likely as any other, without knowing how many there will be or keeping more than
 * are drawn. All of them, in their order, where there are no more.
 *
 * @see Vitter 1985, Random sampling with a reservoir (algorithm R)
 */
export class Draw<T> {
  readonly drawn: T[] = [];
  seen = 0;
  private readonly chance: () => number;

  constructor(private readonly most: number, seed = 1) {
    this.chance = sequence(seed);
  }

  /** @param each  made only where it is drawn, be it for a while */
  offer(each: () => T) {
    this.seen += 1;
    if (this.drawn.length < this.most) this.drawn.push(each());
    else {
      const place = Math.floor(this.chance() * this.seen);
      if (place < this.most) this.drawn[place] = each();
    }
  }
}
