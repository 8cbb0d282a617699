import type { Criterion } from '../../src/answers/schema.ts';
import type { Machine } from '../../src/catalogue/catalogue.ts';
import type { Capability } from '../../src/needs/need.ts';

/** A machine with the figure that a need or criterion goes by so many times as good. */
type Altering = (machine: Machine, times: number) => Machine;

const scaled = <T>(value: T | undefined, times: number) => (value === undefined ? undefined : (value as unknown as number) * times as unknown as T);
/** Scales those figures of a record that it has: what is unknown stays so. */
const scaling = <T extends object>(record: T, times: number, ...keys: (keyof T)[]): T =>
  ({ ...record, ...Object.fromEntries(keys.flatMap((key) => (record[key] === undefined ? [] : [[key, scaled(record[key], times)]]))) });

const narrower: Altering = (machine, times) =>
  ({ ...machine, ...(machine.tyres && { tyres: machine.tyres.map((tyre) => scaling(tyre, 1 / times, 'widthOverRear')) }) });
const shorter: Altering = (machine, times) => scaling(machine, 1 / times, 'length', 'lengthWithLoader');
const lower: Altering = (machine, times) =>
  ({ ...machine, ...(machine.height && { height: scaling(machine.height, 1 / times, 'ropsUp', 'ropsFolded', 'cab') }) });
const cheaper: Altering = (machine, times) => ({
  ...machine,
  ...(machine.typicalPrices && { typicalPrices: machine.typicalPrices.map((each) => ({ ...each, price: { ...each.price, value: each.price.value / times } })) }),
});
const withLoaders = (machine: Machine, change: (loader: NonNullable<Machine['loaders']>[number]) => NonNullable<Machine['loaders']>[number]): Machine =>
  ({ ...machine, ...(machine.loaders && { loaders: machine.loaders.map(change) }) });
const strongerLoader: Altering = (machine, times) => withLoaders(machine, (loader) =>
  ({ ...loader, ...(loader.ratings && { ratings: loader.ratings.map((rating) => scaling(rating, times, 'load')) }) }));
const higherLoader: Altering = (machine, times) => withLoaders(machine, (loader) => scaling(loader, times, 'fullHeight'));
const strongerHitch: Altering = (machine, times) => ({ ...machine, ...(machine.hitch && { hitch: scaling(machine.hitch, times, 'lift610') }) });
const morePower: Altering = (machine, times) => ({ ...machine, ...(machine.engine && { engine: scaling(machine.engine, times, 'power', 'ptoPower') }) });
const widerDecks: Altering = (machine, times) => ({ ...machine, ...(machine.decks && { decks: machine.decks.map((deck) => scaling(deck, times, 'width')) }) });

/** What a load that can be lifted then asks of the rest of the machine, ballast and its price among it. */
const lifted: readonly Capability[] = [
  'loader.rear-axle', 'gross-mass', 'price', 'instalment', 'slope.tip-angle', 'trailer.payload', 'trailer.tow-rating', 'trailer.tongue', 'loader.loose',
];

/** The figure of the machine by which a need is judged, where it is one and no other need goes by it but those listed. */
export const byFigure: Partial<Record<Capability, { better: Altering; alsoOf: readonly Capability[] }>> = {
  width: { better: narrower, alsoOf: ['trailer.deck-width', 'rotary-cutter', 'implement'] },
  'trailer.deck-width': { better: narrower, alsoOf: ['width', 'rotary-cutter', 'implement'] },
  length: { better: shorter, alsoOf: ['trailer.deck-length'] },
  'trailer.deck-length': { better: shorter, alsoOf: ['length'] },
  'height.stored': { better: lower, alsoOf: ['height.working'] },
  'height.working': { better: lower, alsoOf: ['height.stored'] },
  price: { better: cheaper, alsoOf: ['instalment'] },
  'tow.mass': { better: (machine, times) => scaling(machine, times, 'towedMass'), alsoOf: [] },
  'loader.lift': { better: strongerLoader, alsoOf: lifted },
  'loader.height': { better: higherLoader, alsoOf: [] },
  'gross-mass': { better: (machine, times) => scaling(machine, times, 'grossMass'), alsoOf: [] },
  'slope.tip-angle': { better: (machine, times) => scaling(machine, times, 'rearTrack'), alsoOf: [] },
  'mower.hours': { better: widerDecks, alsoOf: ['mower'] },
  'hitch.lift': { better: strongerHitch, alsoOf: ['implement', 'rotary-cutter', 'loader.lift', 'mower'] },
  'pto.power': { better: morePower, alsoOf: ['implement', 'rotary-cutter', 'implement.pull', 'tow.pull', 'implement.hours', 'mower'] },
};

const feature = (times: number) => ({ availability: times > 1 ? 'fitted' : 'none' } as const);

/** Figures that move what a criterion is worth. */
export const byCriterion: Record<Criterion, Altering> = {
  price: cheaper,
  time: widerDecks,
  headroom: (machine, times) => {
    const strong = strongerLoader(strongerHitch(morePower(machine, times), times), times);
    return higherLoader(scaling(strong, times, 'towedMass'), times);
  },
  fit: (machine, times) => narrower(scaling(machine, 1 / times, 'mass', 'turningRadius'), times),
  comfort: (machine, times) => ({ ...machine, suspensionSeat: feature(times), tiltWheel: feature(times), cruise: feature(times) }),
  resale: (machine, times) => ({
    ...machine, ...(machine.typicalPrices && { typicalPrices: machine.typicalPrices.map((each) => ({ ...each, hours: each.hours / times, age: each.age })) }),
  }),
};
