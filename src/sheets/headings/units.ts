import { fittedItems } from '../../catalogue/schema.ts';
import { choice, id, money, text, year, yesNo, type Heading } from './heading.ts';

const row = { ifBad: 'row' } as const;
const needed = { needed: true, ...row } as const;
const day = { as: 'day' } as const;

const thing: Readonly<Record<(typeof fittedItems)[number], string>> = {
  loader: 'loader', midPto: 'mid PTO', deck: 'deck', backhoe: 'backhoe', cab: 'cab', suspensionSeat: 'suspension seat', tiltWheel: 'tilt wheel',
  cruise: 'cruise', armrests: 'armrests', telescopingDraftLinks: 'telescoping draft links', thirdFunction: 'third function', selfLevelling: 'self-levelling',
};

/**
 * Where a cell of a unit is faulty the cell alone is left out only if the unit earns nothing by that: a price or hours
 * unknown are asked for. What may speak against a unit (a recall, a belt that is gone) is never left open by a slip.
 */
export const unitHeadings: readonly Heading[] = [
  { field: 'id', heading: 'id', takes: id, example: 't-1042', also: ['unit id', 'unit', 'stock number', 'stock no', 'stock', 'lagernummer'], ...needed },
  { field: 'machine', heading: 'machine', takes: id, example: 'rill-plus', also: ['machine id', 'maschine', 'maquina', 'model', 'modell', 'modele', 'modelo'], ...needed },
  { field: 'year', heading: 'year', takes: year, example: '2021', also: ['yr', 'model year', 'baujahr', 'annee', 'ano'] },
  { field: 'yearKind', heading: 'year is', takes: choice('model', 'build', 'sale', 'serial'), example: 'model', also: ['year kind', 'which year'] },
  { field: 'serial', heading: 'serial', takes: text, example: 'number 388 of 2024', also: ['serial number', 'serial no', 'seriennummer', 'numero de serie'] },
  { field: 'hours', heading: 'hours', takes: { as: 'hours' }, example: '74', also: ['hrs', 'engine hours', 'meter hours', 'betriebsstunden', 'stunden', 'heures', 'horas'] },
  { field: 'meterVerified', heading: 'hours verified', takes: yesNo, example: 'yes', also: ['meter verified', 'hour meter verified'] },
  { field: 'price', heading: 'price', takes: money, example: '14250', also: ['asking price', 'preis', 'prix', 'precio'] },
  { field: 'priceDate', heading: 'price of', takes: day, example: '2026-09-14', also: ['price date', 'price as of'] },
  { field: 'listedOn', heading: 'listed on', takes: day, example: '2026-09-14', also: ['listed', 'date listed'] },
  { field: 'soldOn', heading: 'sold on', takes: day, example: '2026-10-03', also: ['date sold'] },
  { field: 'soldFor', heading: 'sold for', takes: money, example: '16200', also: ['sale price', 'sold price'] },
  { field: 'status', heading: 'status', takes: choice('available', 'held', 'sold'), example: 'available', also: ['availability'], ...row },
  ...fittedItems.map((item): Heading => ({ field: `fitted.${item}`, heading: `${thing[item]} fitted`, takes: yesNo, example: 'yes', also: [`has ${thing[item]}`], ...row })),
  { field: 'loader', heading: 'loader id', takes: id, example: 'rill-loader', also: ['loader', 'which loader'], ...row },
  { field: 'deck', heading: 'deck id', takes: id, example: 'rill-deck-51', also: ['deck', 'which deck'], ...row },
  { field: 'cab', heading: 'cab id', takes: id, example: 'rill-plus-cab', also: ['cab', 'which cab'], ...row },
  { field: 'transmission', heading: 'transmission', takes: choice('hydrostatic', 'power-reverser', 'gear'), example: 'hydrostatic', also: ['getriebe', 'transmision'], ...row },
  { field: 'attachments', heading: 'attachments', takes: { as: 'list', each: id }, example: 'grapple; forks-light', also: ['implements', 'attachments included'] },
  { field: 'tyres.type', heading: 'tyre type', takes: choice('turf', 'industrial', 'agricultural'), example: 'industrial', also: ['tire type', 'tyres', 'tires'], ...row },
  { field: 'tyres.wear', heading: 'tyre wear', takes: { as: 'share' }, example: '10 %', also: ['tire wear'], ...row },
  { field: 'tyres.liquid', heading: 'tyres filled', takes: yesNo, example: 'no', also: ['tires filled', 'liquid in tyres', 'liquid in tires', 'loaded tires'], ...row },
  { field: 'rops.kind', heading: 'ROPS', takes: choice('fixed', 'folding', 'cab', 'none', 'unknown'), example: 'folding', also: ['ROPS kind'], ...row },
  { field: 'rops.certified', heading: 'ROPS certified', takes: yesNo, example: 'yes', ...row },
  { field: 'rops.altered', heading: 'ROPS altered', takes: yesNo, example: 'no', ...row },
  { field: 'seatBelt', heading: 'seat belt', takes: yesNo, example: 'yes', also: ['belt'], ...row },
  { field: 'ptoShield', heading: 'PTO shield', takes: yesNo, example: 'yes', also: ['PTO guard'], ...row },
  { field: 'exhaustIntact', heading: 'exhaust intact', takes: yesNo, example: 'yes', also: ['exhaust aftertreatment intact'], ...row },
  { field: 'previousUse', heading: 'previous use', takes: text, example: 'one owner, gravel drive', also: ['history', 'previous owner'] },
  { field: 'serviceRecord', heading: 'service record', takes: yesNo, example: 'yes', also: ['service history'] },
  { field: 'warranty', heading: 'warranty', takes: text, example: 'as it stands', also: ['garantie', 'garantia'] },
  { field: 'recallOpen', heading: 'recall open', takes: yesNo, example: 'no', also: ['open recall'], ...row },
  { field: 'lienOpen', heading: 'lien open', takes: yesNo, example: 'no', also: ['open lien', 'lien'], ...row },
  { field: 'imported', heading: 'imported', takes: yesNo, example: 'no', also: ['not built for this market', 'grey import', 'gray import'], ...row },
  { field: 'notes', heading: 'notes', takes: text, example: 'deck spindles renewed', also: ['note', 'remarks', 'condition', 'description', 'bemerkungen', 'remarques', 'notas'] },
  { field: 'photo', heading: 'photo', takes: { as: 'link' }, example: 'https://example.com/1042.jpg', also: ['photo address', 'photo url', 'image', 'picture'] },
  { field: 'location', heading: 'location', takes: text, example: 'Hollowmere yard', also: ['yard', 'standort', 'lieu', 'ubicacion'] },
];
