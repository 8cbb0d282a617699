/**
 * How answers are laid out in a link, version 1. Links made with it are out there: nothing here changes, neither
 * words nor their order. What the answers come to hold besides goes into a layout of its own number.
 */
import { amounts, beside, choice, either, keptBack, number, often, ranked, record, records, seldom, several, usual, yesNo, type Field, type Keys } from './fields.ts';

const mass = amounts('kg', 'lb', 't', 'ton');
const length = amounts('m', 'mm', 'cm', 'km', 'in', 'ft', 'yd', 'mi');
const area = amounts('m2', 'ha', 'acre', 'ft2');
const volume = amounts('m3', 'L', 'gal', 'ft3', 'yd3');
const hours = amounts('s', 'min', 'h')('h', 'h');
const angle = amounts('rad', 'deg')('deg', 'deg');
const percent = amounts('percent')('percent', 'percent');
const power = amounts('W', 'kW', 'hp', 'PS')('hp', 'kW');
const rotation = amounts('1/s', 'rpm')('rpm', 'rpm');
const flow = amounts('m3/s', 'L/min', 'L/h', 'gpm', 'gal/h')('gpm', 'L/min');
const money: Field = { is: 'money', currencies: ['USD', 'EUR', 'CAD', 'GBP', 'AUD', 'NZD', 'CHF', 'MXN'] };

const load = mass('lb', 'kg');
const acres = area('acre', 'ha');
const yards = area('ft2', 'm2');
const far = length('ft', 'm');
const short = length('in', 'cm');
const brakes = choice('none', 'inertia', 'hydraulic', 'air');

const task = (keys: Keys = {}): Keys => ({ must: usual(yesNo), perYear: often(number), ...keys });
const written = (...of: readonly string[]) => either(choice(...of), keptBack);

const tasks: Field = {
  is: 'kinds', key: 'task', of: {
    'mow-lawn': task({ deck: usual(choice('belly', 'rear', 'either')), hours: often(hours) }),
    'cut-rough': task({ growth: usual(choice('grass', 'brush')) }),
    'move-loose': task({
      material: usual(written('gravel', 'sand', 'topsoil', 'clay', 'mulch', 'wood-chips', 'compost', 'manure', 'firewood')),
      volume: often(volume('yd3', 'm3')),
    }),
    'lift-pallets': task({ weight: usual(load), height: often(far) }),
    'lift-bales': task({
      weight: often(load), height: often(far), diameter: often(length('ft', 'cm')), width: often(length('ft', 'cm')), hay: often(choice('dry', 'wrapped')),
    }),
    'handle-logs': task({
      weight: often(load),
      species: often(written(
        'american-elm', 'apple', 'ash', 'beech', 'birch', 'black-cherry', 'black-oak', 'black-walnut', 'cottonwood', 'hemlock', 'hickory',
        'honeylocust', 'live-oak', 'red-maple', 'red-oak', 'red-spruce', 'tamarack', 'white-oak', 'yellow-poplar',
      )),
      diameter: often(short), length: often(far), height: often(far),
    }),
    'clear-snow': task({ length: usual(far), depth: usual(short), how: often(choice('blade', 'blower', 'either')) }),
    'grade-drive': task({ length: usual(far) }),
    'till-garden': task({ area: usual(yards) }),
    dig: task({ depth: usual(far) }),
    'bore-holes': task(),
    'chip-brush': task({ diameter: usual(short) }),
    'tow-wagon': task({ weight: usual(load), brakes: often(brakes) }),
    'spread-spray': task({ area: usual(acres) }),
    'drag-arena': task({ area: usual(yards) }),
    'level-field': task({ area: usual(acres) }),
    'make-hay': task({ area: usual(acres) }),
    'carry-implement': task({ weight: usual(load), distance: often(short) }),
  },
};

const land = record({
  slope: usual(either(choice('flat', 'rolling', 'steep'), angle, percent)),
  overhead: usual(either(choice('open'), far)),
  gate: usual(far),
  ground: often(choice('firm', 'soft', 'wet')),
  obstacles: often(choice('open', 'some', 'many')),
  mown: often(acres),
  rough: often(acres),
  altitude: seldom(far),
  soil: seldom(choice('clay', 'loam', 'sand')),
  area: seldom(acres),
});

const drivers = record({
  least: usual(choice('new', 'some', 'experienced')),
  under18: usual(yesNo),
  limits: usual(choice('none', 'legs', 'reach', 'both')),
  count: seldom(number),
});

const storage = record({
  kind: usual(choice('shed', 'garage', 'outdoors')),
  doorWidth: often(far), doorHeight: often(far), depth: often(far),
});

const budget = record({
  limit: usual(money),
  firm: usual(yesNo),
  pay: seldom(choice('cash', 'loan')),
  monthly: seldom(money),
  service: seldom(choice('self', 'dealer', 'pickup')),
  hoursPerYear: seldom(number),
  keepYears: seldom(number),
  includes: seldom(several('implements', 'delivery', 'tax')),
  tradeIn: seldom(keptBack),
});

const comfort = record({
  cab: often(choice('heat-and-air', 'heat', 'none')),
  drive: often(choice('pedal', 'shuttle', 'any')),
  smoothSeat: often(yesNo), tiltWheel: beside('smoothSeat', yesNo), cruise: beside('smoothSeat', yesNo), loaderOff: beside('smoothSeat', choice('often', 'rarely')),
  levelLift: beside('smoothSeat', yesNo), mowerLiftAlone: beside('smoothSeat', yesNo), exhaust: beside('smoothSeat', choice('no-filter', 'any')),
  must: often(several('cab', 'drive', 'smoothSeat', 'tiltWheel', 'cruise', 'loaderOff', 'levelLift', 'mowerLiftAlone', 'exhaust')),
});

const haul = record({
  how: usual(choice('never', 'own-trailer', 'hire')),
  trailer: often(record({
    gross: usual(load), empty: often(load), brakes: often(brakes), deckWidth: often(short), deckLength: often(far),
  })),
  towRating: often(load),
  tongueRating: seldom(load),
  /** A postal code says where somebody lives. */
  delivery: seldom(either(length('mi', 'km'), keptBack)),
});

const owned = records({
  kind: usual(choice(
    'pallet-forks', 'bale-spear', 'rear-bale-spear', 'grapple', 'rotary-cutter', 'finish-mower', 'flail-mower', 'tiller', 'box-blade', 'rear-blade',
    'landscape-rake', 'disk', 'plough', 'cultivator', 'post-hole-digger', 'chipper', 'snow-blower', 'spreader', 'sprayer', 'drag-harrow', 'disk-mower',
    'baler', 'ballast-box', 'wagon',
  )),
  width: often(short), mass: often(load), centreDistance: seldom(short), hitchCategory: seldom(choice('0', '1', '2', '3')), ptoPower: seldom(power),
  ptoSpeed: seldom(rotation), hydraulicFlow: seldom(flow), capacity: seldom(short), fullMass: seldom(load), price: seldom(money), labourHours: seldom(number),
  id: seldom(keptBack), name: seldom(keptBack), attachmentInterface: seldom(keptBack),
});

export const layout1: Keys = {
  tasks: usual(tasks),
  land: usual(land),
  drivers: usual(drivers),
  storage: usual(storage),
  budget: usual(budget),
  priorities: usual(ranked('price', 'time', 'headroom', 'fit', 'comfort', 'resale')),
  unsure: often(several(
    'tasks', 'musts', 'lawn', 'deck', 'rough', 'bales', 'loose', 'logs', 'pallets', 'digging', 'drive-snow', 'drive-grading', 'garden', 'holes', 'chipping',
    'wagon', 'spreading', 'arena', 'levelling', 'hay', 'carrying', 'slope', 'ground', 'overhead', 'drivers', 'storage', 'door', 'gate', 'budget', 'more',
    'haul', 'trailer', 'paying', 'use', 'cab', 'drive', 'extras', 'comfort-musts', 'priorities',
  )),
  more: often(several('haul', 'paying', 'use', 'cab', 'drive', 'extras')),
  comfort: often(comfort),
  haul: seldom(haul),
  owned: seldom(owned),
};
