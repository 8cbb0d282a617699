import { expect, test } from 'vitest';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { feet, hp, lineUp, withMachine } from '../support/catalogue-for-tests.ts';
import { saying, standing } from '../support/reckon.ts';

const cutting = (more: { altitude?: ReturnType<typeof feet>; rough?: { value: number; unit: 'acre' } }) =>
  saying({ tasks: [{ task: 'cut-rough', must: true }], land: { slope: 'flat', overhead: 'open', ...more } });

/** 60 in at 5 hp a foot want 25 hp; a naturally aspirated engine loses about 3 % each 1,000 ft (common practice, no source). */
const withPower = (power: number, aspiration: 'natural' | 'turbo' | undefined) =>
  withMachine(lineUp(), 'mid-economy', ({ engine }) => ({ engine: { ...engine, power: hp(power + 5), ptoPower: hp(power), aspiration } as typeof engine }));
const stands = (power: number, aspiration: 'natural' | 'turbo' | undefined, altitude: number) =>
  standing(withPower(power, aspiration), cutting({ altitude: feet(altitude) })).includes('mid-economy');

test.each([
  ['natural', 0, true], ['natural', 3000, true], ['natural', 6000, false], ['turbo', 6000, true], [undefined, 6000, false],
] as const)('an engine that breathes %s at %i ft turns the cutter: %s', (aspiration, altitude, well) => {
  expect(stands(28, aspiration, altitude)).toBe(well);
});

test('of rough ground whose size is known, the hours to cut it once are told with their working', () => {
  const [first] = shortlist(lineUp(), cutting({ rough: { value: 10, unit: 'acre' } })).shortlist;
  const told = first!.reasons.find(({ id }) => id === 'rotary-cutter.hours.met')!;
  // 5 ft less 8 % at 3 mph and 0.8: 1.338 acres an hour by AEN-73; 10 acres and a tenth more for labour.
  const width = told.working![0]!.inputs.width!.value / 0.3048;
  expect(told.figures.has!.value / 3600).toBeCloseTo((10 / ((3 * width * 0.92 * 0.8) / 8.25)) * 1.1, 6);
  expect(shortlist(lineUp(), cutting({})).shortlist[0]!.reasons.map(({ id }) => id)).not.toContain('rotary-cutter.hours.met');
});
