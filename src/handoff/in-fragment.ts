/** Where ours stands in a fragment, perhaps among others: which way of writing, and the signs; a mail program may have broken them over lines. */
export const ours = /(?:^|[#&])a(\d{1,3})=([\w\s-]*)/;
