/** Names a request is made of, apart from its schema, so that a page can send one without carrying what reads it. */
export const requestFormat = 'acre-to-axle/request/1';
export const sealedFormat = 'acre-to-axle/sealed/1';

/** What is asked for: the shortlist by mail, or word from the dealer when a unit that does comes in. */
export const requestKinds = ['shortlist', 'notify'] as const;
export type RequestKind = (typeof requestKinds)[number];

/** When a buyer can be called. */
export const goodTimes = ['any', 'morning', 'midday', 'afternoon', 'evening'] as const;
export type GoodTime = (typeof goodTimes)[number];

/** Most signs of what is typed to be called by. */
export const longest = { name: 80, phone: 30, dealer: 64, key: 64 } as const;

/** Where a relay listens, below its address. */
export const paths = { shortlists: '/v1/shortlists', keys: '/v1/keys', ticket: '/v1/ticket', health: '/healthz' } as const;

/** The header that makes handing in the same request twice harmless. */
export const keyHeader = 'Idempotency-Key';
