/** Why a question need not be asked: ids, of which each language has the words. */
export const skipReasons = ['one-left', 'same-order', 'met-anyway'] as const;
export type SkipReason = (typeof skipReasons)[number];
