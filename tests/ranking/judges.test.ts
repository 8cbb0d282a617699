/** Sums that decide a gate, each told by a load or a limit just on either side of it. */
import { expect, test } from 'vitest';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { inches, lb, lineUp, soundUnit, usd, withMachine } from '../support/catalogue-for-tests.ts';
import { because, mustDo, mustHave, out, saying, standing, toAsk, unitOf } from '../support/reckon.ts';

/** 1,300 lb at 24 in fall to 1,300 × (0.7 + 0.61) / (0.7 + 1.016) = 992 lb at 40 in. */
test.each([[24, 1290, true], [40, 980, true], [40, 1010, false], [10, 1290, true], [10, 1400, false]])(
  'at %i in behind the ball ends the economy mid lifts %i lb: %s', (distance, weight, lifts) => {
    const carried = mustDo({ task: 'carry-implement', weight: lb(weight), distance: inches(distance) });
    expect(standing(lineUp(), carried).includes('mid-economy')).toBe(lifts);
  },
);

const bale = mustDo({ task: 'lift-bales', weight: lb(800) });

test('ballast that the hitch can’t lift rules out the load that asks for it', () => {
  expect(standing(lineUp(), bale), 'control').toContain('mid-deluxe');
  const weak = withMachine(lineUp(), 'mid-deluxe', () => ({ hitch: { category: '1', lift610: lb(120) } }));
  expect(out(weak, bale)).toContain('mid-deluxe');
  expect(because(shortlist(weak, bale), 'mid-deluxe')).toEqual(['lift-bales.rear-axle']);
});

test('ballast beyond what the machine may weigh rules out too', () => {
  const light = withMachine(lineUp(), 'mid-deluxe', () => ({ grossMass: lb(4500) }));
  expect(because(shortlist(light, bale), 'mid-deluxe')).toEqual(['work.gross-mass']);
});

test('a front axle that may not carry the load rules it out, where its limit is published', () => {
  const weak = withMachine(lineUp(), 'mid-deluxe', () => ({ frontAxleLimit: lb(1500) }));
  const strong = withMachine(lineUp(), 'mid-deluxe', () => ({ frontAxleLimit: lb(6000) }));
  expect(standing(strong, bale), 'control').toContain('mid-deluxe');
  expect(standing(weak, bale)).not.toContain('mid-deluxe');
});

test('under a low door a ROPS nobody looked at may fold or not: to be asked about', () => {
  // 95 in standing and 77 in folded, and 6 in above it.
  const under = (door: number, kind: 'folding' | 'fixed' | 'unknown') =>
    unitOf(soundUnit('the-unit', 'mid-deluxe', { rops: { kind, certified: true } }), saying({ storage: { kind: 'shed', doorHeight: inches(door) } })).verdict;
  expect([under(90, 'folding'), under(90, 'fixed'), under(80, 'folding')]).toEqual(['stands', 'ruled-out', 'ruled-out']);
  expect(under(90, 'unknown')).toBe('ask');
});

test('the labour of fitting is in the price', () => {
  // 18,000; a deck of 60 in for 2,700 and its 2 hours; a mid-PTO for 1,250 and its 4 hours; 100 an hour.
  const unit = soundUnit('the-unit', 'mid-deluxe', { price: usd(18_000), fitted: { loader: true, midPto: false } });
  const belly = (limit: number) => ({ ...mustDo({ task: 'mow-lawn', deck: 'belly' }), budget: { limit: usd(limit), firm: true } });
  expect(unitOf(unit, belly(22_550)).package.price).toMatchObject({ low: 22_550, high: 22_550, machineLow: 18_000 });
  expect([unitOf(unit, belly(22_550)).verdict, unitOf(unit, belly(22_549)).verdict]).toEqual(['stands', 'ruled-out']);
});

test('a cab that is added travels along', () => {
  // 2,170 of machine, 620 of loader, 150 of reserve; the cab makes it 3,240.
  const onTrailer = (payload: number, cab: 'heat' | 'none') => mustHave({ cab }, { haul: { how: 'own-trailer', trailer: { gross: lb(2000 + payload), empty: lb(2000) } } });
  expect(standing(lineUp(), onTrailer(3245, 'heat'))).toContain('small-standard');
  expect(out(lineUp(), onTrailer(3235, 'heat'))).toContain('small-standard');
  expect(standing(lineUp(), onTrailer(3235, 'none')), 'control: without a cab').toContain('small-standard');
});

test('what the limit is to include counts, and nothing else', () => {
  const unit = soundUnit('the-unit', 'mid-deluxe', { price: usd(20_000) });
  const catalogue = { ...lineUp(), dealer: { ...lineUp().dealer, taxShare: 0.05, delivery: { perDistance: usd(4), per: { value: 1, unit: 'mi' as const } } } };
  const price = (includes: ('implements' | 'delivery' | 'tax')[] | undefined) => unitOf(unit, {
    ...mustDo({ task: 'cut-rough' }), budget: { limit: usd(50_000), ...(includes && { includes }) }, haul: { delivery: { value: 25, unit: 'mi' } },
  }, catalogue).package.price!.low;
  expect([price(undefined), price([]), price(['implements']), price(['implements', 'delivery']), price(['implements', 'tax', 'delivery'])])
    .toEqual([21_680, 20_000, 21_680, 21_780, 22_864]);
});

test('a part nobody weighed leaves a trailer open, but not one that the weighed parts overload already', () => {
  const unweighed = withMachine(lineUp(), 'mid-deluxe', ({ loaders = [] }) => ({ loaders: loaders.map((loader) => ({ ...loader, mass: undefined })) }));
  const lifting = { tasks: [{ task: 'lift-pallets', must: true }] } as const;
  const onTrailer = (payload: number) => saying({ ...lifting, tasks: [...lifting.tasks], haul: { how: 'own-trailer', trailer: { gross: lb(2000 + payload), empty: lb(2000) } } });
  expect(because(shortlist(unweighed, onTrailer(20_000)), 'mid-deluxe')).toContain('haul.payload');
  expect(toAsk(unweighed, onTrailer(20_000))).toContain('mid-deluxe');
  expect(out(unweighed, onTrailer(1000))).toContain('mid-deluxe');
});
