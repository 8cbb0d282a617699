import { DOMParser, type Document, type Element } from '@xmldom/xmldom';
import fc from 'fast-check';
import { answersOf, type Answers } from '../../src/answers/answers.ts';
import { answersFormat, type AnswersDocument } from '../../src/answers/schema.ts';
import { catalogueOf, type Catalogue } from '../../src/catalogue/catalogue.ts';
import type { CatalogueDocument, MachineDocument } from '../../src/catalogue/schema.ts';
import { lineUp, type LineUp, type LineUpWish } from '../../src/drawing/line-up.ts';
import { lineUpSvg } from '../../src/drawing/svg.ts';
import type { LineUpWords } from '../../src/drawing/words.ts';
import { ruleBook } from '../../src/trade/book.ts';
import { minimalCatalogue } from '../support/minimal-catalogue.ts';

export const book = ruleBook();
export const m = (value: number) => ({ value, unit: 'm' as const });

/** A machine of which everything is given that a drawing shows, but how high its bonnet is. */
export const fullMachine = {
  id: 'full', name: 'Full', make: 'House make', frame: 'small', tier: 'standard', years: { from: 2012, meant: 'model' },
  tyres: [{ type: 'turf', size: 'front 23x8.50-12, rear 36x13.50-15', widthOverRear: m(1.4) }],
  length: m(2.7), lengthWithLoader: m(3.6), wheelbase: m(1.6), groundClearance: m(0.25),
  height: { ropsUp: m(2.3), ropsFolded: m(1.8) }, rops: { kind: 'folding' },
  loaders: [{ id: 'arm', name: 'Arm', availability: 'fitted', ratings: [], fullHeight: m(2.1), pinsAhead: m(1.1) }],
} satisfies MachineDocument as MachineDocument;

export const catalogueWith = (machines: readonly MachineDocument[], more: Partial<CatalogueDocument> = {}): Catalogue =>
  catalogueOf({ ...(minimalCatalogue() as unknown as CatalogueDocument), ...more, machines: [...machines] });

export const answersWith = (said: Omit<AnswersDocument, 'format'>): Answers => answersOf({ format: answersFormat, ...said });

export const draw = (machines: readonly MachineDocument[], said: Omit<AnswersDocument, 'format'> = {}, wish: Partial<LineUpWish> = {}): LineUp =>
  lineUp({ catalogue: catalogueWith(machines), answers: answersWith(said), book, view: 'side', layout: 'wrap', width: 800, units: 'us', ...wish });

export const plainWords: LineUpWords = {
  title: 'Line-up', description: 'To one scale', length: (metres) => `${metres.toFixed(2)} m`, bar: (metres) => `${metres} m`,
  legend: { assumed: 'Dashed: assumed', room: 'Thin: room on each side' },
  machine: ({ machine, standing }) => ({ name: machine, standing, description: 'A machine' }),
  thing: (id) => ({ name: id, description: 'A thing of yours' }),
};
export const svgOf = (lineUp: LineUp, words = plainWords) => lineUpSvg(lineUp, { words, prefix: 'a' });

/** The picture as another program reads it; one that isn't well-formed is an error. */
export const parsed = (svg: string): Document =>
  new DOMParser({ onError: (level, message) => { if (level !== 'warning') throw new Error(`${level}: ${message}`); } }).parseFromString(svg, 'image/svg+xml');

export const elements = (document: Document, test: (element: Element) => boolean): Element[] =>
  [...document.getElementsByTagName('*')].filter(test);
export const hasClass = (element: Element, name: string) => (element.getAttribute('class') ?? '').split(' ').includes(name);

/** Least and greatest of the x of a path's points: even places of the numbers, for ours has only absolute points. */
export function across(path: Element): [number, number] {
  const xs = (path.getAttribute('d')!.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number).filter((_, place) => place % 2 === 0);
  return [Math.min(...xs), Math.max(...xs)];
}

const size = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true }).map(m);
const some = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 });

/** Machines with any of their figures missing, and figures that needn't go together. */
const anyMachine = fc.record({
  width: some(size(0.8, 2.6)), size: some(fc.constantFrom('280/70R18', '11.2-24', 'rear 40 in tall', 'front 18x8.50-10, rear 26x12.00-12', 'turf')),
  length: some(size(2, 4.5)), lengthWithLoader: some(size(2, 6)), wheelbase: some(size(1, 2.6)), groundClearance: some(size(0.1, 0.6)),
  ropsUp: some(size(1.5, 3)), ropsFolded: some(size(1.2, 2.4)), cab: some(size(1.5, 3)), kind: some(fc.constantFrom('fixed' as const, 'folding' as const, 'cab' as const)),
  loader: some(fc.record({ fullHeight: some(size(1, 4)), pinsAhead: some(size(0.3, 3)) })),
  deck: some(size(0.9, 2)),
}).map(({ width, size: tyre, ropsUp, ropsFolded, cab, kind, loader, deck, ...lengths }) => {
  const known = <T extends object>(fields: T) => Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as T;
  return {
    ...known(lengths), height: known({ ropsUp, ropsFolded, cab }), ...(kind && { rops: { kind } }),
    ...(width && { tyres: [known({ type: 'turf', size: tyre, widthOverRear: width })] }),
    ...(loader && { loaders: [{ id: 'arm', name: 'Arm', availability: 'fitted', ratings: [], ...known(loader) }] }),
    ...(deck && { decks: [{ id: 'deck', availability: 'field-kit', width: deck }] }),
  };
});
export const anyMachines = (least: number, most: number) => fc.array(anyMachine, { minLength: least, maxLength: most })
  .map((all) => all.map((machine, at) => ({ id: `machine-${at}`, name: `Machine ${at}`, make: 'House make', frame: 'small', tier: 'standard', years: { from: 2012, meant: 'model' }, ...machine }) as MachineDocument));

/** Buyers who speak of any of the things that are drawn. */
export const anyThings = fc.record({
  gate: some(size(1, 4)), doorWidth: some(size(1, 4)), doorHeight: some(size(1.8, 4)), deckLength: some(size(2, 7)), deckWidth: some(size(1.4, 2.6)),
  bale: some(fc.record({ height: some(size(0.5, 4)), diameter: some(size(0.8, 2)) })), pallet: some(fc.record({ height: some(size(0.5, 4)) })), mows: fc.boolean(),
}).map(({ gate, doorWidth, doorHeight, deckLength, deckWidth, bale, pallet, mows }): Omit<AnswersDocument, 'format'> => JSON.parse(JSON.stringify({
  land: { gate }, storage: { doorWidth, doorHeight }, haul: { how: 'own-trailer', trailer: { deckLength, deckWidth } },
  tasks: [...(bale ? [{ task: 'lift-bales', ...bale }] : []), ...(pallet ? [{ task: 'lift-pallets', ...pallet }] : []), ...(mows ? [{ task: 'mow-lawn', deck: 'belly' }] : [])],
})) as Omit<AnswersDocument, 'format'>);

export const anySheet = fc.record({
  view: fc.constantFrom('side' as const, 'rear' as const), layout: fc.constantFrom('row' as const, 'wrap' as const, 'alone' as const),
  width: fc.integer({ min: 320, max: 1600 }), units: fc.constantFrom('us' as const, 'metric' as const),
});
