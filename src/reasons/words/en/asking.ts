import type { AskingWords } from '../words.ts';

const list = (items: readonly string[]) =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;

export const asking: AskingWords = {
  language: 'en',
  direction: 'ltr',
  decimalMark: '.',
  list,
  units: {
    acre: { one: 'acre', other: 'acres' }, 'acre/h': 'acres an hour', 'ha/h': 'ha an hour', h: { one: 'hour', other: 'hours' }, hours: { one: 'hour', other: 'hours' }, deg: '°', 'per-year': { one: 'hour a year', other: 'hours a year' }, years: { one: 'year', other: 'years' },
    'm2/s': 'm²/s', m2: 'm²', m3: 'm³', yd3: 'cu yd', 'lb/ft3': 'lb per cu ft', 'kg/m3': 'kg/m³', 'hp/ft': 'hp per ft', percent: '%', months: { one: 'month', other: 'months' }, count: '', 'm/s2': 'm/s²', 'lbf/ft': 'lbf per ft', ft2: 'sq ft', 'gal/h': 'gal an hour', 'L/h': 'L an hour', times: { one: 'time', other: 'times' },
  },
  tasks: {
    'mow-lawn': 'mow a lawn', 'cut-rough': 'cut rough grass or brush', 'lift-bales': 'lift round bales', 'lift-pallets': 'lift pallets',
    'move-loose': 'move gravel, soil or mulch', dig: 'dig with a backhoe', 'till-garden': 'till a garden', 'grade-drive': 'grade a drive',
    'clear-snow': 'clear snow', 'handle-logs': 'handle logs', 'bore-holes': 'bore post holes', 'chip-brush': 'chip brush',
    'carry-implement': 'carry a heavy implement on the hitch', 'tow-wagon': 'tow a wagon', 'spread-spray': 'spread or spray',
    'make-hay': 'make hay', 'drag-arena': 'drag an arena', 'level-field': 'level a field',
  },
  wishes: {
    cab: 'A cab', drive: 'The drive you chose', smoothSeat: 'A suspension seat', tiltWheel: 'A wheel that tilts', cruise: 'Cruise control',
    loaderOff: 'A loader that comes off without tools', levelLift: 'A loader that keeps its load level',
    mowerLiftAlone: 'A mower that lifts on its own lever', exhaust: 'An engine without a particulate filter',
    thirdFunction: 'A third function on the loader',
  },
  criteria: {
    price: 'A low price', time: 'Less time mowing', headroom: 'Strength to spare', fit: 'A good fit for my ground',
    comfort: 'Comfort', resale: 'Keeping its value',
  },
  questions: {
    tasks: {
      ask: 'What do you want to do with the tractor?',
      why: 'Each job asks something of the machine: lift, width, power or a special fitting. We only ask more about the jobs you tick.',
      hint: 'Tick all that apply.',
      fields: { tasks: {
        label: 'Jobs',
        options: {
          'mow-lawn': 'Mow a lawn', 'cut-rough': 'Cut pasture, weeds or brush', 'lift-bales': 'Move or stack round bales', 'lift-pallets': 'Lift pallets',
          'move-loose': 'Move gravel, soil or mulch', 'handle-logs': 'Handle logs', 'clear-snow': 'Clear snow', 'grade-drive': 'Grade a gravel drive',
          'till-garden': 'Till a garden', dig: 'Dig with a backhoe', 'bore-holes': 'Bore post holes', 'chip-brush': 'Chip branches', 'tow-wagon': 'Tow a wagon',
          'spread-spray': 'Spread or spray', 'drag-arena': 'Drag an arena', 'level-field': 'Disk or level a field', 'make-hay': 'Make hay',
          'carry-implement': 'Carry another heavy implement',
        },
        hints: { dig: 'Trenches, footings, stumps', 'make-hay': 'Mow, and bale small squares' },
      } },
    },
    musts: {
      ask: 'Which of these must it do?',
      why: 'A job that is a must rules out every machine that can’t do it. The others only count in the ranking.',
      hint: 'Leave the rest unticked.',
      fields: { 'tasks.must': { label: 'Jobs that are a must' } },
    },
    lawn: {
      ask: 'How much lawn do you mow?',
      why: 'The area, what stands in the way and the time you have tell us how wide a mower you need.',
      fields: {
        'land.mown': { label: 'Lawn', hint: 'For example 2 acres or 0.8 ha' },
        'land.obstacles': {
          label: 'Trees, beds and corners', options: { open: 'Mostly open', some: 'Some', many: 'Many' },
        },
        'tasks.mow-lawn.hours': { label: 'Longest you want one mow to take', hint: 'For example 2 hours or 1 h 30' },
        'tasks.mow-lawn.perYear': { label: 'Mows a year', hint: 'For example 25' },
      },
    },
    deck: {
      ask: 'Where should the mower sit?',
      why: 'A belly mower needs a mid-PTO, and some frames can’t have one. A rear mower runs on any tractor with the power for it.',
      fields: { 'tasks.mow-lawn.deck': {
        label: 'Mower',
        options: { belly: 'Under the belly', rear: 'Behind the tractor', either: 'Either is fine' },
        hints: { belly: 'Turns close to trees', rear: 'Comes off quickly' },
      } },
    },
    rough: {
      ask: 'What grows on the rough ground?',
      why: 'Brush takes more PTO power for each foot of width than grass does.',
      fields: {
        'tasks.cut-rough.growth': { label: 'Growth', options: { grass: 'Grass and weeds', brush: 'Brush and saplings' } },
        'land.rough': { label: 'How much of it', hint: 'For example 5 acres or 2 ha' },
      },
    },
    bales: {
      ask: 'What do your bales weigh, and how high do they go?',
      why: 'A bale sits well ahead of the loader pins, so a loader lifts less of it than its brochure says. The height rules out short loaders.',
      fields: {
        'tasks.lift-bales.weight': { label: 'Heaviest bale', hint: 'A 4 by 4 ft round bale often weighs 400 to 800 lb, a 5 by 5 ft one 800 to 1,500 lb' },
        'tasks.lift-bales.diameter': { label: 'Or its size: how high it stands', hint: 'If you don’t know the weight. For example 5 ft' },
        'tasks.lift-bales.width': { label: 'And how wide it is', hint: 'For example 4 ft' },
        'tasks.lift-bales.hay': { label: 'Hay', options: { dry: 'Dry', wrapped: 'Wrapped and moist' } },
        'tasks.lift-bales.height': { label: 'How high you lift it', hint: 'For example 6 ft, onto a wagon. Leave empty if you only move them' },
        'tasks.lift-bales.perYear': { label: 'Bales a year', hint: 'For example 60' },
      },
    },
    loose: {
      ask: 'What do you move, and how much?',
      why: 'A bucket of wet gravel weighs several times a bucket of mulch. The size of the bucket tells how many trips it takes.',
      fields: {
        'tasks.move-loose.material': { label: 'Material', options: {
          gravel: 'Gravel or stone', sand: 'Sand', topsoil: 'Topsoil', clay: 'Clay', mulch: 'Bark mulch', 'wood-chips': 'Wood chips',
          compost: 'Compost', manure: 'Manure', firewood: 'Firewood',
        } },
        'tasks.move-loose.volume': { label: 'How much at a time', hint: 'For example 20 cu yd, a truckload' },
        'tasks.move-loose.perYear': { label: 'Times a year', hint: 'For example 4' },
      },
    },
    logs: {
      ask: 'How big are your logs?',
      why: 'Green wood is heavy: a red oak log 16 in thick and 8 ft long weighs about 700 lb. We go by the weight of green wood of its kind.',
      fields: {
        'tasks.handle-logs.weight': { label: 'Heaviest piece, if you know it', hint: 'Or give its kind and size below' },
        'tasks.handle-logs.species': { label: 'Kind of wood', options: {
          'american-elm': 'American elm', apple: 'Apple', ash: 'Ash', beech: 'Beech', birch: 'Birch', 'black-cherry': 'Black cherry', 'black-oak': 'Black oak',
          'black-walnut': 'Black walnut', cottonwood: 'Cottonwood', hemlock: 'Eastern hemlock', hickory: 'Hickory', honeylocust: 'Honeylocust',
          'live-oak': 'Live oak', 'red-maple': 'Red maple', 'red-oak': 'Red oak', 'red-spruce': 'Red spruce', tamarack: 'Tamarack',
          'white-oak': 'White oak', 'yellow-poplar': 'Yellow poplar',
        } },
        'tasks.handle-logs.diameter': { label: 'Thickest log, across', hint: 'For example 16 in' },
        'tasks.handle-logs.length': { label: 'Longest piece', hint: 'For example 8 ft' },
        'tasks.handle-logs.height': { label: 'How high you lift it', hint: 'For example 4 ft, onto a trailer' },
        'tasks.handle-logs.perYear': { label: 'Days a year', hint: 'For example 5' },
      },
    },
    pallets: {
      ask: 'What do your pallets weigh, and how high do they go?',
      why: 'The middle of a pallet sits 24 in ahead of the forks, and the forks have their own weight.',
      fields: {
        'tasks.lift-pallets.weight': { label: 'Heaviest pallet', hint: 'Forty 50-lb bags of feed are 2,000 lb' },
        'tasks.lift-pallets.height': { label: 'How high you lift it', hint: 'For example 4 ft, onto a truck' },
        'tasks.lift-pallets.perYear': { label: 'Pallets a year', hint: 'For example 10' },
      },
    },
    digging: {
      ask: 'How deep do you need to dig?',
      why: 'Not every frame takes a backhoe, in some lines only from a certain year, and each digs to its own depth.',
      fields: {
        'tasks.dig.depth': { label: 'Depth', hint: 'For example 6 ft. Call before you dig: buried lines' },
        'tasks.dig.perYear': { label: 'Days a year', hint: 'For example 3' },
      },
    },
    'drive-snow': {
      ask: 'How much snow do you clear?',
      why: 'A blade pushes a light fall. Deep snow wants a blower, and a blower wants PTO power for each foot of its width.',
      fields: {
        'tasks.clear-snow.length': { label: 'Length of the drive', hint: 'For example 400 ft' },
        'tasks.clear-snow.depth': { label: 'Deepest fall you clear at once', hint: 'For example 8 in' },
        'tasks.clear-snow.how': { label: 'With', options: { blade: 'A blade', blower: 'A blower', either: 'Either is fine' } },
        'tasks.clear-snow.perYear': { label: 'Times a year', hint: 'For example 12' },
      },
    },
    'drive-grading': {
      ask: 'How long is your drive?',
      why: 'A box blade full of gravel drags hard. Weight on the driven wheels decides whether they hold, more than power does.',
      fields: {
        'tasks.grade-drive.length': { label: 'Length of the drive', hint: 'For example 600 ft' },
        'tasks.grade-drive.perYear': { label: 'Times a year', hint: 'For example 2' },
      },
    },
    garden: {
      ask: 'How big is the garden?',
      why: 'A tiller takes PTO power for each foot of its width, and should cover the tracks of the tyres.',
      fields: {
        'tasks.till-garden.area': { label: 'Garden', hint: 'For example 2,000 sq ft' },
        'tasks.till-garden.perYear': { label: 'Times a year', hint: 'For example 2' },
      },
    },
    holes: {
      ask: 'How often do you bore post holes?',
      why: 'For a few holes a year a hired digger may cost less than your own.',
      fields: { 'tasks.bore-holes.perYear': { label: 'Days a year', hint: 'For example 3' } },
    },
    chipping: {
      ask: 'How thick are the branches you chip?',
      why: 'A chipper takes more PTO power the thicker the branch it is made for.',
      fields: {
        'tasks.chip-brush.diameter': { label: 'Thickest branch', hint: 'For example 4 in' },
        'tasks.chip-brush.perYear': { label: 'Days a year', hint: 'For example 3' },
      },
    },
    wagon: {
      ask: 'How heavy is the wagon when loaded?',
      why: 'The tractor must hold and stop what it tows, and pull it up your steepest ground. What is towed hangs from the drawbar, never higher.',
      fields: {
        'tasks.tow-wagon.weight': { label: 'Wagon with its load', hint: 'For example 3,000 lb' },
        'tasks.tow-wagon.brakes': { label: 'Brakes on the wagon', options: { none: 'None', inertia: 'Overrun (surge)', hydraulic: 'Hydraulic', air: 'Air' } },
        'tasks.tow-wagon.perYear': { label: 'Days a year', hint: 'For example 20' },
      },
    },
    spreading: {
      ask: 'How much ground do you spread or spray?',
      why: 'A full hopper or tank hangs on the hitch, and its weight takes load off the front wheels.',
      fields: {
        'tasks.spread-spray.area': { label: 'Ground', hint: 'For example 5 acres' },
        'tasks.spread-spray.perYear': { label: 'Times a year', hint: 'For example 3' },
      },
    },
    arena: {
      ask: 'How big is the arena?',
      why: 'A drag pulls lightly; its width decides how long it takes.',
      fields: {
        'tasks.drag-arena.area': { label: 'Arena', hint: 'For example 20,000 sq ft' },
        'tasks.drag-arena.perYear': { label: 'Times a year', hint: 'For example 100' },
      },
    },
    levelling: {
      ask: 'How much field, and what soil?',
      why: 'A disk pulls harder in clay than in sand. Weight on the driven wheels and power at the drawbar decide.',
      fields: {
        'tasks.level-field.area': { label: 'Field', hint: 'For example 3 acres' },
        'land.soil': { label: 'Soil', options: { clay: 'Clay', loam: 'Loam', sand: 'Sand' } },
        'tasks.level-field.perYear': { label: 'Times a year', hint: 'For example 1' },
      },
    },
    hay: {
      ask: 'How much hay do you make?',
      why: 'A disk mower and a baler take more PTO power than most compact tractors have. A baler also needs a heavier tractor.',
      fields: {
        'tasks.make-hay.area': { label: 'Hay ground', hint: 'For example 8 acres' },
        'tasks.make-hay.perYear': { label: 'Cuts a year', hint: 'For example 2' },
      },
    },
    carrying: {
      ask: 'How heavy is the implement?',
      why: 'The hitch lifts less the farther back the weight sits, and the front wheels must keep enough load to steer.',
      fields: {
        'tasks.carry-implement.weight': { label: 'Weight', hint: 'For example 700 lb' },
        'tasks.carry-implement.distance': { label: 'Its middle, behind the hitch ball ends', hint: 'Leave empty if you don’t know: we take 24 in' },
      },
    },
    slope: {
      ask: 'How steep is the steepest ground you will drive on?',
      why: 'Tractors tip over sideways more than any other way. We compare how steady the machines stand; we never say a slope is safe.',
      fields: { 'land.slope': {
        label: 'Slope',
        hint: 'For example 12°. A rise of 2 ft in 10 ft is about 11°',
        options: { flat: 'Flat', rolling: 'Rolling', steep: 'Steep' },
        hints: { flat: 'Less than 10 in up in 10 ft', rolling: 'Up to about 21 in', steep: 'More than that' },
      } },
    },
    ground: {
      ask: 'How firm is your ground?',
      why: 'On soft ground tyres slip and leave ruts, and high up an engine has less power.',
      fields: {
        'land.ground': { label: 'Ground', options: { firm: 'Firm', soft: 'Soft or worked', wet: 'Often wet' } },
        'land.altitude': { label: 'Height above sea level', hint: 'Only if you live high. For example 6,000 ft' },
      },
    },
    overhead: {
      ask: 'Is anything low where you will work?',
      why: 'The roll bar must stand up while you work. A low beam or branch would mean folding it, and that is when people get hurt.',
      fields: { 'land.overhead': {
        label: 'Overhead', hint: 'Height of the lowest thing, for example 8 ft',
        options: { open: 'No, it is open', low: 'Yes: a beam, a roof or branches' },
      } },
    },
    drivers: {
      ask: 'Who will drive it?',
      why: 'New or young drivers need more room for mistakes, and the law has rules for the young.',
      fields: {
        'drivers.least': {
          label: 'The least experienced driver',
          options: { new: 'New to tractors', some: 'Has driven some', experienced: 'Experienced' },
        },
        'drivers.under18': { label: 'Will anyone under 18 drive it?' },
        'drivers.limits': { label: 'Is anything hard for a driver?', options: {
          none: 'No', legs: 'Pedals and clutch', reach: 'Reaching levers and climbing up', both: 'Both',
        } },
      },
    },
    storage: {
      ask: 'Where will it be parked?',
      why: 'A door that is too low or too narrow rules out a machine whatever else it can do.',
      fields: { 'storage.kind': {
        label: 'Parking', options: { garage: 'In a garage', shed: 'In a shed or barn', outdoors: 'Outdoors' },
      } },
    },
    door: {
      ask: 'How big is the door, and how deep is the space?',
      why: 'We check the width over the tyres, the height with the roll bar folded for driving in, and the length with the loader on.',
      hint: 'Measure the clear opening.',
      fields: {
        'storage.doorWidth': { label: 'Door width', hint: 'For example 8 ft' },
        'storage.doorHeight': { label: 'Door height', hint: 'For example 6 ft 6 or 7 ft' },
        'storage.depth': { label: 'Depth inside', hint: 'For example 20 ft' },
      },
    },
    gate: {
      ask: 'How wide is the narrowest gate?',
      why: 'The machine must pass with its mower on and some room on each side.',
      fields: { 'land.gate': { label: 'Narrowest gate or passage', hint: 'For example 6 ft. Leave empty if there is none' } },
    },
    more: {
      ask: 'Is there more we should look at?',
      why: 'Each box brings one or two more questions. What you leave out counts neither for a machine nor against it.',
      hint: 'Tick what matters to you.',
      fields: { more: { label: 'Finer points', options: {
        haul: 'Taking it along on a trailer', paying: 'A sum a month, or service by the dealer', use: 'What it costs over the years', cab: 'A cab', drive: 'Pedal or gears', extras: 'Comfort for the driver',
      } } },
    },
    haul: {
      ask: 'Will you haul it on a trailer?',
      why: 'Tractor, loader and mower together must stay within what the trailer and the truck may carry.',
      fields: { 'haul.how': {
        label: 'Hauling', options: { never: 'No', 'own-trailer': 'Yes, on my own trailer', hire: 'Yes, someone hauls it for me' },
      } },
    },
    trailer: {
      ask: 'What can your trailer and truck carry?',
      why: 'The plates on trailer and truck set the limit. We add up all that travels along.',
      hint: 'Leave out what you don’t know.',
      fields: {
        'haul.trailer.gross': { label: 'Trailer, greatest loaded weight (GVWR)', hint: 'On its plate, for example 7,000 lb' },
        'haul.trailer.empty': { label: 'Trailer, empty', hint: 'For example 1,800 lb' },
        'haul.tongueRating': { label: 'Most the truck’s tow ball may carry', hint: 'In its manual, for example 750 lb' },
        'haul.trailer.brakes': { label: 'Brakes on the trailer', options: { none: 'None', inertia: 'Overrun (surge)', hydraulic: 'Electric or hydraulic', air: 'Air' } },
        'haul.towRating': { label: 'Tow rating of the truck', hint: 'In its manual, for example 7,500 lb' },
        'haul.trailer.deckWidth': { label: 'Width of the deck between the fenders', hint: 'For example 80 in' },
        'haul.trailer.deckLength': { label: 'Length of the deck', hint: 'For example 18 ft' },
      },
    },
    budget: {
      ask: 'What do you want to spend?',
      why: 'We add up the machine, what it needs for your jobs and fitting it. Used prices overlap: a small machine with everything costs as much as a plain bigger one.',
      fields: {
        'budget.limit': { label: 'Limit', hint: 'For example 18,000' },
        'budget.firm': { label: 'Is that a firm limit?' },
      },
    },
    paying: {
      ask: 'How will you pay, and who will look after it?',
      why: 'We work out a loan by the dealer’s own terms, if there are any. If the dealer is to look after it, it should be a make that is serviced there.',
      fields: {
        'budget.pay': { label: 'Payment', options: { cash: 'Cash', loan: 'A loan' } },
        'budget.monthly': { label: 'Most you would pay a month', hint: 'Only for a loan. For example 350' },
        'budget.service': { label: 'Service', options: { self: 'I do it myself', dealer: 'I bring it to the dealer', pickup: 'The dealer fetches it' } },
      },
    },
    use: {
      ask: 'How much will you use it, and how long keep it?',
      why: 'Hours and years tell us how much of its price each machine is likely to keep.',
      fields: {
        'budget.hoursPerYear': { label: 'Hours a year', hint: 'Most owners on small places run 50 to 150' },
        'budget.keepYears': { label: 'Years you will keep it', hint: 'For example 7' },
      },
    },
    cab: {
      ask: 'Do you want a cab?',
      why: 'A factory cab with air conditioning starts only at certain trims. On other frames there may be an aftermarket cab with heat.',
      fields: { 'comfort.cab': {
        label: 'Cab', options: { none: 'No cab', heat: 'With heat', 'heat-and-air': 'With heat and air conditioning' },
      } },
    },
    drive: {
      ask: 'How do you want to drive it?',
      why: 'A pedal is easiest for loader work and mowing. A power reverser loses less power at long, steady work.',
      fields: { 'comfort.drive': {
        label: 'Drive',
        options: { pedal: 'By pedal', shuttle: 'By gears and a lever', any: 'Either is fine' },
        hints: { pedal: 'Hydrostatic', shuttle: 'Power reverser' },
      } },
    },
    extras: {
      ask: 'Which of these would you like?',
      why: 'They come with the richer trims, and some can’t be added later.',
      hint: 'Tick any you care for.',
      fields: { 'comfort.extras': {
        label: 'Extras',
        options: {
          smoothSeat: 'A suspension seat', tiltWheel: 'A wheel that tilts', cruise: 'Cruise control', loaderOff: 'A loader that comes off without tools',
          levelLift: 'A loader that keeps its load level', mowerLiftAlone: 'A mower that lifts on its own lever', exhaust: 'An engine without a particulate filter',
        },
      } },
    },
    'comfort-musts': {
      ask: 'Which of those must it have?',
      why: 'A must rules out every machine without it. The others only count in the ranking.',
      fields: { 'comfort.must': { label: 'Comforts that are a must' } },
    },
    priorities: {
      ask: 'What matters most to you?',
      why: 'We weigh the machines that can do the work by this order, and show you the weights.',
      fields: { priorities: { label: 'Order' } },
    },
  },
  faults: {
    empty: ({ label }) => `${label}: type a number, or choose “Not sure”.`,
    'not-a-number': ({ label, example }) => `${label}: we couldn’t read that as a number. For example: ${example}.`,
    'unknown-unit': ({ label, word, units }) => `${label}: we don’t know the unit “${word}” here. You can use ${units}.`,
    ambiguous: ({ label, one, other }) => `${label}: did you mean ${one} or ${other}? Choose one below.`,
    'too-small': ({ label, from, example }) => `${label}: that looks too small. It must be at least ${from}. For example: ${example}.`,
    'too-big': ({ label, to, example }) => `${label}: that looks too big. It can be at most ${to}. For example: ${example}.`,
    'amount-wanted': ({ label, example }) => `${label}: type the height, for example ${example}, or choose “Not sure”.`,
  },
  wizard: {
    step: (now, atMost) => `Step ${now} of at most ${atMost}`,
    stepOnly: (now) => `Step ${now}`,
    standing: (count, of) => `${count} of ${of} machines still fit`,
    why: 'Why we ask',
    notSure: 'Not sure',
    next: 'Continue',
    back: 'Back',
    seeResult: 'See the result so far',
    backToQuestions: 'Go on with the questions',
    thereIsAProblem: 'There is a problem',
    chooseOne: 'Choose one, or “Not sure”.',
    understood: (amount) => `Read as ${amount}`,
    yes: 'Yes',
    no: 'No',
    place: (rank) => ['Most important', 'Second', 'Third'][rank - 1] ?? `Number ${rank}`,
    nothingChosen: 'Nothing more',
    choose: 'Choose…',
    unitsUs: 'feet and pounds',
    unitsMetric: 'metres and kilograms',
    unitsLabel: 'Units',
    languageLabel: 'Language',
    moneyHint: (currency) => `in ${currency}`,
    startAgain: 'Start again',
    undoStartAgain: 'Bring my answers back',
    loading: 'Loading the line-up…',
    skipped: {
      'one-left': (machines) => `Not asked: only ${machines} can still fit, so there is nothing to put in order.`,
      'same-order': () => 'Not asked: whatever you put first, the same machines come first in the same order.',
      'met-anyway': () => 'Not asked: every machine here has what you wish for or can be given it, so making it a must changes nothing.',
    },
    catalogueMissing: 'The line-up can’t be loaded right now. Please call or write to the dealer, or try again later.',
    catalogueFaulty: 'The line-up has a fault, so we can’t use it. Please call or write to the dealer.',
    catalogueEmpty: 'The dealer lists no machine right now. Please call or write to the dealer.',
    tryAgain: 'Try again',
  },
};
