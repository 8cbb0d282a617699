import { formulas, seen, seenSecondHand } from '../record.ts';

const statics = { basis: 'derived', from: 'statics, sum of moments' } as const;
const mechanics = { basis: 'derived', from: 'mechanics, power is force times speed' } as const;
const weight = { basis: 'derived', from: 'statics, weight is mass times gravity' } as const;
const geometry = { basis: 'derived', from: 'geometry' } as const;
const density = { basis: 'derived', from: 'the definition of density' } as const;
const counting = { basis: 'derived', from: 'counting' } as const;
const ballastSheet = seenSecondHand('European ballast sheet for mounted implements, printed in implement manuals, makers not named');
const arizona = seen('University of Arizona Cooperative Extension, Agricultural Machinery Management', 'horsepower');

/** The formulas of draft, pulling, towing, loads and loose material. */
export const workFormulas = formulas({
  'draft.tool': {
    kind: 'formula', statement: 'Pull a tool takes that works the soil, by its kind, the soil, speed, width and depth',
    formula: 'draft = soil × (a + b × 3.6 × speed + c × (3.6 × speed)²) × width × 100 × depth',
    source: seenSecondHand('ASABE D497, Agricultural Machinery Management Data, in the metric example of Field and Solie, Introduction to Agricultural Engineering Technology', 'clause 4'),
  },
  'draft.by-width': {
    kind: 'formula', statement: 'Pull a tool takes, by its width', formula: 'draft = width × draft per width',
    source: seen('Iowa State Extension A3-26, Matching Tractor Power and Implement Size', 'width × draft'),
  },
  'draft.by-area': {
    kind: 'formula', statement: 'Pull a plow takes, by the section of soil it turns', formula: 'draft = width × depth × unit draft',
    source: seen('Agricultural engineering lectures, Draft of Plows', 'specific draft × width × depth'),
  },
  'power.drawbar': {
    kind: 'formula', statement: 'Power that pulling takes at the drawbar', formula: 'power = draft × speed', source: mechanics,
  },
  'power.drawbar-left': {
    kind: 'formula', statement: 'Power left at the drawbar, of the PTO power', formula: 'drawbar power = pto power × share', source: arizona,
  },
  'pto.of-flywheel': {
    kind: 'formula', statement: 'PTO power, where only that of the engine is known', formula: 'pto power = flywheel × share', source: arizona,
  },
  'power.wanted': {
    kind: 'formula', statement: 'Rated power that leaves some in hand in a steady job', formula: 'wanted = power / share',
    source: seenSecondHand('A solved problem in sizing a tractor, author not shown', 'need / 0.75'),
  },
  'traction.pull': {
    kind: 'formula', statement: 'Pull the tyres find hold for', formula: 'pull = mass on driven × coefficient × gravity', source: weight,
  },
  'tow.pull': {
    kind: 'formula', statement: 'Pull that tractor and load take uphill; reckoned a little high, which is the safe side',
    formula: 'pull = gravity × (towed × (rolling + grade) + tractor × grade)', source: weight,
  },
  'tow.greatest-mass': {
    kind: 'formula', statement: 'Greatest mass behind a tractor that it can hold and stop', formula: 'towed = tractor × ratio',
    source: seenSecondHand('Operating manuals of farm tractors, makers not named, after ASAE S365', 'towed mass as a multiple of tractor mass'),
  },
  'overturn.rear-pull': {
    kind: 'formula', statement: 'Level pull at which the front axle lifts off, at rest on level ground: to compare machines, never a pull to try',
    formula: 'pull = gravity × front load × wheelbase / height', source: statics,
  },
  'log.mass': {
    kind: 'formula', statement: 'Weight of a log', formula: 'mass = density × π × diameter² × length / 4', source: geometry,
  },
  'bale.volume': {
    kind: 'formula', statement: 'Volume of a round bale', formula: 'volume = π × diameter² × width / 4', source: geometry,
  },
  'mass.of-volume': {
    kind: 'formula', statement: 'Weight of a volume of loose material, hay or snow', formula: 'mass = volume × density', source: density,
  },
  'mass.at-moisture': {
    kind: 'formula', statement: 'Weight with the water in it, from the dry matter', formula: 'mass = dry / (1 − moisture)',
    source: { basis: 'derived', from: 'moisture as a share of the whole' },
  },
  'bucket.heap': {
    kind: 'formula', statement: 'What a bucket holds heaped, above what it holds level',
    formula: 'heap = width × opening² / 8 − opening^3 / 24',
    source: { basis: 'derived', from: 'geometry of a heap with slopes of 2:1, which SAE J742 and ISO 7546 take for loader buckets' },
  },
  'loads.count': {
    kind: 'formula', statement: 'Loads it takes to move a volume, rounded up', formula: 'loads = ⌈ volume / per load ⌉', source: counting,
  },
  'loads.time': {
    kind: 'formula', statement: 'Time for a number of loads', formula: 'time = loads × cycle', source: counting,
  },
  'snow.volume': {
    kind: 'formula', statement: 'Volume of snow on a drive or a yard', formula: 'volume = length × width × depth', source: geometry,
  },
  'lift.least': {
    kind: 'formula', statement: 'The least of the limits of a lift, which is the one that counts', formula: 'least = min of the limits',
    source: { basis: 'derived', from: 'no limit may be passed' },
  },
  'ballast.front': {
    kind: 'formula', statement: 'Front weights that keep the front axle its share with a load on the hitch; none where the sum is below zero',
    formula: 'ballast = (back × behind − bare front × wheelbase + share × tractor × wheelbase) / (ahead + wheelbase)', source: ballastSheet,
  },
  'axle.rear-load': {
    kind: 'formula', statement: 'Load on the rear axle', formula: 'rear axle = total − front axle', source: ballastSheet,
  },
  'ground.pressure': {
    kind: 'formula', statement: 'Mean pressure of a tyre on the ground', formula: 'pressure = inflation + stiffness',
    source: seenSecondHand('An engineer of tyres in an owners’ discussion', 'inflation pressure and 1 to 2 psi more'),
  },
  'haul.tie-downs': {
    kind: 'formula', statement: 'Working load limits that all tie-downs together must come to', formula: 'limits = mass × share',
    source: seenSecondHand('49 CFR 393.106(d)', 'aggregate working load limit at least half of the weight'),
  },
  'haul.tongue': {
    kind: 'formula', statement: 'Load on the tow ball', formula: 'tongue = loaded × share',
    source: seenSecondHand("Vehicle owner's manuals, makers not named", 'tongue weight 10 to 15 %'),
  },
  'slope.turn-force': {
    kind: 'formula', statement: 'How many times stronger a turn pulls outward when it is taken that many times faster', formula: 'force = times²',
    source: { basis: 'derived', from: 'mechanics, speed squared over radius' },
  },
});
