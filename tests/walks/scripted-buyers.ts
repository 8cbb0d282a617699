/** Ten buyers as they come to the page: what they type and tick, and what they leave at "not sure". */
export interface ScriptedBuyer {
  name: string;
  story: string;
  /** Language and units set on the element, and how wide the screen is. */
  lang?: 'de' | 'es';
  units?: 'metric';
  screen?: number;
  /** Seconds he may read where three minutes aren't reached: as long as he takes, so that it grows no longer. */
  seconds?: number;
  /** By field: the text typed, the option chosen, or all that are ticked. A question of which none is named is answered "not sure". */
  answers: Readonly<Record<string, string | readonly string[]>>;
}

export const notSure = 'not sure';

export const scriptedBuyers: readonly ScriptedBuyer[] = [
  {
    name: 'lawn', story: 'Mows one acre around the house, and nothing else.',
    answers: {
      tasks: ['mow-lawn'], 'tasks.must': ['mow-lawn'], 'land.mown': '1 ac', 'land.obstacles': 'some', 'tasks.mow-lawn.hours': '1 h 30', 'tasks.mow-lawn.perYear': '25',
      'land.slope': 'flat', 'land.ground': 'firm', 'land.overhead': 'open', 'drivers.least': 'new', 'drivers.under18': 'no', 'drivers.limits': 'none', 'storage.kind': 'garage',
      'storage.doorWidth': '8 ft', 'storage.doorHeight': '7 ft', 'storage.depth': '20 ft', 'land.gate': '6 ft', more: ['drive'], 'budget.limit': '15,000', 'budget.firm': 'no',
      'comfort.drive': 'pedal', priorities: ['price', 'fit'],
    },
  },
  {
    name: 'brush', story: 'Five acres of brush on rolling ground, answered on a small phone.', screen: 320,
    answers: {
      tasks: ['cut-rough', 'move-loose'], 'tasks.must': ['cut-rough'], 'tasks.cut-rough.growth': 'brush', 'land.rough': '5 acres', 'tasks.move-loose.material': 'gravel',
      'land.slope': 'rolling', 'land.ground': 'soft', 'land.overhead': 'open', 'drivers.least': 'some', 'drivers.under18': 'no', 'drivers.limits': 'none', 'storage.kind': 'outdoors',
      'land.gate': '10\'', more: ['paying'], 'budget.limit': '$22,000', 'budget.firm': 'no', 'budget.service': 'dealer', priorities: ['headroom'],
    },
  },
  {
    name: 'horses', story: 'Four horses: hay bales to stack, an arena to drag, manure to move.', seconds: 245,
    answers: {
      tasks: ['lift-bales', 'drag-arena', 'move-loose'], 'tasks.must': ['lift-bales'], 'tasks.lift-bales.weight': '600 lb', 'tasks.lift-bales.hay': 'dry', 'tasks.lift-bales.height': '5 ft',
      'tasks.lift-bales.perYear': '60', 'tasks.drag-arena.area': '20,000 sq ft', 'tasks.drag-arena.perYear': '100', 'tasks.move-loose.material': 'manure', 'tasks.move-loose.perYear': '50',
      'land.slope': 'flat', 'land.ground': 'soft', 'land.overhead': 'open', 'drivers.least': 'new', 'drivers.under18': 'yes', 'drivers.limits': 'none', 'storage.kind': 'shed',
      'storage.doorWidth': '10 ft', 'storage.doorHeight': '9 ft', 'land.gate': '8 ft', 'haul.how': 'hire', more: ['haul', 'paying', 'use', 'drive', 'extras'], 'budget.limit': '30,000', 'budget.firm': 'no', 'budget.pay': 'loan', 'budget.monthly': '500',
      'budget.hoursPerYear': '120', 'budget.keepYears': '10', 'comfort.drive': 'pedal', 'comfort.extras': ['loaderOff'], 'comfort.must': [], priorities: ['headroom', 'price'],
    },
  },
  {
    name: 'long-drive', story: 'A long gravel drive: snow in winter, ruts in spring.',
    answers: {
      tasks: ['clear-snow', 'grade-drive', 'move-loose'], 'tasks.must': ['clear-snow', 'grade-drive'], 'tasks.clear-snow.length': '1,200 ft', 'tasks.clear-snow.depth': '10"', 'tasks.clear-snow.how': 'either',
      'tasks.clear-snow.perYear': '15', 'tasks.grade-drive.length': '1,200 ft', 'tasks.grade-drive.perYear': '3', 'tasks.move-loose.material': 'gravel', 'tasks.move-loose.volume': '20 yards',
      'land.slope': 'rolling', 'land.ground': 'firm', 'land.overhead': 'open', 'drivers.least': 'some', 'drivers.under18': 'no', 'drivers.limits': 'none', 'storage.kind': 'shed',
      'storage.doorWidth': '9 ft', 'storage.doorHeight': '8 ft', 'storage.depth': '24 ft', more: ['cab'], 'budget.limit': '28,000', 'budget.firm': 'no',
      'comfort.cab': 'heat', 'comfort.must': [], priorities: ['comfort', 'price'],
    },
  },
  {
    name: 'firewood', story: 'Cuts his own firewood and hauls the logs out of the woods.', seconds: 190,
    answers: {
      tasks: ['handle-logs', 'chip-brush'], 'tasks.must': ['handle-logs'], 'tasks.handle-logs.species': 'red-oak', 'tasks.handle-logs.diameter': '14 in', 'tasks.handle-logs.length': '8 ft',
      'tasks.chip-brush.diameter': '4 in', 'tasks.chip-brush.perYear': '4', 'land.slope': 'rolling', 'land.overhead': 'open', 'drivers.least': 'experienced', 'drivers.under18': 'no', 'drivers.limits': 'legs',
      'storage.kind': 'outdoors', 'land.gate': '7 ft', 'haul.how': 'own-trailer', 'haul.trailer.gross': '9,000 lb', 'haul.trailer.deckWidth': '80 in', 'haul.trailer.deckLength': '18 ft',
      more: ['haul', 'drive'], 'budget.limit': '26,000', 'budget.firm': 'no', 'comfort.drive': 'pedal', priorities: ['headroom', 'resale'],
    },
  },
  {
    name: 'garden', story: 'A big garden to till and a fence to set.',
    answers: {
      tasks: ['till-garden', 'bore-holes'], 'tasks.must': ['till-garden'], 'tasks.till-garden.area': '6,000 sq ft', 'tasks.till-garden.perYear': '2', 'tasks.bore-holes.perYear': '3', 'land.slope': 'flat',
      'land.overhead': 'open', 'drivers.least': 'new', 'drivers.under18': 'no', 'drivers.limits': 'none', 'storage.kind': 'shed', 'storage.doorWidth': '7 ft 6', 'storage.doorHeight': '6\'6"',
      'land.gate': '5 1/2 ft', 'budget.limit': '16000', 'budget.firm': 'no', priorities: ['price'],
    },
  },
  {
    name: 'nursery', story: 'Moves pallets and mulch at a plant nursery; reads Spanish.', lang: 'es',
    answers: {
      tasks: ['lift-pallets', 'move-loose'], 'tasks.must': ['lift-pallets'], 'tasks.lift-pallets.weight': '1,000 libras', 'tasks.lift-pallets.height': '4 pies', 'tasks.lift-pallets.perYear': '200',
      'tasks.move-loose.material': 'mulch', 'tasks.move-loose.volume': '20 yardas cubicas', 'land.slope': 'flat', 'land.overhead': 'open', 'drivers.least': 'some', 'drivers.under18': 'no', 'drivers.limits': 'none',
      'storage.kind': 'outdoors', 'land.gate': '8 pies', more: ['drive'], 'budget.limit': '32,000', 'budget.firm': 'no', 'comfort.drive': 'pedal', priorities: ['headroom', 'price'],
    },
  },
  {
    name: 'trenches', story: 'Digs trenches for water lines; the old barn is low.',
    answers: {
      tasks: ['dig', 'move-loose'], 'tasks.must': ['dig'], 'tasks.dig.depth': '6 ft', 'tasks.dig.perYear': '10', 'tasks.move-loose.material': 'topsoil', 'land.slope': 'flat', 'land.overhead': 'open',
      'drivers.least': 'some', 'drivers.under18': 'no', 'drivers.limits': 'none', 'storage.kind': 'shed', 'storage.doorWidth': '8 ft', 'storage.doorHeight': '6\' 8"', 'storage.depth': '25 ft',
      'budget.limit': '25,000', 'budget.firm': 'yes', priorities: ['price', 'headroom'],
    },
  },
  {
    name: 'hay', story: 'Makes hay on four hectares and brings it home on a wagon; reads German and counts in metres.', lang: 'de', units: 'metric',
    answers: {
      tasks: ['make-hay', 'tow-wagon'], 'tasks.must': ['make-hay'], 'tasks.make-hay.area': '4 ha', 'tasks.make-hay.perYear': '2', 'tasks.tow-wagon.weight': '1,5 t', 'tasks.tow-wagon.brakes': 'inertia',
      'tasks.tow-wagon.perYear': '10', 'land.slope': 'rolling', 'land.ground': 'firm', 'land.altitude': '450 Meter', 'land.overhead': 'open', 'drivers.least': 'experienced', 'drivers.under18': 'no',
      'drivers.limits': 'none', 'storage.kind': 'shed', 'storage.doorWidth': '3 m', 'storage.doorHeight': '2,80 m', 'land.gate': '3,5 m', more: ['use', 'drive'], 'budget.limit': '40.000', 'budget.firm': 'no',
      'budget.hoursPerYear': '150', 'budget.keepYears': '12', 'comfort.drive': 'shuttle', 'comfort.must': [], priorities: ['headroom', 'time'],
    },
  },
  {
    name: 'unsure', story: 'Has just bought a few acres and is unsure of nearly everything.',
    answers: {
      tasks: ['mow-lawn', 'move-loose', 'bore-holes'], 'tasks.must': [], 'land.mown': '2', 'land.obstacles': notSure, 'land.slope': notSure, 'drivers.least': 'new', 'drivers.under18': 'no',
      'drivers.limits': notSure, 'storage.kind': 'outdoors', 'budget.limit': '20,000', 'budget.firm': notSure,
    },
  },
];
