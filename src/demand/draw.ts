/** How many numbers 32 bits tell apart. */
const span = 0x1_0000_0000;

/** The next of a fixed sequence of numbers from 0 to 1 (Steele, Lea and Flood 2014, SplitMix, in 32 bits): the same draw each time. */
function sequence(seed: number) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / span;
  };
}

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

  offer(each: T) {
    this.seen += 1;
    if (this.drawn.length < this.most) this.drawn.push(each);
    else {
      const place = Math.floor(this.chance() * this.seen);
      if (place < this.most) this.drawn[place] = each;
    }
  }
}
