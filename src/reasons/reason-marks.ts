/** A sign before each kind of reason, so that none is told by its colour or its place alone. */
export const reasonMarks = { for: '+', against: '–', unknown: '?', caution: '!' } as const;
