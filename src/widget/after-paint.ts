/** Longest wait for a frame [ms]: a page in the background draws none. */
const longest = 200;

/**
 * Resolves once the frame that is due has been drawn, so that what is on the page is seen before more is done.
 * A task put off in a frame runs after that frame.
 */
export const afterPaint = () => new Promise<void>((painted) => {
  requestAnimationFrame(() => setTimeout(painted, 0));
  setTimeout(painted, longest);
});
