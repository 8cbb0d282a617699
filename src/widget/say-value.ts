import type { Value } from '../answers/read-typed.ts';
import { formatNumber } from '../units/formats.ts';
import { showAmount, showTyped, type Reader } from '../units/show.ts';

/** A value of an answer as its reader writes it, in the unit it was typed in. */
export function sayValue(value: Value, reader: Reader): string {
  if (typeof value === 'number') return formatNumber(value, reader.locale);
  return 'currency' in value ? showAmount(value.value, 'money', reader) : showTyped(value, reader);
}
