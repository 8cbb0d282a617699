/** Loads the page anew in the place of this one, so that nothing of what it held is left: no state, no entry of the history, no fragment. */
export const loadAnew = (to: Pick<Location, 'replace' | 'pathname'> = location) => to.replace(to.pathname);

/** A page that the browser kept whole and brings back is loaded anew at once. Gives what stops that. */
export function neverBroughtBack(again: () => void): () => void {
  const shown = ({ persisted }: PageTransitionEvent) => { if (persisted) again(); };
  window.addEventListener('pageshow', shown);
  return () => window.removeEventListener('pageshow', shown);
}

/** The one thing a page says to the one that takes its place: that nobody was there. */
const word = 'acre-to-axle-left-alone';

export function leaveWord() {
  try {
    sessionStorage.setItem(word, '1');
  } catch {
    // It is only told; all that matters was done.
  }
}

/** Whether the page before this one said so; it is said once. */
export function wasLeft(): boolean {
  try {
    const said = sessionStorage.getItem(word) !== null;
    sessionStorage.removeItem(word);
    return said;
  } catch {
    return false;
  }
}
