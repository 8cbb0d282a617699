import fc from 'fast-check';
import { expect, test } from 'vitest';
import { figureIds, figureRules, refusalOf, ruleBook, siUnitOfRule, type FigureId, type Override } from '../../src/trade/book.ts';
import type { FigureRule, RuleKind } from '../../src/trade/record.ts';
import { kindOfUnit, toSi, unitsOf, type Unit } from '../../src/units/quantity.ts';

const figure = (id: FigureId): FigureRule => figureRules[id];
const ofKind = (...kinds: RuleKind[]) => figureIds.filter((id) => kinds.includes(figure(id).kind));
const inSiUnits = (value: number, unit: string) => (kindOfUnit(unit) ? toSi({ value, unit: unit as Unit }) : value);
const changeable = ofKind('rule-of-thumb', 'value-anchor');

test.each(figureIds)('without an override %s is ours, in SI', (id) => {
  const { value, unit } = figure(id);
  expect([ruleBook().value(id), ruleBook().isDealers(id)]).toEqual([inSiUnits(value, unit), false]);
  expect(kindOfUnit(siUnitOfRule(id))).toBe(kindOfUnit(unit));
});

test.each([
  ['mow.speed', 5, 5 * 0.44704],
  ['mow.speed', { value: 8, unit: 'km/h' }, 8 / 3.6],
  ['forks.mass', { value: 100, unit: 'kg' }, 100],
  ['place.side-clearance', { value: 1, unit: 'ft' }, 0.3048],
  ['cut.power.grass', { value: 10, unit: 'kW/m' }, 10_000],
  ['mow.overlap', 0.1, 0.1],
  ['value.time.best-hours', { value: 45, unit: 'min' }, 2700],
  ['keep.years', 5, 5],
] as [FigureId, Override, number][])('a dealer may say %s as %j', (id, override, si) => {
  const book = ruleBook({ [id]: override });
  expect([refusalOf(id, override), book.isDealers(id)]).toEqual([undefined, true]);
  expect(book.value(id)).toBeCloseTo(si, 9);
});

const allowed = fc.constantFrom(...changeable).chain((id) => {
  const { valid: [least, most], unit } = figure(id);
  const kind = kindOfUnit(unit);
  return fc.record({
    id: fc.constant(id), // Amounts of this world: nothing so small that a conversion of units loses it.
    value: fc.double({ min: least, max: most, noNaN: true }).filter((value) => value === 0 || value > 1e-9),
    unit: kind ? fc.constantFrom<string>(...unitsOf(kind)) : fc.constant<string>(unit),
  });
});

test('a rule of thumb or a value anchor may take any value within its bounds, in any unit of its kind', () => {
  fc.assert(fc.property(allowed, ({ id, value, unit }) => {
    const si = inSiUnits(value, figure(id).unit), override = { value: si / inSiUnits(1, unit), unit };
    const book = ruleBook({ [id]: override });
    return refusalOf(id, override) === undefined && book.isDealers(id) && Math.abs(book.value(id) - si) <= 1e-9 * Math.abs(si);
  }));
});

/** The edge itself is the case that rounding in a conversion spoils. */
const edges = ofKind('rule-of-thumb', 'value-anchor', 'safety-floor').flatMap((id) => {
  const { value, unit, valid } = figure(id);
  const kind = kindOfUnit(unit);
  return kind === undefined ? [] : unitsOf(kind).flatMap((other) =>
    [value, ...valid].map((edge) => ({ id, edge, unit, other, override: { value: Number((inSiUnits(edge, unit) / inSiUnits(1, other)).toPrecision(15)), unit: other as string } })));
});
test('a value at the very bound stands, in whatever unit of the kind it is said', () => {
  expect(edges.filter(({ id, override }) => refusalOf(id, override) !== undefined).map(({ id, override }) => `${id}: ${override.value} ${override.unit}`)).toEqual([]);
});

const refused = (id: string, override: Override) => {
  const book = ruleBook({ [id]: override });
  return {
    refused: refusalOf(id, override) !== undefined,
    unchanged: figureIds.every((each) => book.value(each) === ruleBook().value(each) && !book.isDealers(each)),
  };
};

test.each(ofKind('definition', 'published-figure'))('%s is no dealer\'s to change, not even to its own value', (id) => {
  const { value, unit, valid: [least] } = figure(id);
  for (const override of [value, least, { value, unit }]) expect(refused(id, override)).toEqual({ refused: true, unchanged: true });
});

test.each(ofKind('safety-floor'))('%s may move to the safe side only', (id) => {
  const { value, valid: [least, most], safer } = figure(id);
  const safe = safer === 'more' ? [value, (value + most) / 2, most] : [value, (value + least) / 2, least];
  const unsafe = safer === 'more' ? value * 0.999 : value * 1.001;
  for (const override of safe) expect(refusalOf(id, override)).toBeUndefined();
  expect(ruleBook({ [id]: safe[1]! }).isDealers(id)).toBe(true);
  expect(refused(id, unsafe)).toEqual({ refused: true, unchanged: true });
});

test.each(changeable)('%s may not leave its bounds', (id) => {
  const { valid: [least, most], unit } = figure(id);
  // Well beyond the tolerance for rounding in conversions.
  const beyond = Math.max(0.001, most / 1000);
  for (const value of [least - beyond, most + beyond]) {
    expect(refused(id, value)).toEqual({ refused: true, unchanged: true });
    expect(refused(id, { value, unit })).toEqual({ refused: true, unchanged: true });
  }
});

test.each([
  ['a unit of another kind', 'mow.speed', { value: 5, unit: 'lb' }],
  ['a unit that is none', 'mow.speed', { value: 5, unit: 'knots' }],
  ['a ratio given a unit', 'mow.overlap', { value: 0.1, unit: 'm' }],
  ['a unit given as a ratio', 'mow.speed', { value: 5, unit: 'ratio' }],
  ['no number', 'mow.speed', { value: Number.NaN, unit: 'mph' }],
  ['a formula', 'mow.rate', 5],
  ['an id that is none', 'mow.by-moonlight', 5],
  ['a word every object knows', 'constructor', 5],
] as [string, string, Override][])('%s is refused and changes nothing', (_what, id, override) => {
  expect(refused(id, override)).toEqual({ refused: true, unchanged: true });
});

test('a refused override leaves those beside it standing', () => {
  const book = ruleBook({ 'loader.margin': 0.1, 'forks.mass': { value: 100, unit: 'kg' } });
  expect([book.isDealers('loader.margin'), book.value('loader.margin'), book.value('forks.mass')]).toEqual([false, 0.25, 100]);
});
