/** Loads the page anew in the place of this one, so that nothing of what it held is left: no state, no entry of the history, no fragment. */
export const loadAnew = (to: Pick<Location, 'replace' | 'pathname'> = location) => to.replace(to.pathname);

/** A page that the browser kept whole and brings back is loaded anew at once. Gives what stops that. */
export function neverBroughtBack(again: () => void): () => void {
  const shown = ({ persisted }: PageTransitionEvent) => { if (persisted) again(); };
  window.addEventListener('pageshow', shown);
  return () => window.removeEventListener('pageshow', shown);
}

/** The one thing a page says to the one that takes its place: that the screen is covered, and why. */
const word = 'acre-to-axle-covered';

export type Covered = 'left-alone' | 'by-hand';

/** What storage holds, where a page may have one; a screen that can't be told of is uncovered by loading it anew. */
function trying<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

export const cover = (why: Covered) => trying(() => sessionStorage.setItem(word, why));
export const uncover = () => trying(() => sessionStorage.removeItem(word));

export function coveredBefore(): Covered | undefined {
  const said = trying(() => sessionStorage.getItem(word));
  return said === 'left-alone' || said === 'by-hand' ? said : undefined;
}
