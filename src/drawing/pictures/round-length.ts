import { factors, inUnit, type Quantity } from '../../units/quantity.ts';
import { showAmount, showTyped, type Reader } from '../../units/show.ts';

/** A length as one says it: whole feet as feet, "4 ft" and not "48 in", and whole metres as metres. */
export function roundLength(metres: number, reader: Reader): string {
  const unit = reader.units === 'us' ? 'ft' : 'm';
  const value = inUnit('length', metres as Quantity<'length'>, unit);
  const whole = Math.round(value);
  return whole > 0 && Math.abs(value - whole) * factors.length[unit] < 1e-6 ? showTyped({ value: whole, unit }, reader) : showAmount(metres, 'm', reader);
}
