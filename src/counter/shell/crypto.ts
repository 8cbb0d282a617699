/** What Node calls by this name every browser has by itself. */
export const webcrypto = globalThis.crypto;
