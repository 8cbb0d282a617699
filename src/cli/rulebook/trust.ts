import type { Source } from '../../trade/record.ts';

/** How far a record can be trusted, from its source alone: the best first. */
export const trusts = ['source', 'derived', 'second-hand', 'memory', 'common-practice'] as const;
export type Trust = (typeof trusts)[number];

export const trustOf = (source: Source): Trust => (source.basis === 'published' ? source.read : source.basis);

/** What a practitioner should look at first. */
export const isWeak = (trust: Trust) => trust !== 'source' && trust !== 'derived';
