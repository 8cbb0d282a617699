/** How long a piece of work may hold the page up [ms]: half a frame, so that a tap is answered in the next. */
const slice = 8;

/** When the page has nothing else to do; at once after what it is doing, where it can't say. */
export const whenIdle = (work: () => void) => ('requestIdleCallback' in window ? requestIdleCallback(work, { timeout: 500 }) : setTimeout(work, 0));

/**
 * Works through something that gives way by itself, a slice at a time, once the page is painted.
 *
 * @param stopped  stops it for good
 */
export function inSlices<T>(work: Generator<undefined, T>, stopped: AbortSignal, done: (result: T) => void) {
  whenIdle(() => {
    const start = performance.now();
    while (!stopped.aborted) {
      const next = work.next();
      if (next.done) {
        done(next.value);
        return;
      }
      if (performance.now() - start > slice) {
        inSlices(work, stopped, done);
        return;
      }
    }
  });
}
