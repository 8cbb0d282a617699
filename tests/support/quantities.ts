import { kindOfUnit, quantity, type Quantity } from '../../src/units/quantity.ts';

export interface Written {
  value: number;
  /** The unit as written, or `ratio` for a bare number. */
  unit: string;
}

/** @example written('40 ft') // { value: 40, unit: 'ft' } */
export function written(text: string | number): Written {
  if (typeof text === 'number') return { value: text, unit: 'ratio' };
  const [value, unit] = text.split(' ');
  return { value: Number(value), unit: unit! };
}

/** SI amount of what is written as "40 ft"; a bare number stays itself. */
export function si(text: string | number) {
  const { value, unit } = written(text);
  const kind = kindOfUnit(unit);
  if (kind === undefined && unit !== 'ratio') throw new Error(`"${text}" has no unit of ours`);
  return asSi(kind ? quantity(kind, value, unit as never) : value);
}

/** A bare number handed to a formula as an SI amount of whatever kind it asks for. */
export const asSi = (value: number) => value as Quantity<never>;
