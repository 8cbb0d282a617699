/** Facts about belly mowers and what drives them; each is common practice, no source, with its control. */
import { expect, test } from 'vitest';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { inches, lb, lineUp, soundUnit, usd, withMachine } from '../support/catalogue-for-tests.ts';
import { because, mustDo, mustHave, out, standing, unitOf } from '../support/reckon.ts';

const withBelly = ['subcompact-economy', 'subcompact-deluxe', 'small-standard', 'small-deluxe', 'mid-deluxe'];
const belly = mustDo({ task: 'mow-lawn', deck: 'belly' });
/** Two acres with some trees take about 1 h 22 with 54 in, 1 h 14 with 60 in and 1 h 02 with 72 in. */
const within = (minutes: number): AnswersDocument => {
  const answers = mustDo({ task: 'mow-lawn', deck: 'belly', hours: { value: minutes, unit: 'min' } });
  return { ...answers, land: { ...answers.land, mown: { value: 2, unit: 'acre' }, obstacles: 'some' } };
};
const deckOf = (machine: string, answers: AnswersDocument) =>
  shortlist(lineUp(), answers).shortlist.find((each) => each.machine === machine)?.package.additions.find(({ what }) => what === 'deck')?.id;

// Common practice, no source.
test('a belly mower goes under subcompact, small and deluxe mid, and under nothing else', () => {
  expect(standing(lineUp(), belly)).toEqual(withBelly);
  expect(out(lineUp(), belly)).toEqual(['mid-economy', 'wide-mid-standard', 'large-economy', 'large-deluxe']);
});

test.each(['mid-economy', 'wide-mid-standard', 'large-economy', 'large-deluxe'])('control: with a mid-PTO and a deck %s would take one', (id) => {
  const given = withMachine(lineUp(), id, () => ({
    midPto: { availability: 'fitted' }, decks: [{ id: 'a-deck', availability: 'field-kit', mass: lb(280), width: inches(72), lift: 'independent' }],
  }));
  expect(standing(given, belly)).toContain(id);
});

test('control: a deck alone does not mow where there is no mid-PTO', () => {
  const given = withMachine(lineUp(), 'mid-economy', () => ({ decks: [{ id: 'a-deck', availability: 'field-kit', width: inches(60) }] }));
  expect(out(given, belly)).toContain('mid-economy');
});

// Common practice, no source: 54 and 60 in under subcompacts, 60 and 72 under small frames, up to 72 under the deluxe mid.
test('a mow that takes a deck of 60 in leaves them all, one that takes 72 in leaves small and deluxe mid', () => {
  expect(standing(lineUp(), within(78))).toEqual(withBelly);
  expect(standing(lineUp(), within(66))).toEqual(['small-standard', 'small-deluxe', 'mid-deluxe']);
  expect(standing(lineUp(), within(60))).toEqual([]);
  expect(because(shortlist(lineUp(), within(66)), 'subcompact-deluxe')).toEqual(['mow-lawn.hours']);
});

test('control: without its deck of 72 in the small frame falls out, with one the subcompact stays', () => {
  const swapped = withMachine(
    withMachine(lineUp(), 'small-standard', ({ decks = [] }) => ({ decks: decks.filter(({ width }) => width.value < 72) })),
    'subcompact-deluxe', ({ decks = [] }) => ({ decks: [...decks, { ...decks[0]!, id: 'wide', width: inches(72) }] }),
  );
  expect(standing(swapped, within(66))).toEqual(['subcompact-deluxe', 'small-deluxe', 'mid-deluxe']);
});

test('through a narrow gate a subcompact goes with its deck of 54 in, and no small frame with 60', () => {
  const narrow = { ...belly, land: { ...belly.land, gate: inches(67) } };
  expect(standing(lineUp(), narrow)).toEqual(['subcompact-economy', 'subcompact-deluxe']);
  expect(deckOf('subcompact-economy', narrow)).toBe('subcompact-economy-deck-54');
  const wide = { ...belly, land: { ...belly.land, gate: inches(73) } };
  expect(standing(lineUp(), wide), 'control: through a wider one').toEqual(withBelly);
});

// Common practice, no source.
test('on the deluxe mid the mid-PTO is added in the field, at its price', () => {
  const additions = (catalogue = lineUp()) => shortlist(catalogue, belly).shortlist.find(({ machine }) => machine === 'mid-deluxe')!.package.additions;
  expect(additions()).toContainEqual(expect.objectContaining({ what: 'mid-pto', price: 1250, labourHours: 4 }));
  expect(additions(withMachine(lineUp(), 'mid-deluxe', () => ({ midPto: { availability: 'fitted' } }))).map(({ what }) => what)).toEqual(['deck']);
});

test('the price of that kit can rule it out', () => {
  const dear = withMachine(lineUp(), 'mid-deluxe', ({ midPto }) => ({ midPto: { ...midPto!, price: usd(9000) } }));
  const firm = { ...belly, budget: { limit: usd(27_500), firm: true } };
  expect(out(dear, firm)).toContain('mid-deluxe');
  expect(standing(lineUp(), firm), 'control: at its own price').toContain('mid-deluxe');
});

test.each([
  ['of the economy mid, which has no mid-PTO', 'mid-economy', false, 'ruled-out'],
  ['without the mid-PTO that only the factory fits', 'small-standard', false, 'ruled-out'],
  ['with that mid-PTO', 'small-standard', true, 'stands'],
  ['of which nobody said whether it has that mid-PTO', 'small-standard', undefined, 'ask'],
  ['without a mid-PTO, where a kit can be added', 'mid-deluxe', false, 'stands'],
])('a unit %s: %s, %s', (_what, machine, midPto, verdict) => {
  const unit = soundUnit('the-unit', machine, { fitted: { loader: true, ...(midPto !== undefined && { midPto }) } });
  expect(unitOf(unit, belly).verdict).toBe(verdict);
});

// Common practice, no source: on the smallest machines one lever lifts belly mower and hitch together.
test('a mower that lifts on its own lever takes a small frame at least', () => {
  const alone = mustHave({ mowerLiftAlone: true }, { tasks: [{ task: 'mow-lawn', deck: 'belly', must: true }] });
  expect(standing(lineUp(), alone)).toEqual(['small-standard', 'small-deluxe', 'mid-deluxe']);
  expect(because(shortlist(lineUp(), alone), 'subcompact-economy')).toEqual(['comfort.mowerLiftAlone']);
  const independent = withMachine(lineUp(), 'subcompact-economy', ({ decks = [] }) => ({ decks: decks.map((deck) => ({ ...deck, lift: 'independent' })) }));
  expect(standing(independent, alone), 'control: with a lever of its own').toContain('subcompact-economy');
});
