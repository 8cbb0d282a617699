import type { CatalogueDocument, ImplementDocument, MachineDocument, UnitDocument } from '../../src/catalogue/schema.ts';

type Loader = NonNullable<MachineDocument['loaders']>[number];
type Availability = NonNullable<MachineDocument['midPto']>['availability'];

export const lb = (value: number) => ({ value, unit: 'lb' as const });
export const inches = (value: number) => ({ value, unit: 'in' as const });
export const feet = (value: number) => ({ value, unit: 'ft' as const });
export const psi = (value: number) => ({ value, unit: 'psi' as const });
export const hp = (value: number) => ({ value, unit: 'hp' as const });
export const degrees = (value: number) => ({ value, unit: 'deg' as const });
export const usd = (value: number) => ({ value, currency: 'USD' });

/** The figures of one row: masses in lb, lengths in inches, power in hp, prices in dollars. */
interface Row {
  frame: string;
  tier: MachineDocument['tier'];
  years: number;
  width: number;
  mass: number;
  grossMass: number;
  wheelbase: number;
  rearTrack: number;
  centreOfMass: number;
  pivot: number;
  length: number;
  ropsUp: number;
  turning: number;
  power: number;
  ptoPower: number;
  hitchLift: number;
  /** At the pins; 500 mm ahead of them three quarters of it. */
  loaderLift: number;
  loaderMass: number;
  loaderHeight: number;
  midPto: Availability;
  decks: readonly number[];
  mowerLift: 'with-hitch' | 'independent';
  backhoe: { availability: Availability; from?: number; depth?: number };
  rich: boolean;
  factoryCab: boolean;
  reverser: boolean;
  unboltedLoader?: boolean;
  selfLevelling?: Availability;
  /** Typical used price at 2, 6 and 12 years. */
  prices: readonly [number, number, number];
}

const fitting = (availability: Availability) => ({ availability });

function loaderOf(row: Row, id: string): Loader {
  const rating = (ahead: number, load: number) => ({ ahead: { value: ahead, unit: 'mm' as const }, height: inches(row.loaderHeight), bucketOn: false, load: lb(load) });
  return {
    id: `${id}-loader`, name: `Loader of the ${id}`, availability: 'fitted', mass: lb(row.loaderMass), price: usd(3500), labourHours: 3,
    ratings: [rating(0, row.loaderLift), rating(500, row.loaderLift * 0.75)],
    fullHeight: inches(row.loaderHeight), pinsAhead: inches(40), bucketMass: lb(row.loaderMass * 0.25), bucketVolume: { value: row.loaderMass / 100, unit: 'ft3' },
    detaching: row.unboltedLoader ? 'unbolted' : 'quick', hydraulicCouplers: !row.unboltedLoader, selfLevelling: row.selfLevelling ?? 'none',
  };
}

function machineOf(row: Row): MachineDocument {
  const id = `${row.frame}-${row.tier}`;
  const plain = fitting(row.rich ? 'fitted' : 'none');
  return {
    id, name: id.replaceAll('-', ' '), make: 'House make', frame: row.frame, tier: row.tier,
    years: { from: row.years, meant: 'model' },
    tyres: [{ type: 'industrial', widthOverRear: inches(row.width), inflation: psi(20), fillMass: lb(row.mass * 0.1) }],
    lengthWithLoader: inches(row.length + 30), length: inches(row.length),
    height: { ropsUp: inches(row.ropsUp), ropsFolded: inches(row.ropsUp - 18), cab: inches(row.ropsUp - 2) },
    wheelbase: inches(row.wheelbase), rearTrack: inches(row.rearTrack), frontPivotHeight: inches(row.pivot), turningRadius: feet(row.turning),
    drivenWheels: 4, mass: lb(row.mass), frontAxleShare: 0.42, grossMass: lb(row.grossMass),
    centreOfMassHeight: { value: inches(row.centreOfMass), source: 'measured for the tests' },
    engine: { power: hp(row.power), ptoPower: hp(row.ptoPower), fuel: 'diesel' },
    exhaust: row.power > 26 ? 'particulate-filter' : 'none',
    hitch: { category: '1', lift610: lb(row.hitchLift) }, drawbar: true,
    rearPto: { speeds: [{ value: 540, unit: 'rpm' }] },
    midPto: { ...fitting(row.midPto), ...(row.midPto === 'field-kit' && { price: usd(1250), labourHours: 4 }) },
    decks: row.decks.map((width) => ({
      id: `${id}-deck-${width}`, availability: 'field-kit', width: inches(width), lift: row.mowerLift, mass: lb(width * 4), price: usd(width * 45), labourHours: 2,
    })),
    loaders: [loaderOf(row, id)],
    backhoe: row.backhoe.availability === 'none' ? { availability: 'none' } : {
      availability: row.backhoe.availability, ...(row.backhoe.from && { years: { from: row.backhoe.from } }),
      digDepth: inches(row.backhoe.depth!), mass: lb(row.backhoe.depth! * 9), centreBehind: inches(32), price: usd(7500), labourHours: 4,
    },
    transmissions: [
      { availability: 'option', kind: 'hydrostatic', ranges: row.reverser ? 3 : 2 },
      ...(row.reverser ? [{ availability: 'option' as const, kind: 'power-reverser' as const, ranges: 3 }] : []),
    ],
    cabs: row.factoryCab
      ? [{ id: `${id}-factory-cab`, availability: 'option', heat: true, airConditioning: true, mass: lb(450), price: usd(7000) }]
      : [{ id: `${id}-added-cab`, availability: 'aftermarket', heat: true, airConditioning: false, mass: lb(300), price: usd(4200), labourHours: 8 }],
    suspensionSeat: plain, tiltWheel: plain, cruise: plain,
    thirdFunction: { ...fitting(row.frame === 'subcompact' ? 'none' : 'field-kit'), price: usd(900), labourHours: 3 },
    hydraulics: { flow: { value: row.power / 5, unit: 'gpm' } }, towedMass: lb(row.mass * 1.5), noiseAtEarDecibels: row.rich ? 83 : 87,
    seatVibration: { value: row.rich ? 0.7 : 0.9, unit: 'm/s2' }, listPrice: { price: usd(row.prices[0] * 1.2), year: 2024 },
    rops: { kind: 'folding', certified: true },
    typicalPrices: row.prices.map((price, step) => ({ age: [2, 6, 12][step]!, hours: [150, 500, 1100][step]!, price: usd(price) })),
  };
}

/** One row a class and tier; every figure is invented, and typical of its class by common practice, no source. */
const rows: readonly Row[] = [
  {
    frame: 'subcompact', tier: 'economy', years: 2012, width: 48, mass: 1450, grossMass: 3200, wheelbase: 56, rearTrack: 38, centreOfMass: 23, pivot: 15,
    length: 96, ropsUp: 84, turning: 8, power: 23, ptoPower: 17, hitchLift: 620, loaderLift: 600, loaderMass: 430, loaderHeight: 71,
    midPto: 'fitted', decks: [54, 60], mowerLift: 'with-hitch', backhoe: { availability: 'none' }, rich: false, factoryCab: false, reverser: false,
    prices: [15_500, 13_000, 9500],
  },
  {
    frame: 'subcompact', tier: 'deluxe', years: 2012, width: 48, mass: 1620, grossMass: 3500, wheelbase: 57, rearTrack: 38, centreOfMass: 23.5, pivot: 15,
    length: 98, ropsUp: 85, turning: 8.1, power: 25, ptoPower: 19, hitchLift: 700, loaderLift: 760, loaderMass: 480, loaderHeight: 73,
    midPto: 'fitted', decks: [54, 60], mowerLift: 'with-hitch', backhoe: { availability: 'field-kit', depth: 76 }, rich: true, factoryCab: false, reverser: false,
    prices: [18_500, 15_500, 11_500],
  },
  {
    frame: 'small', tier: 'standard', years: 2010, width: 54, mass: 2170, grossMass: 4600, wheelbase: 63, rearTrack: 43, centreOfMass: 25, pivot: 16,
    length: 108, ropsUp: 90, turning: 8.6, power: 33, ptoPower: 26, hitchLift: 1150, loaderLift: 1050, loaderMass: 620, loaderHeight: 83,
    midPto: 'option', decks: [60, 72], mowerLift: 'independent', backhoe: { availability: 'field-kit', depth: 90 }, rich: false, factoryCab: false, reverser: false,
    prices: [20_500, 17_000, 12_500],
  },
  {
    frame: 'small', tier: 'deluxe', years: 2010, width: 54, mass: 2210, grossMass: 4700, wheelbase: 63, rearTrack: 43, centreOfMass: 25, pivot: 16,
    length: 109, ropsUp: 90, turning: 8.6, power: 35, ptoPower: 27, hitchLift: 1250, loaderLift: 1100, loaderMass: 640, loaderHeight: 84,
    midPto: 'fitted', decks: [60, 72], mowerLift: 'independent', backhoe: { availability: 'field-kit', depth: 90 }, rich: true, factoryCab: false, reverser: false,
    prices: [24_000, 20_000, 14_500],
  },
  {
    frame: 'mid', tier: 'economy', years: 2014, width: 60, mass: 2200, grossMass: 4800, wheelbase: 65, rearTrack: 47, centreOfMass: 25.5, pivot: 16.5,
    length: 112, ropsUp: 93, turning: 9.2, power: 35, ptoPower: 28, hitchLift: 1300, loaderLift: 1250, loaderMass: 700, loaderHeight: 92,
    midPto: 'none', decks: [], mowerLift: 'with-hitch', backhoe: { availability: 'field-kit', from: 2018, depth: 92 }, rich: false, factoryCab: false, reverser: false,
    unboltedLoader: true, prices: [20_500, 17_500, 13_000],
  },
  {
    frame: 'mid', tier: 'deluxe', years: 2008, width: 60, mass: 2900, grossMass: 6600, wheelbase: 68, rearTrack: 47, centreOfMass: 26.5, pivot: 17,
    length: 118, ropsUp: 95, turning: 9, power: 40, ptoPower: 32, hitchLift: 2500, loaderLift: 1950, loaderMass: 860, loaderHeight: 100,
    midPto: 'field-kit', decks: [60, 72], mowerLift: 'independent', backhoe: { availability: 'field-kit', depth: 100 }, rich: true, factoryCab: true, reverser: true,
    prices: [34_000, 28_500, 21_500],
  },
  {
    frame: 'wide-mid', tier: 'standard', years: 2010, width: 66, mass: 3150, grossMass: 7200, wheelbase: 70, rearTrack: 52, centreOfMass: 27, pivot: 17.5,
    length: 120, ropsUp: 96, turning: 9.8, power: 45, ptoPower: 36, hitchLift: 2200, loaderLift: 2050, loaderMass: 900, loaderHeight: 102,
    midPto: 'none', decks: [], mowerLift: 'with-hitch', backhoe: { availability: 'field-kit', depth: 102 }, rich: false, factoryCab: false, reverser: false,
    prices: [33_000, 27_500, 20_500],
  },
  {
    frame: 'large', tier: 'economy', years: 2010, width: 72, mass: 3600, grossMass: 8400, wheelbase: 74, rearTrack: 57, centreOfMass: 28.5, pivot: 18.5,
    length: 128, ropsUp: 100, turning: 10.6, power: 50, ptoPower: 42, hitchLift: 3000, loaderLift: 2600, loaderMass: 1050, loaderHeight: 111,
    midPto: 'none', decks: [], mowerLift: 'with-hitch', backhoe: { availability: 'field-kit', depth: 108 }, rich: false, factoryCab: false, reverser: true,
    selfLevelling: 'option', prices: [36_000, 30_000, 23_000],
  },
  {
    frame: 'large', tier: 'deluxe', years: 2010, width: 72, mass: 3850, grossMass: 8800, wheelbase: 74, rearTrack: 57, centreOfMass: 28.5, pivot: 18.5,
    length: 129, ropsUp: 101, turning: 10.6, power: 58, ptoPower: 48, hitchLift: 3300, loaderLift: 2700, loaderMass: 1080, loaderHeight: 112,
    midPto: 'none', decks: [], mowerLift: 'with-hitch', backhoe: { availability: 'field-kit', depth: 110 }, rich: true, factoryCab: true, reverser: true,
    selfLevelling: 'option', prices: [47_000, 39_500, 30_000],
  },
];

const hung = { centreDistance: inches(24), hitchCategory: '1' as const };

const tool = (id: string, kind: ImplementDocument['kind'], mass: number, more: Partial<ImplementDocument> = {}): ImplementDocument => ({
  id, name: `The ${id.replaceAll('-', ' ')}`, kind, mass: lb(mass), price: usd(mass * 3), ...more,
});
const behind = (width: number) => ({ width: inches(width), ...hung });

const tools: readonly ImplementDocument[] = [
  tool('forks', 'pallet-forks', 240, { centreDistance: inches(14) }),
  tool('spear', 'bale-spear', 160, { centreDistance: inches(12) }),
  tool('cutter-48', 'rotary-cutter', 420, behind(48)),
  tool('cutter-60', 'rotary-cutter', 560, behind(60)),
  tool('cutter-72', 'rotary-cutter', 720, behind(72)),
  tool('finish-mower-48', 'finish-mower', 350, behind(48)),
  tool('finish-mower-60', 'finish-mower', 440, behind(60)),
  tool('finish-mower-72', 'finish-mower', 560, behind(72)),
  tool('grapple', 'grapple', 300, { centreDistance: inches(16) }),
  ...[48, 60, 72].flatMap((width) => [
    tool(`tiller-${width}`, 'tiller', width * 9, behind(width)),
    tool(`box-blade-${width}`, 'box-blade', width * 8, behind(width)),
    tool(`rear-blade-${width}`, 'rear-blade', width * 5, behind(width)),
    tool(`snow-blower-${width}`, 'snow-blower', width * 8, behind(width)),
    tool(`disk-${width}`, 'disk', width * 8, behind(width)),
  ]),
  tool('digger', 'post-hole-digger', 250, hung),
  tool('chipper-4', 'chipper', 480, { ...hung, capacity: inches(4) }),
  tool('chipper-6', 'chipper', 900, { ...hung, capacity: inches(6) }),
  tool('spreader', 'spreader', 180, { ...hung, fullMass: lb(700) }),
  tool('harrow', 'drag-harrow', 240, behind(72)),
  tool('hay-mower', 'disk-mower', 850, behind(66)),
  tool('ballast-box-500', 'ballast-box', 500, { centreDistance: inches(18) }),
  tool('ballast-box-900', 'ballast-box', 900, { centreDistance: inches(18) }),
  tool('ballast-box-1500', 'ballast-box', 1500, { centreDistance: inches(18) }),
];

/** A unit with nothing open: what a test doesn't say of it is sound. */
export const soundUnit = (id: string, machine: string, more: Partial<UnitDocument> = {}): UnitDocument => ({
  id, machine, year: 2020, yearKind: 'model', hours: 400, meterVerified: true, price: usd(20_000),
  fitted: { loader: true }, tyres: { type: 'industrial' }, rops: { kind: 'folding', certified: true, altered: false },
  seatBelt: true, ptoShield: true, exhaustIntact: true, serviceRecord: true, status: 'available', ...more,
});

const units: readonly UnitDocument[] = [
  soundUnit('blue-barn', 'subcompact-deluxe', { year: 2021, hours: 220, price: usd(19_800), fitted: { loader: true, midPto: true, deck: true }, deck: 'subcompact-deluxe-deck-60' }),
  soundUnit('back-row', 'small-standard', { year: 2016, hours: 640, price: usd(18_900), fitted: { loader: true, midPto: false } }),
  soundUnit('by-the-gate', 'mid-economy', { year: 2023, hours: 130, price: usd(20_700), transmission: 'hydrostatic' }),
  soundUnit('old-faithful', 'mid-deluxe', { year: 2011, hours: 1900, price: usd(21_900), fitted: { loader: true, midPto: false, cab: false }, transmission: 'hydrostatic' }),
];

/** The line-up of the tests: one machine a class and tier, the implements they ask for, and a few units. */
export const catalogueForTests = (): CatalogueDocument => structuredClone({
  format: 'acre-to-axle/catalogue/1', id: 'the-tests', version: '1', asOf: '2026-05-31',
  dealer: {
    name: 'The dealer', currency: 'USD', units: 'us', locale: 'en-US', labourRate: usd(100),
    terms: { en: { guidance: 'Guidance only.' } },
  },
  frames: ['subcompact', 'small', 'mid', 'wide-mid', 'large'].map((id, order) => ({ id, name: id, order: order + 1 })),
  machines: rows.map(machineOf),
  implements: [...tools],
  units: [...units],
});

/** What is undefined is left out: in a document unknown is absent. */
const told = <T extends object>(document: T): T =>
  Object.fromEntries(Object.entries(document).filter(([, value]) => value !== undefined)) as T;

/** A change to a record: what it says anew; `undefined` takes a figure away. */
export type Change<T> = (record: T) => { [K in keyof T]?: T[K] | undefined };

const changed = <T extends { id: string }>(list: readonly T[], id: string, change: Change<T>): T[] => {
  if (!list.some((each) => each.id === id)) throw new Error(`there is no ${id}`);
  return list.map((each) => (each.id === id ? told({ ...each, ...change(each) }) : each));
};

/** The catalogue with one machine altered. */
export const withMachine = (catalogue: CatalogueDocument, id: string, change: Change<MachineDocument>): CatalogueDocument =>
  ({ ...catalogue, machines: changed(catalogue.machines, id, change) });

/** The catalogue with the only loader of a machine altered. */
export const withLoader = (catalogue: CatalogueDocument, id: string, change: Change<Loader>): CatalogueDocument =>
  withMachine(catalogue, id, ({ loaders = [] }) => ({ loaders: loaders.map((loader) => told({ ...loader, ...change(loader) })) }));

/** The catalogue with one implement altered. */
export const withImplement = (catalogue: CatalogueDocument, id: string, change: Change<ImplementDocument>): CatalogueDocument =>
  ({ ...catalogue, implements: changed(catalogue.implements ?? [], id, change) });

/** The catalogue with other units, or none. */
export const withUnits = (catalogue: CatalogueDocument, ...others: UnitDocument[]): CatalogueDocument => ({ ...catalogue, units: others });

/** A spear for the hitch, which the line-up doesn't list: with it bales that needn't be stacked ride behind. */
export const rearSpear = tool('rear-spear', 'rear-bale-spear', 130, hung);

/** The line-up without a lot: machines are judged as any unit of them might be. */
export const lineUp = () => withUnits(catalogueForTests());
