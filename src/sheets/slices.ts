/** How far a long piece of work is: rows, or characters where rows aren't known yet. */
export interface Progress {
  done: number;
  of: number;
}

/** Work that gives way by itself every so often, so that a page stays responsive and a terminal can tell how far it is. */
export type Slices<T> = Generator<Progress, T>;

/** Does it in one go, where nobody waits. */
export function allAtOnce<T>(work: Slices<T>, told: (progress: Progress) => void = () => undefined): T {
  for (;;) {
    const next = work.next();
    if (next.done) return next.value;
    told(next.value);
  }
}
