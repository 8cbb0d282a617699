/**
 * Amounts, held in the coherent SI unit of their kind. A kind is a type, so kilograms never meet
 * watts; arithmetic on two quantities gives a bare number, and the cast back is where to look twice.
 *
 * Factors are exact by definition: NIST SP 811 (2008), appendix B.8; 1 in = 25.4 mm and
 * 1 lb = 0.45359237 kg from the international yard and pound agreement of 1959.
 */
const inch = 0.0254;
const foot = 0.3048;
const pound = 0.45359237;
const squareFoot = foot * foot;
const cubicFoot = squareFoot * foot;
const cubicYard = 27 * cubicFoot;
const standardGravity = 9.80665;
const gallon = 231 * inch * inch * inch;
const minute = 60;
const hour = 3600;

/** Factor from each unit to the SI unit of its kind; the first unit of a kind is the SI unit. */
export const factors = {
  mass: { kg: 1, lb: pound, t: 1000, ton: 2000 * pound },
  length: { m: 1, mm: 0.001, cm: 0.01, km: 1000, in: inch, ft: foot, yd: 3 * foot, mi: 5280 * foot },
  area: { m2: 1, ha: 10_000, acre: 43_560 * squareFoot, ft2: squareFoot },
  volume: { m3: 1, L: 0.001, gal: gallon, ft3: cubicFoot, yd3: cubicYard },
  density: { 'kg/m3': 1, 'lb/ft3': pound / cubicFoot, 'lb/yd3': pound / cubicYard },
  speed: { 'm/s': 1, 'km/h': 1000 / hour, mph: (5280 * foot) / hour },
  power: { W: 1, kW: 1000, hp: 550 * foot * pound * standardGravity, PS: 75 * standardGravity },
  force: { N: 1, kN: 1000, lbf: pound * standardGravity },
  pressure: { Pa: 1, kPa: 1000, bar: 100_000, psi: (pound * standardGravity) / (inch * inch) },
  flow: { 'm3/s': 1, 'L/min': 0.001 / minute, 'L/h': 0.001 / hour, gpm: gallon / minute, 'gal/h': gallon / hour },
  time: { s: 1, min: minute, h: hour },
  angle: { rad: 1, deg: Math.PI / 180 },
  areaRate: { 'm2/s': 1, 'ha/h': 10_000 / hour, 'acre/h': (43_560 * squareFoot) / hour },
  powerPerLength: {
    'W/m': 1, 'kW/m': 1000, 'hp/ft': (550 * foot * pound * standardGravity) / foot, 'hp/in': (550 * foot * pound * standardGravity) / inch,
  },
  forcePerLength: { 'N/m': 1, 'kN/m': 1000, 'lbf/ft': (pound * standardGravity) / foot },
  fuelPerEnergy: { 'm3/J': 1, 'L/kWh': 0.001 / (1000 * hour), 'gal/(hp·h)': gallon / (550 * foot * pound * standardGravity * hour) },
  rotation: { '1/s': 1, rpm: 1 / minute },
  acceleration: { 'm/s2': 1 },
} as const;

export type Kind = keyof typeof factors;
export type UnitOf<K extends Kind> = keyof (typeof factors)[K] & string;
export type Unit = { [K in Kind]: UnitOf<K> }[Kind];
export type KindOfUnit<U extends string> = { [K in Kind]: U extends UnitOf<K> ? K : never }[Kind];

declare const kind: unique symbol;
/** A number of SI units of kind K. */
export type Quantity<K extends Kind> = number & { readonly [kind]: K };

/** A quantity as the documents carry it: a value and the unit it was given in. */
export interface Amount<K extends Kind = Kind> {
  value: number;
  unit: UnitOf<K>;
}

export const unitsOf = <K extends Kind>(k: K) => Object.keys(factors[k]) as UnitOf<K>[];
export const siUnitOf = (k: Kind): Unit => unitsOf(k)[0] as unknown as Unit;
export const kinds = Object.keys(factors) as Kind[];

const kindByUnit = new Map<string, Kind>(kinds.flatMap((k) => unitsOf(k).map((u) => [u, k] as const)));
/** The kind a unit measures, or undefined where the word is no unit of ours. */
export const kindOfUnit = (unit: string): Kind | undefined => kindByUnit.get(unit);

const factorOf = (k: Kind, unit: string) => (factors[k] as Record<string, number>)[unit]!;

/** @example quantity('mass', 800, 'lb') // 362.873896 (kg) */
export const quantity = <K extends Kind>(k: K, value: number, unit: UnitOf<K>) =>
  (value * factorOf(k, unit)) as Quantity<K>;

/** @example inUnit('mass', 362.873896 as Quantity<'mass'>, 'lb') // 800 */
export const inUnit = <K extends Kind>(k: K, amount: Quantity<K>, unit: UnitOf<K>) => amount / factorOf(k, unit);

/** An amount of a document in SI. */
export const toSi = <U extends Unit>({ value, unit }: { value: number; unit: U }) =>
  (value * factorOf(kindByUnit.get(unit)!, unit)) as Quantity<KindOfUnit<U>>;

/**
 * What a document's amounts become in the core: every `{ value, unit }`, however deep, is a Quantity
 * of its kind; all else stays as it is.
 */
export type InSi<T> = T extends { value: number; unit: infer U extends string }
  ? [KindOfUnit<U>] extends [never]
    ? T
    : Quantity<KindOfUnit<U>>
  : T extends readonly (infer E)[]
    ? InSi<E>[]
    : T extends object
      ? { [P in keyof T]: InSi<T[P]> }
      : T;

/** Turns every amount inside a checked document into SI. */
export function inSi<T>(document: T): InSi<T> {
  if (Array.isArray(document)) return document.map((entry) => inSi(entry)) as InSi<T>;
  if (document === null || typeof document !== 'object') return document as InSi<T>;
  const { value, unit } = document as { value?: unknown; unit?: unknown };
  if (typeof value === 'number' && typeof unit === 'string' && kindByUnit.has(unit)) {
    return toSi({ value, unit: unit as Unit }) as unknown as InSi<T>;
  }
  return Object.fromEntries(Object.entries(document).map(([key, entry]) => [key, inSi(entry)])) as InSi<T>;
}
