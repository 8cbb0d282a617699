import { formatNumber, pluralOf } from './formats.ts';
import { factors, inUnit, kindOfUnit, type Kind, type Quantity, type UnitOf } from './quantity.ts';

/** How a reader wants figures: in which units, and in which language's numbers. */
export interface Reader {
  units: 'us' | 'metric';
  locale: string;
  currency: string;
  /** Unit symbols and words in the reader's language; a symbol of ours where one is missing. */
  unitWords: UnitWords;
}

/** A unit's symbol, or its word for one and for several. */
export type UnitWords = Readonly<Record<string, string | { one: string; other: string }>>;

type Preferred = { [K in Kind]?: { us: UnitOf<K>; metric: UnitOf<K>; digits: number } };

const preferred: Preferred = {
  mass: { us: 'lb', metric: 'kg', digits: 0 },
  length: { us: 'in', metric: 'cm', digits: 0 },
  area: { us: 'acre', metric: 'ha', digits: 2 },
  volume: { us: 'yd3', metric: 'm3', digits: 1 },
  density: { us: 'lb/ft3', metric: 'kg/m3', digits: 1 },
  speed: { us: 'mph', metric: 'km/h', digits: 1 },
  power: { us: 'hp', metric: 'kW', digits: 1 },
  force: { us: 'lbf', metric: 'N', digits: 0 },
  flow: { us: 'gpm', metric: 'L/min', digits: 1 },
  time: { us: 'h', metric: 'h', digits: 1 },
  angle: { us: 'deg', metric: 'deg', digits: 1 },
  areaRate: { us: 'acre/h', metric: 'ha/h', digits: 2 },
  powerPerLength: { us: 'hp/ft', metric: 'kW/m', digits: 1 },
  forcePerLength: { us: 'lbf/ft', metric: 'kN/m', digits: 1 },
  fuelPerEnergy: { us: 'gal/(hp·h)', metric: 'L/kWh', digits: 3 },
  pressure: { us: 'psi', metric: 'kPa', digits: 0 },
  acceleration: { us: 'm/s2', metric: 'm/s2', digits: 2 },
  rotation: { us: 'rpm', metric: 'rpm', digits: 0 },
};

/** Below these a smaller unit reads better: a garden isn't told in acres, fuel not by the minute. */
const small: { [K in Kind]?: { below: number; us: UnitOf<K>; metric: UnitOf<K>; digits: number } } = {
  area: { below: 1000, us: 'ft2', metric: 'm2', digits: 0 },
  flow: { below: 3e-5, us: 'gal/h', metric: 'L/h', digits: 2 },
};

/** Longer than this a length reads better in feet, or in metres. */
const longFrom = { us: { at: 96 * factors.length.in, unit: 'ft', digits: 1 }, metric: { at: 3, unit: 'm', digits: 2 } } as const;

const number = (value: number, digits: number, { locale }: Reader) =>
  formatNumber(value, locale, { maximumFractionDigits: digits });

/** The word for a unit, for one of it or for several. */
export function unitWord(unit: string, { unitWords, locale }: Pick<Reader, 'unitWords' | 'locale'>, count = 2): string {
  const word = unitWords[unit] ?? unit;
  if (typeof word === 'string') return word;
  return pluralOf(count, locale) === 'one' ? word.one : word.other;
}

const withUnit = (value: number, digits: number, unit: string, reader: Reader) => {
  const word = unitWord(unit, reader, Number(value.toFixed(digits)));
  return `${number(value, digits, reader)}${word === '' || word.startsWith('°') ? '' : '\u00a0'}${word}`;
};

/** Feet and inches, as a tape measure reads: "8 ft 6 in". */
function feetAndInches(metres: number, reader: Reader): string {
  const inches = Math.round(inUnit('length', metres as Quantity<'length'>, 'in'));
  const feet = Math.floor(inches / 12);
  const left = inches - feet * 12;
  return left === 0 ? withUnit(feet, 0, 'ft', reader) : `${withUnit(feet, 0, 'ft', reader)} ${withUnit(left, 0, 'in', reader)}`;
}

/**
 * An amount in SI, shown in the reader's own units: 362.87 kg is "800 lb" or "363 kg".
 *
 * @param beside  an amount told in the same sentence: both are shown alike
 */
export function showAmount(value: number, siUnit: string, reader: Reader, beside = value): string {
  if (siUnit === 'money' || siUnit === 'dealer-currency') {
    // A price is told to the unit; what it costs by the hour, or a step of a sum, to the cent.
    const digits = siUnit === 'dealer-currency' && Math.abs(value) < 1000 ? 2 : 0;
    return formatNumber(value, reader.locale, { style: 'currency', currency: reader.currency, minimumFractionDigits: digits, maximumFractionDigits: digits });
  }
  if (siUnit === 'annual-rate') {
    // A rate of interest is told to the hundredth of a percent: 5.99 % is not 6 %.
    return formatNumber(value, reader.locale, { style: 'percent', minimumFractionDigits: 2, maximumFractionDigits: 2 });
  }
  if (siUnit === 'ratio') {
    // A small share keeps two digits: 0.0058 is 0.58 %, not 1 %.
    const digits = Math.abs(value) < 0.1 ? { maximumSignificantDigits: 2 } : { maximumFractionDigits: 0 };
    return formatNumber(value, reader.locale, { style: 'percent', ...digits });
  }
  const kind = kindOfUnit(siUnit);
  if (kind === undefined) return withUnit(value, 1, siUnit, reader);
  const long = longFrom[reader.units];
  if (kind === 'length' && Math.max(value, beside) >= long.at) {
    return reader.units === 'us' ? feetAndInches(value, reader) : withUnit(value, long.digits, long.unit, reader);
  }
  const lesser = small[kind];
  const choice = lesser && Math.max(value, beside) < lesser.below ? lesser : preferred[kind];
  if (!choice) return withUnit(value, 2, siUnit, reader);
  const unit = choice[reader.units] as UnitOf<Kind>;
  return withUnit(inUnit(kind, value as Quantity<Kind>, unit), choice.digits, unit, reader);
}

/** An amount as it was typed, in its own unit. */
export const showTyped = ({ value, unit }: { value: number; unit: string }, reader: Reader) => withUnit(value, 2, unit, reader);
