/**
 * How much is read at most. Refused at the limit, with the number, before the work is done.
 * There are more columns than the 60 one would grant an unknown table: written out in full, a machine with
 * three sets of tyres and two loaders takes nearly two hundred, and with five of each thing some five hundred.
 */
export const limits = {
  /** One file. */
  bytes: 20_000_000,
  rows: 100_000,
  columns: 600,
  /** One cell, in UTF-16 code units. */
  cell: 2000,
} as const;
