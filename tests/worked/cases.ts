import type { WorkedCase } from './worked-case.ts';
import { moneyAndOperator } from './cases/money-and-operator.ts';
import { workAndLoads } from './cases/work-and-loads.ts';

const pm696 = 'Iowa State Extension PM 696 (2001), table of field capacities, printed';
const a324 = 'Iowa State Extension A3-24, table 1, printed';
const aen73 = 'University of Kentucky AEN-73, formula; inputs ours';
const ballastSheet = 'European ballast sheet for mounted implements, printed in implement manuals, second-hand; the sum of moments agrees';
const moments = 'statics, sum of moments';
const d497 = 'ASABE D497.7 clause 6, coefficients second-hand';
const sp811 = 'NIST SP 811 (2008) appendix B.8, from memory';
const geometry = 'geometry';
const practice = 'common practice, no source';

const mowing: WorkedCase[] = [
  { name: 'a 40 ft spreader at 6 mph', formula: 'mow.rate', given: { width: '40 ft', speed: '6 mph', efficiency: 0.7 }, expect: '20.4 acre/h', within: 0.05, source: pm696 },
  { name: 'a 50 ft spreader at 6 mph', formula: 'mow.rate', given: { width: '50 ft', speed: '6 mph', efficiency: 0.7 }, expect: '25.5 acre/h', within: 0.05, source: pm696 },
  { name: 'a 60 ft spreader at 6 mph', formula: 'mow.rate', given: { width: '60 ft', speed: '6 mph', efficiency: 0.68 }, expect: '29.7 acre/h', within: 0.05, source: a324 },
  { name: 'an 80 ft spreader at 12 mph', formula: 'mow.rate', given: { width: '80 ft', speed: '12 mph', efficiency: 0.68 }, expect: '79.1 acre/h', within: 0.05, source: a324 },
  { name: 'a 10 ft manure spreader', formula: 'mow.rate', given: { width: '10 ft', speed: '5 mph', efficiency: 0.63 }, expect: '3.8 acre/h', within: 0.05, source: pm696 },
  { name: 'a 15 ft manure spreader at 5 mph', formula: 'mow.rate', given: { width: '15 ft', speed: '5 mph', efficiency: 0.63 }, expect: '5.7 acre/h', within: 0.05, source: pm696 },
  { name: 'a 15 ft manure spreader at 6 mph', formula: 'mow.rate', given: { width: '15 ft', speed: '6 mph', efficiency: 0.63 }, expect: '6.9 acre/h', within: 0.05, source: pm696 },
  { name: 'a 20 ft manure spreader', formula: 'mow.rate', given: { width: '20 ft', speed: '6 mph', efficiency: 0.63 }, expect: '9.2 acre/h', within: 0.05, source: pm696 },
  { name: 'a 30 ft manure spreader', formula: 'mow.rate', given: { width: '30 ft', speed: '6 mph', efficiency: 0.6 }, expect: '13.1 acre/h', within: 0.05, source: pm696 },
  { name: 'a plow of seven 16 in bottoms', formula: 'mow.rate', given: { width: '112 in', speed: '5 mph', efficiency: 0.85 }, expect: '4.8 acre/h', within: 0.05, source: pm696 },
  { name: 'a plow of eight 18 in bottoms', formula: 'mow.rate', given: { width: '144 in', speed: '5 mph', efficiency: 0.85 }, expect: '6.2 acre/h', within: 0.05, source: pm696 },
  // 3 × 5 × 0.8 / 8.25
  { name: 'a 5 ft cutter at 3 mph', formula: 'mow.rate', given: { width: '5 ft', speed: '3 mph', efficiency: 0.8 }, expect: '1.4545 acre/h', within: 0.0001, source: aen73 },
  // 8 × 2 × 0.8 / 10
  { name: 'a 2 m mower at 8 km/h', formula: 'mow.rate', given: { width: '2 m', speed: '8 km/h', efficiency: 0.8 }, expect: '1.28 ha/h', within: 0.001, source: 'Srivastava and others, Engineering Principles of Agricultural Machines (ASABE 2006), eq. 15.1, formula; inputs ours' },
  // 4 × 5 × 0.9 × 0.85 / 8.25
  { name: 'a tenth of a 5 ft deck lost to overlap', formula: 'mow.rate', given: { width: '5 ft', speed: '4 mph', efficiency: 0.85, overlap: 0.1 }, expect: '1.8545 acre/h', within: 0.0001, source: `${aen73}; the overlap is ${practice}` },
  { name: '10 acres at 1.4545 acres an hour', formula: 'mow.hours', given: { area: '10 acre', rate: '1.454545 acre/h', labour: 1 }, expect: '6.875 h', within: 0.001, source: aen73 },
  // 6.875 × 1.1
  { name: 'the same, with the time to fuel and to get there', formula: 'mow.hours', given: { area: '10 acre', rate: '1.454545 acre/h', labour: 1.1 }, expect: '7.5625 h', within: 0.001, source: 'University of Illinois farmdoc, labour at 1.1 times machine hours, formula; inputs ours' },
];

const power: WorkedCase[] = [
  // Power for each foot: 6 mph × 200 lb/ft × soil factor 1.5 / 375 = 4.8 hp/ft
  { name: 'a 24 ft tandem disk on firm soil', formula: 'pto.power-for-width', given: { width: '24 ft', perWidth: '4.8 hp/ft' }, expect: '115 hp', within: 0.3, source: 'Iowa State Extension A3-26 (2007), printed' },
  { name: 'a 5 ft rotary cutter at 5 hp a foot', formula: 'pto.power-for-width', given: { width: '60 in', perWidth: '5 hp/ft' }, expect: '25 hp', within: 0.001, source: practice },
  { name: 'a 2 m flail mower at 10 kW a metre', formula: 'pto.power-for-width', given: { width: '2 m', perWidth: '10 kW/m' }, expect: '20 kW', within: 0.001, source: 'ASABE D497.7, rotary power, from memory' },
  // 30 × (1 − 5 × 0.03)
  { name: '30 hp without a turbocharger at 5,000 ft', formula: 'pto.at-altitude', given: { rated: '30 hp', altitude: '5000 ft', perStep: 0.03, step: '1000 ft', free: '0 ft' }, expect: '25.5 hp', within: 0.001, source: practice },
  // 30 × (1 − 2 × 0.01)
  { name: '30 hp with a turbocharger at 7,000 ft', formula: 'pto.at-altitude', given: { rated: '30 hp', altitude: '7000 ft', perStep: 0.01, step: '1000 ft', free: '5000 ft' }, expect: '29.4 hp', within: 0.001, source: practice },
  { name: '30 hp with a turbocharger below its free altitude', formula: 'pto.at-altitude', given: { rated: '30 hp', altitude: '4000 ft', perStep: 0.01, step: '1000 ft', free: '5000 ft' }, expect: '30 hp', within: 0.001, source: practice },
];

const lifting: WorkedCase[] = [
  // The pivot lies 60 in behind the pins: 1,000 × (60 + 19.685) = F × (60 + 28), so F = 905.5; at the pins 79,685 / 60 = 1,328.083.
  { name: 'pallet forks, load centre 24 in ahead of a face 4 in ahead of the pins', formula: 'loader.lift-at', given: { atPins: '1328.083 lb', ahead: '1000 lb', by: '500 mm', distance: '28 in' }, expect: '905.5 lb', within: 0.1, source: `${moments}; the change of linkage and the tilt of the forks are left out` },
  // 600 × 1.0 = 400 × 1.5 = 600 kg·m, so the pivot lies 1 m behind the pins; 600 / 1.8 = 333.33
  { name: '600 kg at the pins and 400 kg ahead, at 0.8 m', formula: 'loader.lift-at', given: { atPins: '600 kg', ahead: '400 kg', by: '500 mm', distance: '0.8 m' }, expect: '333.333 kg', within: 0.001, source: moments },
  { name: '600 kg at the pins and 400 kg half a metre ahead: 600 a = 400 (a + 0.5) gives an arm of 1 m', formula: 'loader.two-ratings', given: { atPins: '600 kg', ahead: '400 kg', by: '500 mm' }, expect: '1 m', within: 1e-9, source: moments },
  { name: 'the second rating comes back where it was measured', formula: 'loader.lift-at', given: { atPins: '1300 lb', ahead: '950 lb', by: '500 mm', distance: '500 mm' }, expect: '950 lb', within: 0.001, source: moments },
  { name: 'the first rating comes back at the pins', formula: 'loader.lift-at', given: { atPins: '1300 lb', ahead: '950 lb', by: '500 mm', distance: '0 mm' }, expect: '1300 lb', within: 0.001, source: moments },
  // Arm: 0.5 × 0.7 / 0.3 = 1.16667 m. 600 × 1.16667 = 700 kg·m; 700 / 1.96667 = 355.93
  { name: 'one rating of 600 kg at the pins, seven tenths of it 500 mm ahead, at 0.8 m', formula: 'loader.one-rating', given: { rating: '600 kg', ratedAt: '0 mm', share: 0.7, by: '500 mm', distance: '0.8 m' }, expect: '355.932 kg', within: 0.001, source: `${moments}; the seven tenths are ${practice}` },
  // The same arm: 420 × (1.16667 + 0.5) = 700 kg·m, so 700 / 1.96667 again
  { name: 'one rating of 420 kg 500 mm ahead, at 0.8 m', formula: 'loader.one-rating', given: { rating: '420 kg', ratedAt: '500 mm', share: 0.7, by: '500 mm', distance: '0.8 m' }, expect: '355.932 kg', within: 0.001, source: `${moments}; the seven tenths are ${practice}` },
  // 600 × 1.0 / 1.25 = 480 kg·m; the forks take 80 × 1.3 = 104; 376 / 1.7 = 221.18
  { name: 'forks of 80 kg at 0.3 m, a load at 0.7 m, a quarter in hand', formula: 'loader.greatest-load', given: { atPins: '600 kg', ahead: '400 kg', by: '500 mm', attachment: '80 kg', attachmentAhead: '0.3 m', loadAhead: '0.7 m', margin: 0.25 }, expect: '221.176 kg', within: 0.001, source: `${moments}; the quarter in hand is ${practice}` },
  // 79,685 lb·in; the forks take 240 × (60 + 14) = 17,760; (79,685 − 17,760) / 88 = 703.69
  { name: 'the forks of the first case weigh 240 lb, nothing kept in hand', formula: 'loader.greatest-load', given: { atPins: '1328.083 lb', ahead: '1000 lb', by: '500 mm', attachment: '240 lb', attachmentAhead: '14 in', loadAhead: '28 in', margin: 0 }, expect: '703.69 lb', within: 0.1, source: moments },
  { name: 'an attachment that takes all the lift leaves nothing', formula: 'loader.greatest-load', given: { atPins: '600 kg', ahead: '400 kg', by: '500 mm', attachment: '500 kg', attachmentAhead: '0.3 m', loadAhead: '0.7 m', margin: 0.25 }, expect: '0 kg', within: 0.001, source: moments },
  // 500 × (0.7 + 0.61) = 655 kg·m; 655 / (0.7 + 0.9) = 409.375
  { name: '500 kg at 610 mm, at 0.9 m behind the ball ends', formula: 'hitch.lift-at', given: { rated: '500 kg', ratedAt: '610 mm', distance: '0.9 m', link: '0.7 m' }, expect: '409.375 kg', within: 0.001, source: moments },
  { name: 'nearer than 610 mm the rating stands and no more', formula: 'hitch.lift-at', given: { rated: '500 kg', ratedAt: '610 mm', distance: '0.2 m', link: '0.7 m' }, expect: '500 kg', within: 0.001, source: 'ISO 730 rates at 610 mm, from memory' },
];

const bales: WorkedCase[] = [
  { name: 'a 5 by 5 ft bale is 1,100 lb', formula: 'bale.size', given: { mass: '1100 lb', density: '11.2 lb/ft3' }, expect: '5 ft', within: 0.003, source: 'Texas A&M AgriLife Extension E-319 (2012), printed' },
  { name: 'a 4 by 4 ft bale of that density is 563 lb', formula: 'bale.size', given: { mass: '563 lb', density: '11.2 lb/ft3' }, expect: '4 ft', within: 0.003, source: 'Texas A&M AgriLife Extension E-319 (2012), printed' },
  { name: 'a 5 by 5 ft bale holds about 98 cubic feet', formula: 'bale.size', given: { mass: '98 lb', density: '1 lb/ft3' }, expect: '5 ft', within: 0.01, source: 'D. Hancock, US Dairy Forage Research Center, in a farms.com news item, printed there, second-hand' },
  // π/4 × 5² × 5 = 98.17 ft³; × 9 = 883.6
  { name: 'loose at 9 lb a cubic foot it is about 880 lb', formula: 'bale.size', given: { mass: '883.6 lb', density: '9 lb/ft3' }, expect: '5 ft', within: 0.001, source: 'the same news item, second-hand' },
  // 98.17 × 12 = 1,178.1
  { name: 'tight at 12 lb a cubic foot it is nearly 1,200 lb', formula: 'bale.size', given: { mass: '1178.1 lb', density: '12 lb/ft3' }, expect: '5 ft', within: 0.001, source: 'the same news item, second-hand' },
];

/** A tractor of 1,400 kg, 560 in front and 840 behind, on a wheelbase of 1.65 m; a hitch load sits 0.75 + 0.50 m behind the axle. */
const axles: WorkedCase[] = [
  // 18.35 % of 1,400 kg: fails the sheet's 20 %
  { name: 'an implement of 400 kg behind, nothing in front', formula: 'axle.front-load', given: { bareFront: '560 kg', front: '0 kg', ahead: '1.2 m', back: '400 kg', behind: '1.25 m', wheelbase: '1.65 m' }, expect: '256.97 kg', within: 0.01, source: ballastSheet },
  // 20.00 % of 1,400 kg
  { name: 'the same with 13.333 kg of front ballast', formula: 'axle.front-load', given: { bareFront: '560 kg', front: '13.333 kg', ahead: '1.2 m', back: '400 kg', behind: '1.25 m', wheelbase: '1.65 m' }, expect: '280 kg', within: 0.001, source: ballastSheet },
  // Rear 840 − 500 × 1.30 / 1.65 = 446.06; front 1,900 − 446.06
  { name: '500 kg on the loader, nothing behind', formula: 'axle.front-load', given: { bareFront: '560 kg', front: '500 kg', ahead: '1.3 m', back: '0 kg', behind: '1.25 m', wheelbase: '1.65 m' }, expect: '1453.94 kg', within: 0.01, source: moments },
  // Rear 45 % of 1,400 = 630; front 2,004.66 − 630
  { name: 'the same with the 104.66 kg that the sheet wants behind', formula: 'axle.front-load', given: { bareFront: '560 kg', front: '500 kg', ahead: '1.3 m', back: '104.66 kg', behind: '1.25 m', wheelbase: '1.65 m' }, expect: '1374.66 kg', within: 0.01, source: ballastSheet },
  // Rear 840 − 900 × 1.30 / 1.65 = 130.91, only 5.69 % of 2,300; front 2,300 − 130.91
  { name: '900 kg on the loader, nothing behind', formula: 'axle.front-load', given: { bareFront: '560 kg', front: '900 kg', ahead: '1.3 m', back: '0 kg', behind: '1.25 m', wheelbase: '1.65 m' }, expect: '2169.09 kg', within: 0.01, source: moments },
  // Rear 45 % of 1,400 = 630; front 2,583.97 − 630
  { name: 'the same with the 283.97 kg that the sheet wants behind', formula: 'axle.front-load', given: { bareFront: '560 kg', front: '900 kg', ahead: '1.3 m', back: '283.97 kg', behind: '1.25 m', wheelbase: '1.65 m' }, expect: '1953.97 kg', within: 0.01, source: ballastSheet },
  // (0.2 × 2,300 − 840 + 900 × 1.30 / 1.65) / (2.90 / 1.65 − 0.2); the rear is then 502.26 of 2,511.28
  { name: 'rear ballast for 900 kg on the loader and a fifth on the rear axle', formula: 'ballast.rear', given: { tractor: '1400 kg', rear: '840 kg', front: '900 kg', ahead: '1.3 m', wheelbase: '1.65 m', behind: '1.25 m', share: 0.2 }, expect: '211.28 kg', within: 0.01, source: `${moments}; the fifth is from a front-loader manual, second-hand` },
  // Rear 446.06 of 1,900 is 23.5 % already
  { name: 'no rear ballast for 500 kg', formula: 'ballast.rear', given: { tractor: '1400 kg', rear: '840 kg', front: '500 kg', ahead: '1.3 m', wheelbase: '1.65 m', behind: '1.25 m', share: 0.2 }, expect: '0 kg', within: 0.001, source: moments },
  { name: 'a tractor with 500 kg on its loader', formula: 'mass.aboard', given: { tractor: '1400 kg', front: '500 kg' }, expect: '1900 kg', within: 0.001, source: 'sum' },
  { name: 'the same on a trailer of 700 kg', formula: 'haul.behind', given: { tractor: '1400 kg', front: '500 kg', trailer: '700 kg' }, expect: '2600 kg', within: 0.001, source: 'sum' },
];

const slopes: WorkedCase[] = [
  // All the mass on the rear axle makes it the rigid box atan(T / 2h), which is too kind.
  { name: 'the rigid box: track 48 in, centre of mass 28 in up', formula: 'slope.tip-angle', given: { rearTrack: '48 in', rearShare: 1, height: '28 in', pivot: '16 in' }, expect: '40.6 deg', within: 0.01, source: moments },
  // The line from tyre to pivot is 16 × 0.4 = 6.4 in up beside the centre of mass and 24 × 0.6 = 14.4 in out: atan(14.4 / 21.6)
  { name: 'the same on a pivoted front axle that carries 40 %', formula: 'slope.tip-angle', given: { rearTrack: '48 in', rearShare: 0.6, height: '28 in', pivot: '16 in' }, expect: '33.69 deg', within: 0.01, source: moments },
  { name: '17 %', formula: 'slope.from-percent', given: { percent: 17 }, expect: '9.65 deg', within: 0.01, source: 'geometry; an owner prints 9.6, cut short' },
  { name: '1 in 2', formula: 'slope.from-percent', given: { percent: 50 }, expect: '26.57 deg', within: 0.01, source: 'geometry; an owner prints 26.6' },
  { name: '25 %', formula: 'slope.from-percent', given: { percent: 25 }, expect: '14.04 deg', within: 0.01, source: geometry },
  { name: '30.57 % is 17 degrees', formula: 'slope.from-percent', given: { percent: 30.57 }, expect: '17 deg', within: 0.01, source: 'geometry; an owner prints 30.5, cut short' },
  { name: '26.8 % is the 15 degrees of ride-on mowers', formula: 'slope.from-percent', given: { percent: 26.8 }, expect: '15 deg', within: 0.01, source: 'ride-on mower safety sheets, makers not named, second-hand' },
];

const place: WorkedCase[] = [
  { name: 'a 60 in machine with 6 in on each side', formula: 'place.passage', given: { width: '60 in', room: '6 in' }, expect: '6 ft', within: 0.001, source: geometry },
  { name: 'a ROPS of 90 in with 6 in above', formula: 'place.headroom', given: { height: '90 in', room: '6 in' }, expect: '8 ft', within: 0.001, source: geometry },
  { name: 'a machine of 12 ft with 18 in to walk round', formula: 'place.length', given: { length: '12 ft', room: '18 in' }, expect: '162 in', within: 0.001, source: geometry },
];

const strips: WorkedCase[] = [
  // 400 × 10
  { name: 'a drive of 400 ft, 10 ft wide', formula: 'area.strip', given: { length: '400 ft', width: '10 ft' }, expect: '4000 ft2', within: 0.001, source: geometry },
  // A furlong by a chain is an acre: 660 × 66
  { name: 'a furlong by a chain', formula: 'area.strip', given: { length: '660 ft', width: '66 ft' }, expect: '1 acre', within: 1e-9, source: 'definition of the acre' },
];

const money: WorkedCase[] = [
  { name: 'over 150 hp: 15 years at 400 hours', formula: 'resale.remaining', given: { age: 15, hoursPerYear: 400, c1: 0.9756, c2: 0.1187, c3: 0.0019 }, expect: 0.2284, within: 0.0001, source: d497 },
  { name: 'the same beside the 23 % that Iowa prints', formula: 'resale.remaining', given: { age: 15, hoursPerYear: 400, c1: 0.976, c2: 0.119, c3: 0.0019 }, expect: 0.23, within: 0.005, source: 'Iowa State Extension A3-29, printed; coefficients from memory' },
  { name: '80 to 150 hp: 10 years at 400 hours', formula: 'resale.remaining', given: { age: 10, hoursPerYear: 400, c1: 0.9421, c2: 0.0997, c3: 0.0008 }, expect: 0.3731, within: 0.0001, source: d497 },
  { name: 'the same beside the 37 % that Iowa prints', formula: 'resale.remaining', given: { age: 10, hoursPerYear: 400, c1: 0.942, c2: 0.1, c3: 0.0008 }, expect: 0.37, within: 0.005, source: 'Iowa State Extension, printed; coefficients from memory' },
  { name: 'under 80 hp: 10 years at 200 hours, beside the 36 % of a printed table', formula: 'resale.remaining', given: { age: 10, hoursPerYear: 200, c1: 0.981, c2: 0.093, c3: 0.0058 }, expect: 0.36, within: 0.015, source: 'Iowa State Extension, table for tractors of 30 to 79 hp, as a student transcribed it, second-hand' },
  { name: 'under 80 hp: 10 years at 400 hours, beside its 32 %', formula: 'resale.remaining', given: { age: 10, hoursPerYear: 400, c1: 0.981, c2: 0.093, c3: 0.0058 }, expect: 0.32, within: 0.015, source: 'Iowa State Extension, table for tractors of 30 to 79 hp, as a student transcribed it, second-hand' },
  { name: 'under 80 hp: 5 years at 100 hours', formula: 'resale.remaining', given: { age: 5, hoursPerYear: 100, c1: 0.981, c2: 0.093, c3: 0.0058 }, expect: 0.5113, within: 0.0001, source: `${d497}; no printed result to compare` },
  { name: 'under 80 hp: 10 years at 100 hours', formula: 'resale.remaining', given: { age: 10, hoursPerYear: 100, c1: 0.981, c2: 0.093, c3: 0.0058 }, expect: 0.3955, within: 0.0001, source: `${d497}; no printed result to compare` },
  { name: 'under 80 hp: 15 years at 100 hours', formula: 'resale.remaining', given: { age: 15, hoursPerYear: 100, c1: 0.981, c2: 0.093, c3: 0.0058 }, expect: 0.3168, within: 0.0001, source: `${d497}; no printed result to compare` },
];

const barronAndBarrett = 'Barron and Barrett (1996), from memory; exact';
const weights: WorkedCase[] = [
  ...[0.6111, 0.2778, 0.1111].map((weight, index) => ({ rank: index + 1, ranks: 3, weight })),
  ...[0.5208, 0.2708, 0.1458, 0.0625].map((weight, index) => ({ rank: index + 1, ranks: 4, weight })),
].map(({ rank, ranks, weight }) => ({
  name: `rank ${rank} of ${ranks}`, formula: 'weights.rank-order-centroid', given: { ranks, rank }, expect: weight, within: 0.0001, source: barronAndBarrett,
}));

const unit = (from: string, expect: string, within: number, source: string): WorkedCase =>
  ({ name: `${from} is ${expect}`, formula: 'units', given: { amount: from }, expect, within, source });

const units: WorkedCase[] = [
  unit('1 lb', '0.45359237 kg', 1e-12, sp811),
  unit('1 in', '25.4 mm', 1e-12, sp811),
  unit('1 ft', '0.3048 m', 1e-12, sp811),
  unit('1 mi', '1609.344 m', 1e-9, sp811),
  unit('1 acre', '4046.8564224 m2', 1e-6, 'NIST SP 811, from memory; of the international foot, not the survey foot'),
  unit('1 acre', '43560 ft2', 1e-6, 'general units page, second-hand'),
  unit('2.4710538 acre', '1 ha', 1e-6, sp811),
  unit('1 hp', '745.69987158 W', 1e-6, '550 ft·lbf/s, second-hand; NIST SP 811, from memory'),
  unit('1 PS', '735.49875 W', 1e-6, '75 kgf·m/s, from memory'),
  unit('1 gal', '3.785411784 L', 1e-9, '231 cubic inches, second-hand; NIST SP 811, from memory'),
  unit('1 gpm', '3.785411784 L/min', 1e-9, sp811),
  unit('1 psi', '6894.757293 Pa', 1e-6, sp811),
  unit('1 bar', '14.5037738 psi', 1e-6, sp811),
  unit('1 lbf', '4.4482216152605 N', 1e-12, sp811),
  unit('1 ton', '907.18474 kg', 1e-9, sp811),
  unit('1 t', '2204.62262 lb', 1e-5, sp811),
  unit('1 ft3', '0.028316846592 m3', 1e-12, sp811),
  unit('1 yd3', '0.764554857984 m3', 1e-12, sp811),
  unit('1 lb/ft3', '16.0184634 kg/m3', 1e-6, sp811),
  unit('1 lb/ft3', '27 lb/yd3', 1e-9, geometry),
  unit('1 mph', '0.44704 m/s', 1e-12, sp811),
  unit('1 mph', '1.609344 km/h', 1e-9, sp811),
  unit('180 deg', '3.14159265 rad', 1e-8, geometry),
  unit('60 rpm', '1 1/s', 1e-12, 'definition'),
  // 88 ft in 12 s = 7.3333 ft/s = 2.2352 m/s
  unit('5 mph', '2.2352 m/s', 1e-9, 'University of Kentucky AEN-73 and Iowa State A3-24, 12 s for 88 ft, printed'),
  unit('10 kW/m', '4.087 hp/ft', 0.001, 'ASABE D497.7, flail mower, from memory'),
  unit('5 kW/m', '2.044 hp/ft', 0.001, 'ASABE D497.7, disk mower, from memory'),
  unit('70 kg/m3', '4.37 lb/ft3', 0.01, 'American Meteorological Society Glossary, fresh snow 0.07 of water, formula'),
  unit('150 kg/m3', '9.36 lb/ft3', 0.01, 'American Meteorological Society Glossary, fresh snow 0.15 of water, formula'),
  // 200 × 10 × 8/12
  unit('1333.333 ft3', '49.38 yd3', 0.01, geometry),
  unit('20 hp', '14.914 kW', 0.001, sp811),
];

export const cases: readonly WorkedCase[] = [
  ...mowing, ...power, ...lifting, ...bales, ...axles, ...slopes, ...place, ...strips, ...money, ...weights, ...units, ...workAndLoads, ...moneyAndOperator,
];
