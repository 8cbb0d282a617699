import * as z from '../zod.ts';
import { unitsOf, type Kind, type UnitOf } from '../units/quantity.ts';

/** `{ value, unit }` with any unit of the kind; never negative, for nothing we weigh or measure is. */
export const amount = <K extends Kind>(kind: K) =>
  z.strictObject({
    value: z.number().check(z.minimum(0)),
    unit: z.enum(unitsOf(kind) as [UnitOf<K>, ...UnitOf<K>[]]),
  });

/** The same for what a thing measures: more than nothing, for a figure of zero is one that isn't known. */
export const measure = <K extends Kind>(kind: K) =>
  z.strictObject({
    value: z.number().check(z.positive()),
    unit: z.enum(unitsOf(kind) as [UnitOf<K>, ...UnitOf<K>[]]),
  });

/** Money in a currency named by its three letters (ISO 4217). */
export const money = z.strictObject({
  value: z.number().check(z.minimum(0)),
  currency: z.string().check(z.regex(/^[A-Z]{3}$/)),
});

export const share = z.number().check(z.minimum(0), z.maximum(1));
export const year = z.int().check(z.minimum(1900), z.maximum(2200));
export const id = z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/));
