/** What shows that somebody is there. */
const signs = ['pointerdown', 'keydown', 'wheel', 'input'] as const;
/** What a device that slept wakes up with. */
const wakes = ['visibilitychange', 'focus', 'pageshow', 'resume'] as const;

/**
 * Hears of whoever is there, and of a device that woke.
 *
 * @returns what ends it
 */
export function watchPresence(sign: () => void, wake: () => void): () => void {
  for (const each of signs) document.addEventListener(each, sign, { capture: true, passive: true });
  for (const each of wakes) window.addEventListener(each, wake, true);
  return () => {
    for (const each of signs) document.removeEventListener(each, sign, true);
    for (const each of wakes) window.removeEventListener(each, wake, true);
  };
}
