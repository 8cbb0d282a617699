import { availabilities } from '../../catalogue/schema.ts';
import { fitting } from './fitting.ts';
import { amount, choice, id, text, yesNo, type Heading } from './heading.ts';

const length = amount('length');
const mass = amount('mass');
const part = { ifBad: 'part' } as const;
const ahead = { as: 'amount', of: 'length', zero: true } as const;

/**
 * A loader has one or two ratings of one height: at the pins and 500 mm ahead of them, as sheets of figures mostly give
 * them, or two others with their distances. Where one of these cells is faulty the loader is left without ratings, for a
 * lift guessed from the other one could be more than it has.
 */
const ratings: readonly Heading[] = [
  { field: 'loaders[].ratings.pins', heading: 'loader lift at pins', takes: mass, example: '515 lb', also: ['loader lift', 'loader lift capacity', 'loader lift at the pins', 'lift at pins', 'loader capacity'], ...part },
  { field: 'loaders[].ratings.ahead500', heading: 'loader lift 500 mm ahead', takes: mass, example: '385 lb', also: ['loader lift at 500 mm', 'loader lift 500 mm forward', 'lift 500 mm ahead'], ...part },
  { field: 'loaders[].ratings.other', heading: 'loader other lift', takes: mass, example: '600 kg', ...part },
  { field: 'loaders[].ratings.otherAhead', heading: 'loader other lift ahead', takes: ahead, example: '800 mm', also: ['loader other lift distance'], ...part },
  { field: 'loaders[].ratings.further', heading: 'loader further lift', takes: mass, example: '500 kg', ...part },
  { field: 'loaders[].ratings.furtherAhead', heading: 'loader further lift ahead', takes: ahead, example: '1000 mm', also: ['loader further lift distance'], ...part },
  { field: 'loaders[].ratings.height', heading: 'loader lift height', takes: length, example: '70.5 in', also: ['loader rating height', 'loader lift measured at height'], ...part },
  { field: 'loaders[].ratings.bucketOn', heading: 'loader lift with bucket', takes: yesNo, example: 'no', also: ['loader lift measured with bucket'], ...part },
];

export const loaderHeadings: readonly Heading[] = [
  { field: 'loaders[].id', heading: 'loader id', takes: id, example: 'rill-loader', ...part },
  { field: 'loaders[].name', heading: 'loader name', takes: text, example: 'Rill loader', also: ['loader model'] },
  ...ratings,
  { field: 'loaders[].fullHeight', heading: 'loader full height', takes: length, example: '70.5 in', also: ['loader height', 'loader lift to height', 'height to pins', 'lift height'] },
  { field: 'loaders[].breakout', heading: 'loader breakout', takes: amount('force'), example: '890 lbf', also: ['breakout force', 'loader breakout force'] },
  { field: 'loaders[].pinsAhead', heading: 'loader pins ahead of front axle', takes: length, example: '38.5 in', also: ['loader pins ahead'] },
  { field: 'loaders[].bucketMass', heading: 'loader bucket mass', takes: mass, example: '109 lb', also: ['loader bucket weight', 'bucket mass', 'bucket weight'] },
  { field: 'loaders[].bucketVolume', heading: 'loader bucket volume', takes: amount('volume'), example: '4.2 ft3', also: ['bucket volume', 'bucket capacity', 'loader bucket heaped volume'] },
  { field: 'loaders[].bucketStruck', heading: 'loader bucket struck volume', takes: amount('volume'), example: '3.4 ft3', also: ['bucket struck volume'] },
  { field: 'loaders[].bucketWidth', heading: 'loader bucket width', takes: length, example: '48 in', also: ['bucket width'] },
  { field: 'loaders[].bucketOpening', heading: 'loader bucket opening', takes: length, example: '18 in', also: ['bucket opening'] },
  { field: 'loaders[].detaching', heading: 'loader detaching', takes: choice('quick', 'unbolted'), example: 'quick', also: ['loader removal'] },
  { field: 'loaders[].hydraulicCouplers', heading: 'loader hydraulic couplers', takes: yesNo, example: 'no' },
  { field: 'loaders[].selfLevelling', heading: 'loader self-levelling', takes: choice(...availabilities), example: 'none', also: ['loader self leveling', 'self-levelling', 'self leveling'] },
  ...fitting('loaders[]', 'loader'),
];
