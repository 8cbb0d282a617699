import { expect, test } from 'vitest';
import { factors, kinds, type Kind } from '../../src/units/quantity.ts';

/** NIST SP 811 (2008), appendix B.8, from memory, seven digits as it prints them; what it lacks follows by one division. */
const printed: Record<Kind, Record<string, number>> = {
  mass: { kg: 1, lb: 0.4535924, t: 1000, ton: 907.1847 },
  length: { m: 1, mm: 0.001, cm: 0.01, km: 1000, in: 0.0254, ft: 0.3048, yd: 0.9144, mi: 1609.344 },
  area: { m2: 1, ha: 10_000, acre: 4046.856, ft2: 0.09290304 },
  volume: { m3: 1, L: 0.001, gal: 0.003785412, ft3: 0.02831685, yd3: 0.7645549 },
  density: { 'kg/m3': 1, 'lb/ft3': 16.01846, 'lb/yd3': 0.5932764 },
  speed: { 'm/s': 1, 'km/h': 0.2777778, mph: 0.44704 },
  power: { W: 1, kW: 1000, hp: 745.6999, PS: 735.4988 },
  force: { N: 1, kN: 1000, lbf: 4.448222 },
  pressure: { Pa: 1, kPa: 1000, bar: 100_000, psi: 6894.757 },
  flow: { 'm3/s': 1, 'L/min': 1.666667e-5, 'L/h': 2.777778e-7, gpm: 6.30902e-5, 'gal/h': 1.051503e-6 },
  time: { s: 1, min: 60, h: 3600 },
  angle: { rad: 1, deg: 0.01745329 },
  areaRate: { 'm2/s': 1, 'ha/h': 2.777778, 'acre/h': 1.124127 },
  powerPerLength: { 'W/m': 1, 'kW/m': 1000, 'hp/ft': 2446.522, 'hp/in': 29_358.26 },
  forcePerLength: { 'N/m': 1, 'kN/m': 1000, 'lbf/ft': 14.5939 },
  fuelPerEnergy: { 'm3/J': 1, 'L/kWh': 2.777778e-10, 'gal/(hp·h)': 1.410089e-9 },
  rotation: { '1/s': 1, rpm: 0.01666667 },
  acceleration: { 'm/s2': 1 },
};

const off = (kind: Kind, unit: string, factor: number) => Math.abs((factors[kind] as Record<string, number>)[unit]! / factor - 1);
const all = kinds.flatMap((kind) => Object.entries(printed[kind]).map(([unit, factor]) => [unit, factor, kind] as const));

test.each(all)('1 %s is %d of the SI unit of its kind, %s', (unit, factor, kind) => expect(off(kind, unit, factor)).toBeLessThan(5e-7));

test('every unit has its printed factor', () => {
  expect(Object.fromEntries(kinds.map((kind) => [kind, Object.keys(factors[kind])]))).toEqual(Object.fromEntries(kinds.map((kind) => [kind, Object.keys(printed[kind])])));
});

test('control: a factor off by a millionth would be noticed', () => expect(off('mass', 'lb', 0.4535924 * (1 + 1e-6))).toBeGreaterThan(5e-7));
