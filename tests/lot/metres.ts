import type { Quantity } from '../../src/units/quantity.ts';
import { si } from '../support/quantities.ts';

/** A length as it is written, in metres. */
export const metres = (written: string) => si(written) as Quantity<'length'>;
