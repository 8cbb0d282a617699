/** Counted in these, sums are of whole numbers and so exact, in whatever order they are added. */
export const millionths = 1e6;

/** Parts of one, to be shared in whole numbers by as many as sixteen: each number up to that divides it. */
export const sharedParts = 720_720;
