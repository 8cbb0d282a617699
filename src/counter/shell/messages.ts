/** Said by a page to a version that waits: nobody is at work, take over. */
export const takeOver = 'take-over';
