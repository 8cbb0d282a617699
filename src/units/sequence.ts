/** How many numbers 32 bits tell apart. */
const span = 0x1_0000_0000;

/** The next of a fixed sequence of numbers from 0 to 1 (Steele, Lea and Flood 2014, SplitMix, in 32 bits): the same draw each time. */
export function sequence(seed: number) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / span;
  };
}
