/**
 * The catalogue: a dealer's line-up and lot. The single definition of `acre-to-axle/catalogue/1`;
 * the published JSON Schema is generated from it. Every figure is optional: absent means unknown.
 */
import { amount, id, measure, money, share, year } from '../documents/parts.ts';
import * as z from '../zod.ts';

export const catalogueFormat = 'acre-to-axle/catalogue/1';

const text = z.string().check(z.minLength(1));
const day = z.string().check(z.regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/));
const optional = z.optional;
const labourHours = optional(z.number().check(z.minimum(0)));

export const tiers = ['economy', 'standard', 'deluxe'] as const;
export const availabilities = ['fitted', 'option', 'field-kit', 'aftermarket', 'none', 'unknown'] as const;
export const availability = z.enum(availabilities);

/** What a sales tax may be on: the machine with the parts put on it, fitting, implements, delivery, fees. */
export const taxables = ['machine', 'fitting', 'implements', 'delivery', 'fees'] as const;
export type Taxable = (typeof taxables)[number];

/** How a machine can have a thing, over which years, and what it adds. */
const fitting = {
  availability,
  years: optional(z.strictObject({ from: optional(year), to: optional(year) })),
  mass: optional(measure('mass')),
  price: optional(money),
  labourHours,
};
const feature = z.strictObject(fitting);

const loader = z.strictObject({
  id,
  name: text,
  ...fitting,
  ratings: z.array(
    z.strictObject({
      ahead: amount('length'),
      height: optional(measure('length')),
      bucketOn: optional(z.boolean()),
      load: measure('mass'),
    }),
  ),
  fullHeight: optional(measure('length')),
  breakout: optional(measure('force')),
  pinsAhead: optional(measure('length')),
  bucketMass: optional(measure('mass')),
  /** What the bucket holds, heaped; or struck, with its width and opening, from which the heap follows. */
  bucketVolume: optional(measure('volume')),
  bucketStruck: optional(measure('volume')),
  bucketWidth: optional(measure('length')),
  bucketOpening: optional(measure('length')),
  detaching: optional(z.enum(['quick', 'unbolted'])),
  hydraulicCouplers: optional(z.boolean()),
  selfLevelling: optional(availability),
});

const deck = z.strictObject({
  id,
  ...fitting,
  width: measure('length'),
  lift: optional(z.enum(['with-hitch', 'independent'])),
});

const cab = z.strictObject({
  id,
  ...fitting,
  heat: z.boolean(),
  airConditioning: z.boolean(),
});

export const features = [
  'suspensionSeat',
  'tiltWheel',
  'cruise',
  'armrests',
  'telescopingDraftLinks',
  'thirdFunction',
] as const;

export const machine = z.strictObject({
  id,
  name: text,
  make: text,
  frame: id,
  tier: z.enum(tiers),
  line: optional(id),
  years: z.strictObject({ from: year, to: optional(year), meant: z.enum(['model', 'build']) }),

  tyres: optional(
    z.array(
      z.strictObject({
        type: z.enum(['turf', 'industrial', 'agricultural']),
        size: optional(text),
        fill: optional(z.enum(['none', 'liquid'])),
        wheelSetting: optional(text),
        widthOverRear: measure('length'),
        inflation: optional(measure('pressure')),
        /** Mass the liquid adds where both rear tyres are filled. */
        fillMass: optional(measure('mass')),
        /** What the two front and the two rear tyres may carry. */
        frontLimit: optional(measure('mass')),
        rearLimit: optional(measure('mass')),
      }),
    ),
  ),
  lengthWithLoader: optional(measure('length')),
  length: optional(measure('length')),
  height: optional(
    z.strictObject({
      ropsUp: optional(measure('length')),
      ropsFolded: optional(measure('length')),
      cab: optional(measure('length')),
    }),
  ),
  wheelbase: optional(measure('length')),
  frontTrack: optional(measure('length')),
  rearTrack: optional(measure('length')),
  frontPivotHeight: optional(measure('length')),
  groundClearance: optional(measure('length')),
  turningRadius: optional(measure('length')),
  drivenWheels: optional(z.literal([2, 4])),
  differentialLock: optional(z.boolean()),

  mass: optional(measure('mass')),
  frontAxleShare: optional(share),
  centreOfMassHeight: optional(
    z.strictObject({ value: measure('length'), source: text }),
  ),
  grossMass: optional(measure('mass')),
  frontAxleLimit: optional(measure('mass')),
  rearAxleLimit: optional(measure('mass')),
  towedMass: optional(measure('mass')),

  engine: optional(
    z.strictObject({
      power: optional(measure('power')),
      aspiration: optional(z.enum(['natural', 'turbo'])),
      ptoPower: optional(measure('power')),
      fuel: optional(z.enum(['diesel', 'petrol', 'electric'])),
    }),
  ),
  exhaust: optional(z.enum(['none', 'catalyst', 'particulate-filter', 'filter-and-fluid'])),
  noiseAtEarDecibels: optional(z.number().check(z.minimum(0))),
  seatVibration: optional(measure('acceleration')),

  hitch: optional(
    z.strictObject({
      category: optional(z.enum(['0', '1', '1-limited', '2', '3'])),
      lift610: optional(measure('mass')),
    }),
  ),
  drawbar: optional(z.boolean()),
  rearPto: optional(z.strictObject({ speeds: z.array(measure('rotation')) })),
  midPto: optional(z.strictObject({ ...fitting, speed: optional(measure('rotation')) })),
  decks: optional(z.array(deck)),
  loaders: optional(z.array(loader)),
  attachmentInterface: optional(text),
  backhoe: optional(z.strictObject({
    ...fitting,
    digDepth: optional(measure('length')),
    /** Its centre of mass behind the rear axle, folded for the road. */
    centreBehind: optional(measure('length')),
  })),
  transmissions: optional(
    z.array(
      z.strictObject({
        ...fitting,
        kind: z.enum(['hydrostatic', 'power-reverser', 'gear']),
        ranges: optional(z.int()),
      }),
    ),
  ),
  cabs: optional(z.array(cab)),
  suspensionSeat: optional(feature),
  tiltWheel: optional(feature),
  cruise: optional(feature),
  armrests: optional(feature),
  telescopingDraftLinks: optional(feature),
  thirdFunction: optional(feature),
  hydraulics: optional(
    z.strictObject({ flow: optional(measure('flow')), remotes: optional(z.int()) }),
  ),
  notTogether: optional(z.array(z.tuple([text, text]))),
  rops: optional(
    z.strictObject({ kind: z.enum(['fixed', 'folding', 'cab', 'none']), certified: optional(z.boolean()) }),
  ),

  listPrice: optional(z.strictObject({ price: money, year })),
  typicalPrices: optional(
    z.array(
      z.strictObject({
        age: z.number().check(z.minimum(0)),
        hours: z.number().check(z.minimum(0)),
        price: money,
      }),
    ),
  ),
  partsSupport: optional(text),
  axleHousing: optional(z.enum(['cast-iron', 'aluminium'])),
});

export const implementKinds = [
  'pallet-forks', 'bale-spear', 'rear-bale-spear', 'grapple', 'rotary-cutter', 'finish-mower', 'flail-mower',
  'tiller', 'box-blade', 'rear-blade', 'landscape-rake', 'disk', 'plough', 'cultivator', 'post-hole-digger',
  'chipper', 'snow-blower', 'spreader', 'sprayer', 'drag-harrow', 'disk-mower', 'baler', 'ballast-box', 'wagon',
] as const;

export type ImplementKind = (typeof implementKinds)[number];

export const implement = z.strictObject({
  id,
  name: text,
  kind: z.enum(implementKinds),
  width: optional(measure('length')),
  mass: optional(measure('mass')),
  centreDistance: optional(measure('length')),
  hitchCategory: optional(z.enum(['0', '1', '2', '3'])),
  ptoPower: optional(measure('power')),
  ptoSpeed: optional(measure('rotation')),
  hydraulicFlow: optional(measure('flow')),
  /** The thickest it takes: a branch, a hole. */
  capacity: optional(measure('length')),
  /** With its hopper or tank full. */
  fullMass: optional(measure('mass')),
  attachmentInterface: optional(text),
  price: optional(money),
  labourHours,
});

export const fittedItems = [
  'loader', 'midPto', 'deck', 'backhoe', 'cab', ...features, 'selfLevelling',
] as const;

const unit = z.strictObject({
  id,
  machine: id,
  year: optional(year),
  /** `serial`: read from the serial number by the maker's list, so it is the year its machine's years mean. */
  yearKind: optional(z.enum(['model', 'build', 'sale', 'serial'])),
  serial: optional(text),
  hours: optional(z.number().check(z.minimum(0))),
  meterVerified: optional(z.boolean()),
  price: optional(money),
  priceDate: optional(day),
  listedOn: optional(day),
  soldOn: optional(day),
  soldFor: optional(money),
  fitted: optional(z.partialRecord(z.enum(fittedItems), z.boolean())),
  loader: optional(id),
  deck: optional(id),
  cab: optional(id),
  transmission: optional(z.enum(['hydrostatic', 'power-reverser', 'gear'])),
  attachments: optional(z.array(id)),
  tyres: optional(
    z.strictObject({
      type: optional(z.enum(['turf', 'industrial', 'agricultural'])),
      wear: optional(share),
      liquid: optional(z.boolean()),
    }),
  ),
  rops: optional(
    z.strictObject({
      kind: z.enum(['fixed', 'folding', 'cab', 'none', 'unknown']),
      certified: optional(z.boolean()),
      altered: optional(z.boolean()),
    }),
  ),
  seatBelt: optional(z.boolean()),
  ptoShield: optional(z.boolean()),
  exhaustIntact: optional(z.boolean()),
  previousUse: optional(text),
  serviceRecord: optional(z.boolean()),
  warranty: optional(text),
  recallOpen: optional(z.boolean()),
  lienOpen: optional(z.boolean()),
  imported: optional(z.boolean()),
  notes: optional(text),
  photo: optional(z.string().check(z.regex(/^https:\/\//))),
  location: optional(text),
  status: optional(z.enum(['available', 'held', 'sold'])),
});

const terms = z.strictObject({ guidance: text, privacy: optional(text), finance: optional(text) });

export const catalogue = z.strictObject({
  format: z.literal(catalogueFormat),
  id,
  version: optional(text),
  asOf: day,
  dealer: z.strictObject({
    name: text,
    phone: optional(text),
    email: optional(text),
    address: optional(text),
    url: optional(z.string().check(z.regex(/^https?:\/\//))),
    currency: z.string().check(z.regex(/^[A-Z]{3}$/)),
    units: z.enum(['us', 'metric']),
    locale: text,
    labourRate: optional(money),
    delivery: optional(z.strictObject({
      perDistance: money, per: measure('length'), radius: optional(measure('length')),
      /** Within it delivery costs nothing; beyond it the whole way is charged. */
      freeWithin: optional(measure('length')),
    })),
    fees: optional(money),
    taxShare: optional(share),
    /** What the tax is on, by the rules of his place; where he doesn't say, all but delivery and fees. */
    taxed: optional(z.array(z.enum(taxables)).check(z.minLength(1))),
    makesServiced: optional(z.array(text)),
    serviceRadius: optional(measure('length')),
    finance: optional(z.array(z.strictObject({ annualRate: share, months: z.int(), depositShare: share }))),
    terms: optional(z.record(z.string(), terms)),
    /** What buyers are shown only where the dealer switches it on: it sets his own prices beside each other. */
    shows: optional(z.strictObject({ owningComparison: optional(z.boolean()), askingContext: optional(z.boolean()) })),
  }),
  frames: z.array(z.strictObject({ id, name: text, order: z.int() })).check(z.minLength(1)),
  machines: z.array(machine).check(z.minLength(1)),
  implements: optional(z.array(implement)),
  units: optional(z.array(unit)),
  rules: optional(
    z.record(z.string(), z.union([z.number(), z.strictObject({ value: z.number(), unit: text })])),
  ),
});

export type CatalogueDocument = z.infer<typeof catalogue>;
export type MachineDocument = CatalogueDocument['machines'][number];
export type UnitDocument = z.infer<typeof unit>;
export type ImplementDocument = z.infer<typeof implement>;
