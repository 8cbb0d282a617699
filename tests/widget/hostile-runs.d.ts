/** How many hostile catalogues are tried: served by the test runner, from `HOSTILE` where that is set. */
export const runs: number;
