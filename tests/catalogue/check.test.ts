import { expect, test } from 'vitest';
import { checkCatalogue } from '../../src/catalogue/check.ts';
import { readCatalogue } from '../../src/catalogue/read-catalogue.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { minimalCatalogue, withAt } from '../support/minimal-catalogue.ts';

const usd = (value: number) => ({ value, currency: 'USD' });
const pounds = (value: number) => ({ value, unit: 'lb' });
const inches = (value: number) => ({ value, unit: 'in' });
const rating = (ahead: number, load: number) => ({ ahead: inches(ahead), height: inches(60), bucketOn: true, load: pounds(load) });

const [machine] = minimalCatalogue().machines;
/** A lot with something of everything that is checked, and nothing wrong. */
const lot = {
  ...minimalCatalogue(),
  dealer: { ...minimalCatalogue().dealer, terms: { en: { guidance: 'Guidance only.' } } },
  frames: [{ id: 'small', name: 'Small', order: 2 }, { id: 'mid', name: 'Mid', order: 3 }],
  machines: [
    {
      ...machine, line: 'small-line', height: { ropsUp: inches(96), ropsFolded: inches(80) },
      engine: { power: { value: 25, unit: 'hp' }, ptoPower: { value: 20, unit: 'hp' } },
      loaders: [{ id: 'the-loader', name: 'Loader', availability: 'fitted', ratings: [rating(0, 900), rating(19.685, 650)] }],
      decks: [{ id: 'the-deck', availability: 'option', width: inches(60) }],
      cabs: [{ id: 'the-cab', availability: 'option', heat: true, airConditioning: false }],
      listPrice: { price: usd(20_000), year: 2014 },
      typicalPrices: [{ age: 5, hours: 500, price: usd(14_000) }],
    },
    { ...machine, id: 'small-later', line: 'small-line', years: { from: 2019, meant: 'model' } },
  ],
  implements: [
    { id: 'the-forks', name: 'Forks', kind: 'pallet-forks', price: usd(900) },
    { id: 'the-spear', name: 'Spear', kind: 'bale-spear' },
  ],
  units: [
    {
      id: 'lot-1', machine: 'small-standard', year: 2012, loader: 'the-loader', deck: 'the-deck', cab: 'the-cab',
      attachments: ['the-forks'], price: usd(13_000),
    },
    { id: 'lot-2', machine: 'small-later' },
  ],
  rules: { 'mow.speed': 5 },
};

interface Row {
  fault: string;
  at: (string | number)[];
  right: unknown;
  wrong: unknown;
  /** Where the fault is named, if not where the wrong value stands. */
  place?: string;
  nearest?: string;
}

const ratings = ['machines', 0, 'loaders', 0, 'ratings'];
const rows: Row[] = [
  { fault: 'two frames of one id', at: ['frames', 1, 'id'], right: 'wide', wrong: 'small', place: 'frames[1].id' },
  { fault: 'two machines of one id', at: ['machines', 2], right: { ...machine, id: 'small-third' }, wrong: { ...machine, id: 'small-later' }, place: 'machines[2].id' },
  { fault: 'two implements of one id', at: ['implements', 1, 'id'], right: 'a-spear', wrong: 'the-forks', place: 'implements[1].id' },
  { fault: 'two units of one id', at: ['units', 1, 'id'], right: 'lot-3', wrong: 'lot-1', place: 'units[1].id' },
  { fault: 'a frame that is not there', at: ['machines', 0, 'frame'], right: 'mid', wrong: 'smal', place: 'machines[0].frame', nearest: 'small' },
  { fault: 'years that end before they begin', at: ['machines', 0, 'years', 'to'], right: 2012, wrong: 2011, place: 'machines[0].years.to' },
  { fault: 'a folded ROPS higher than a standing one', at: ['machines', 0, 'height', 'ropsFolded'], right: { value: 8, unit: 'ft' }, wrong: { value: 2.5, unit: 'm' }, place: 'machines[0].height.ropsFolded' },
  { fault: 'more PTO power than engine power', at: ['machines', 0, 'engine', 'ptoPower'], right: { value: 18.6, unit: 'kW' }, wrong: { value: 18.7, unit: 'kW' }, place: 'machines[0].engine.ptoPower' },
  { fault: 'a list price in another currency', at: ['machines', 0, 'listPrice', 'price', 'currency'], right: 'USD', wrong: 'CAD', place: 'machines[0].listPrice.price.currency' },
  { fault: 'a typical price in another currency', at: ['machines', 0, 'typicalPrices', 0, 'price', 'currency'], right: 'USD', wrong: 'CAD', place: 'machines[0].typicalPrices[0].price.currency' },
  { fault: 'an implement priced in another currency', at: ['implements', 0, 'price', 'currency'], right: 'USD', wrong: 'CAD', place: 'implements[0].price.currency' },
  { fault: 'a unit priced in another currency', at: ['units', 0, 'price', 'currency'], right: 'USD', wrong: 'CAD', place: 'units[0].price.currency' },
  { fault: 'three ratings of one loader', at: ratings, right: [rating(0, 900)], wrong: [rating(0, 900), rating(10, 800), rating(19.685, 650)], place: 'machines[0].loaders[0].ratings' },
  { fault: 'ratings at two heights', at: [...ratings, 1, 'height'], right: inches(60), wrong: inches(70), place: 'machines[0].loaders[0].ratings' },
  { fault: 'one rating with and one without the bucket', at: [...ratings, 1, 'bucketOn'], right: true, wrong: false, place: 'machines[0].loaders[0].ratings' },
  { fault: 'a rating that rises with distance', at: [...ratings, 1, 'load'], right: pounds(899), wrong: pounds(950), place: 'machines[0].loaders[0].ratings[1].load' },
  { fault: 'a rating that does not fall with distance', at: [...ratings, 1, 'load'], right: { value: 400, unit: 'kg' }, wrong: pounds(900), place: 'machines[0].loaders[0].ratings[1].load' },
  { fault: 'a rating that rises with distance, the far one written first', at: ratings, right: [rating(19.685, 650), rating(0, 900)], wrong: [rating(19.685, 950), rating(0, 900)], place: 'machines[0].loaders[0].ratings[0].load' },
  // Common practice, no source: a series may give way to the next within a model year.
  { fault: 'two rows of a line that share more than the year of the change', at: ['machines', 1, 'years', 'from'], right: 2018, wrong: 2017, place: 'machines[1].years' },
  { fault: 'two rows of a line that begin in one year', at: ['machines', 1, 'years'], right: { from: 2018, meant: 'model' }, wrong: { from: 2012, to: 2012, meant: 'model' }, place: 'machines[1].years' },
  { fault: 'a row without an end before a later one of its line', at: ['machines', 0, 'years'], right: { from: 2012, to: 2018, meant: 'model' }, wrong: { from: 2012, meant: 'model' }, place: 'machines[1].years' },
  { fault: 'a machine that is not there', at: ['units', 1, 'machine'], right: 'small-standard', wrong: 'small-latter', place: 'units[1].machine', nearest: 'small-later' },
  { fault: 'a loader its machine has not', at: ['units', 0, 'loader'], right: 'the-loader', wrong: 'the-lodaer', place: 'units[0].loader', nearest: 'the-loader' },
  { fault: 'a deck its machine has not', at: ['units', 0, 'deck'], right: 'the-deck', wrong: 'the-dek', place: 'units[0].deck', nearest: 'the-deck' },
  { fault: 'a cab its machine has not', at: ['units', 0, 'cab'], right: 'the-cab', wrong: 'the-kab', place: 'units[0].cab', nearest: 'the-cab' },
  { fault: 'an attachment that is not there', at: ['units', 0, 'attachments', 0], right: 'the-spear', wrong: 'the-spaer', place: 'units[0].attachments[0]', nearest: 'the-spear' },
  { fault: 'a unit built long before its row', at: ['units', 0, 'year'], right: 2011, wrong: 2009, place: 'units[0].year' },
  { fault: 'a unit built long after its row', at: ['units', 0, 'year'], right: 2020, wrong: 2025, place: 'units[0].year' },
  { fault: 'a rule that is not there', at: ['rules'], right: { 'mow.overlap': 0.1 }, wrong: { 'mow.overlp': 0.1 }, place: 'rules.mow.overlp', nearest: 'mow.overlap' },
  { fault: 'a rule the dealer may not change', at: ['rules'], right: { 'forks.mass': 200 }, wrong: { 'hitch.rated-behind': 500 }, place: 'rules.hitch.rated-behind' },
  { fault: 'a formula given a value', at: ['rules'], right: { 'forks.face': 5 }, wrong: { 'hitch.lift-at': 5 }, place: 'rules.hitch.lift-at' },
  { fault: 'a safety floor on the unsafe side', at: ['rules'], right: { 'loader.margin': 0.3 }, wrong: { 'loader.margin': 0.1 }, place: 'rules.loader.margin' },
];

const faultsWith = (at: Row['at'], value: unknown) => checkCatalogue(withAt(lot, at, value) as CatalogueDocument).faults;

test('control: the lot the faults are put into has none, and is a catalogue by its schema', () => {
  const { value, faults, unknownKeys, warnings } = readCatalogue(lot);
  expect({ faults, unknownKeys, warnings }).toEqual({ faults: [], unknownKeys: [], warnings: [] });
  expect(value).toEqual(lot);
});

test.each(rows)('$fault is the one fault named', ({ at, wrong, place, nearest }) => {
  expect(faultsWith(at, wrong)).toEqual([{ place, read: expect.any(String), expected: expect.stringMatching(/./), ...(nearest && { nearest }) }]);
});

test.each(rows)('control: without "$fault" the same lot passes', ({ at, right }) => {
  expect(faultsWith(at, right)).toEqual([]);
});

test('one height said in inches and in feet is one height', () => {
  const both = [{ ...rating(0, 900), height: inches(78) }, { ...rating(19.685, 650), height: { value: 6.5, unit: 'ft' } }];
  expect(faultsWith(ratings, both)).toEqual([]);
});

test('a catalogue with a fault gives no value, and all its faults together', () => {
  const { value, faults } = readCatalogue(withAt(withAt(lot, ['units', 0, 'deck'], 'none'), ['machines', 0, 'frame'], 'none'));
  expect(value).toBeUndefined();
  expect(faults.map(({ place }) => place).sort()).toEqual(['machines[0].frame', 'units[0].deck']);
});

test.each([
  [undefined, 'en-US', 1],
  [{ de: { guidance: 'Nur ein Anhalt.' } }, 'en-US', 1],
  [{ de: { guidance: 'Nur ein Anhalt.' } }, 'de', 0],
  [{ en: { guidance: 'Guidance only.' } }, 'en-US', 0],
])('terms %j for a dealer who speaks %s give %i warnings and no fault', (terms, locale, count) => {
  const { faults, warnings } = readCatalogue({ ...lot, dealer: { ...lot.dealer, terms, locale } });
  expect([faults.length, warnings.length]).toEqual([0, count]);
});
