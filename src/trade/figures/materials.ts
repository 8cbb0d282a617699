import { commonPractice, figures, seen, seenSecondHand } from '../record.ts';

/** Printed as cubic metres that hold 8 tonnes; a tonne a cubic metre is 1,686 lb/yd³. */
const haulage = (where: string) => seen('Methvin, Estimating Production Rates, Vehicle Capacity', where);
const saturated = (where: string) => seenSecondHand('Bulk densities measured at saturation, materials yard not named', where);
const green = seenSecondHand('US National Park Service, Safety for Tree Workers, weight table for green logs, as reprinted in an implement manual');

export const materials = figures({
  'bulk.gravel': {
    statement: 'Weight of a loose cubic yard of gravel, taken wet and with sand in it',
    value: 3400, unit: 'lb/yd3', kind: 'rule-of-thumb', source: haulage('sand and gravel, wet, 8 t in 3.96 m³ loose'), valid: [2400, 3600],
  },
  'bulk.sand': {
    statement: 'Weight of a loose cubic yard of sand, taken wet',
    value: 3100, unit: 'lb/yd3', kind: 'rule-of-thumb', source: haulage('sand, wet, 8 t in 4.35 m³ loose'), valid: [2400, 3500],
  },
  'bulk.topsoil': {
    statement: 'Weight of a loose cubic yard of topsoil, taken wet',
    value: 2700, unit: 'lb/yd3', kind: 'rule-of-thumb', source: haulage('earth, wet excavated, 8 t in 5.00 m³ loose'), valid: [1600, 3000],
  },
  'bulk.clay': {
    statement: 'Weight of a loose cubic yard of clay, taken wet',
    value: 2800, unit: 'lb/yd3', kind: 'rule-of-thumb', source: haulage('clay, wet excavated, 8 t in 4.82 m³ loose'), valid: [2400, 3400],
  },
  'bulk.mulch': {
    statement: 'Weight of a cubic yard of bark or wood mulch, taken wet; dry it may be half of that',
    value: 1000, unit: 'lb/yd3', kind: 'rule-of-thumb', source: seenSecondHand('A landscape yard’s calculator, yard not named', 'mulch about 1,000 lb'), valid: [400, 1200],
  },
  'bulk.wood-chips': {
    statement: 'Weight of a cubic yard of green wood chips',
    value: 700, unit: 'lb/yd3', kind: 'rule-of-thumb', source: commonPractice, valid: [400, 1000],
  },
  'bulk.compost': {
    statement: 'Weight of a cubic yard of compost, taken as wet as it can be; well finished it is nearer 1,200 lb',
    value: 1724, unit: 'lb/yd3', kind: 'rule-of-thumb', source: saturated('compost, 1,724 lb'), valid: [700, 1800],
  },
  'bulk.manure': {
    statement: 'Weight of a cubic yard of cattle manure; horse manure with bedding is about half of that',
    value: 1700, unit: 'lb/yd3', kind: 'rule-of-thumb', valid: [700, 1800],
    source: seen('Northeast Organic Farming Association, soil handbook, appendix A, Conversion Factors', 'manures other than horse and broiler, 1,700 lb a cubic yard'),
  },
  'bulk.firewood': {
    statement: 'Weight of a cubic yard of green split hardwood, thrown loose: a cord of 6,000 lb fills about 180 cubic feet so',
    value: 900, unit: 'lb/yd3', kind: 'rule-of-thumb', source: commonPractice, valid: [400, 1300],
  },
  'snow.density.settled': {
    statement: 'Density of snow that has settled under its own weight',
    value: 18.7, unit: 'lb/ft3', kind: 'rule-of-thumb', valid: [10, 31],
    source: seenSecondHand('A general page on snow, author not shown', 'settles to about 30 % of water'),
  },
  'log.apple': {
    statement: 'Density of an apple log, green',
    value: 55, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [55, 55],
  },
  'log.ash': {
    statement: 'Density of an ash log, green',
    value: 48, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [48, 48],
  },
  'log.beech': {
    statement: 'Density of a beech log, green',
    value: 54, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [54, 54],
  },
  'log.birch': {
    statement: 'Density of a birch log, green',
    value: 57, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [57, 57],
  },
  'log.black-cherry': {
    statement: 'Density of a black cherry log, green',
    value: 45, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [45, 45],
  },
  'log.cottonwood': {
    statement: 'Density of a cottonwood log, green',
    value: 49, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [49, 49],
  },
  'log.american-elm': {
    statement: 'Density of an American elm log, green',
    value: 54, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [54, 54],
  },
  'log.hickory': {
    statement: 'Density of a hickory log, green',
    value: 64, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [64, 64],
  },
  'log.honeylocust': {
    statement: 'Density of a honeylocust log, green',
    value: 61, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [61, 61],
  },
  'log.red-maple': {
    statement: 'Density of a red maple log, green',
    value: 50, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [50, 50],
  },
  'log.black-oak': {
    statement: 'Density of a black oak log, green',
    value: 62, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [62, 62],
  },
  'log.live-oak': {
    statement: 'Density of a live oak log, green',
    value: 76, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [76, 76],
  },
  'log.red-oak': {
    statement: 'Density of a red oak log, green',
    value: 63, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [63, 63],
  },
  'log.white-oak': {
    statement: 'Density of a white oak log, green',
    value: 62, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [62, 62],
  },
  'log.yellow-poplar': {
    statement: 'Density of a yellow poplar log, green',
    value: 38, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [38, 38],
  },
  'log.black-walnut': {
    statement: 'Density of a black walnut log, green',
    value: 58, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [58, 58],
  },
  'log.hemlock': {
    statement: 'Density of an eastern hemlock log, green',
    value: 50, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [50, 50],
  },
  'log.red-spruce': {
    statement: 'Density of a red spruce log, green',
    value: 34, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [34, 34],
  },
  'log.tamarack': {
    statement: 'Density of a tamarack log, green',
    value: 47, unit: 'lb/ft3', kind: 'published-figure', source: green, valid: [47, 47],
  },
  'log.unknown': {
    statement: 'Density of a green log of a kind the buyer does not know: the heavy end of common hardwood, which is hickory',
    value: 64, unit: 'lb/ft3', kind: 'safety-floor', safer: 'more', source: green, valid: [64, 90],
  },
});
