import { tiers } from '../../catalogue/schema.ts';
import { fitting } from './fitting.ts';
import { amount, choice, id, money, text, year, yesNo, type Heading } from './heading.ts';
import { loaderHeadings } from './loader.ts';

const row = { ifBad: 'row' } as const;
const needed = { needed: true, ...row } as const;
const length = amount('length');
const mass = amount('mass');

const identity: readonly Heading[] = [
  { field: 'id', heading: 'id', takes: id, example: 'rill-plus', also: ['machine id', 'machine', 'maschine', 'maquina', 'code'], ...needed },
  { field: 'name', heading: 'name', takes: text, example: 'Rill Plus', also: ['machine name', 'model', 'modell', 'modele', 'modelo', 'bezeichnung'], ...needed },
  { field: 'make', heading: 'make', takes: text, example: 'Millrace', also: ['maker', 'brand', 'manufacturer', 'hersteller', 'marke', 'marque', 'marca', 'fabricante'], ...needed },
  { field: 'frame', heading: 'frame', takes: id, example: 'subcompact', also: ['frame size', 'size', 'size class', 'baugrosse'], ...needed },
  { field: 'tier', heading: 'tier', takes: choice(...tiers), example: 'deluxe', also: ['trim', 'trim level', 'ausstattung'], ...needed },
  { field: 'line', heading: 'line', takes: id, example: 'burdock', also: ['series'], ...row },
  { field: 'years.from', heading: 'from year', takes: year, example: '2018', also: ['years from', 'first year', 'year from'], ...needed },
  { field: 'years.to', heading: 'to year', takes: year, example: '2022', also: ['years to', 'last year', 'year to'], ...row },
  { field: 'years.meant', heading: 'years are', takes: choice('model', 'build'), example: 'model', also: ['year kind', 'years meant', 'which year'], ...needed },
];

const measures: readonly Heading[] = [
  { field: 'lengthWithLoader', heading: 'length with loader', takes: length, example: '126 in' },
  { field: 'length', heading: 'length', takes: length, example: '96.5 in', also: ['overall length', 'length without loader', 'lange', 'longueur', 'longitud'] },
  { field: 'height.ropsUp', heading: 'height ROPS up', takes: length, example: '84.5 in', also: ['height', 'ROPS height', 'height with ROPS'] },
  { field: 'height.ropsFolded', heading: 'height ROPS folded', takes: length, example: '67 in', also: ['ROPS folded height', 'folded height'] },
  { field: 'height.cab', heading: 'height with cab', takes: length, example: '88 in', also: ['height cab', 'cab height'] },
  { field: 'wheelbase', heading: 'wheelbase', takes: length, example: '56.6 in', also: ['wheel base', 'radstand', 'empattement', 'batalla'] },
  { field: 'frontTrack', heading: 'front track', takes: length, example: '35.7 in', also: ['track front'] },
  { field: 'rearTrack', heading: 'rear track', takes: length, example: '37.5 in', also: ['track rear'] },
  { field: 'frontPivotHeight', heading: 'front pivot height', takes: length, example: '15.1 in', also: ['front axle pivot height'] },
  { field: 'groundClearance', heading: 'ground clearance', takes: length, example: '6.7 in', also: ['clearance', 'bodenfreiheit', 'garde au sol'] },
  { field: 'turningRadius', heading: 'turning radius', takes: length, example: '8.3 ft', also: ['turn radius', 'wenderadius'] },
  { field: 'drivenWheels', heading: 'driven wheels', takes: { ...choice('2', '4'), numbers: true }, example: '4', also: ['wheels driven', 'wheel drive', 'drive wheels'] },
  { field: 'differentialLock', heading: 'differential lock', takes: yesNo, example: 'yes', also: ['diff lock'] },
  { field: 'mass', heading: 'mass', takes: mass, example: '1385 lb', also: ['weight', 'bare weight', 'bare mass', 'operating weight', 'gewicht', 'poids', 'peso'] },
  { field: 'frontAxleShare', heading: 'front axle share', takes: { as: 'share' }, example: '0.4', also: ['share on front axle', 'front weight share'] },
  { field: 'centreOfMassHeight.value', heading: 'centre of mass height', takes: length, example: '23 in', also: ['center of mass height', 'centre of gravity height', 'center of gravity height'] },
  { field: 'centreOfMassHeight.source', heading: 'centre of mass height source', takes: text, example: 'tilt table', also: ['center of mass height source'] },
  { field: 'grossMass', heading: 'permitted gross mass', takes: mass, example: '2960 lb', also: ['gross mass', 'gross weight', 'permitted gross weight', 'gvwr'] },
  { field: 'frontAxleLimit', heading: 'front axle limit', takes: mass, example: '1760 lb', also: ['front axle capacity', 'permitted front axle load'] },
  { field: 'rearAxleLimit', heading: 'rear axle limit', takes: mass, example: '2240 lb', also: ['rear axle capacity', 'permitted rear axle load'] },
  { field: 'towedMass', heading: 'towed mass', takes: mass, example: '1450 lb', also: ['towing capacity', 'tow rating', 'towed weight'] },
];

const drive: readonly Heading[] = [
  { field: 'engine.power', heading: 'engine power', takes: amount('power'), example: '19.7 hp', also: ['power', 'horsepower', 'hp', 'engine hp', 'gross power', 'leistung', 'motorleistung', 'puissance', 'potencia'] },
  { field: 'engine.aspiration', heading: 'aspiration', takes: choice('natural', 'turbo'), example: 'natural', also: ['engine aspiration'] },
  { field: 'engine.ptoPower', heading: 'PTO power', takes: amount('power'), example: '14.9 hp', also: ['PTO hp', 'PTO horsepower', 'zapfwellenleistung'] },
  { field: 'engine.fuel', heading: 'fuel', takes: choice('diesel', 'petrol', 'electric'), example: 'diesel', also: ['engine fuel', 'fuel type', 'kraftstoff', 'carburant', 'combustible'] },
  { field: 'exhaust', heading: 'exhaust', takes: choice('none', 'catalyst', 'particulate-filter', 'filter-and-fluid'), example: 'particulate-filter', also: ['exhaust aftertreatment', 'aftertreatment'] },
  { field: 'noiseAtEarDecibels', heading: 'noise at the ear (dB(A))', takes: { as: 'decibels' }, example: '85.5', also: ['noise', 'noise at ear', 'noise level'] },
  { field: 'seatVibration', heading: 'seat vibration', takes: amount('acceleration'), example: '0.98 m/s2', also: ['vibration at the seat'] },
  { field: 'hitch.category', heading: 'hitch category', takes: choice('0', '1', '1-limited', '2', '3'), example: '1', also: ['three-point hitch category', 'category', 'kategorie'] },
  { field: 'hitch.lift610', heading: 'hitch lift 610 mm behind', takes: mass, example: '585 lb', also: ['hitch lift', 'hitch lift 24 in behind', 'hitch lift at 24 in', 'hitch lift at 610 mm', 'hitch lift capacity', 'three-point lift', '3-point lift', '3pt lift', 'hubkraft'] },
  { field: 'drawbar', heading: 'drawbar', takes: yesNo, example: 'yes', also: ['draw bar'] },
  { field: 'rearPto.speeds', heading: 'rear PTO speeds', takes: { as: 'list', each: amount('rotation') }, example: '540; 1000', also: ['rear PTO speed', 'rear PTO', 'PTO speeds', 'PTO speed'] },
  { field: 'hydraulics.flow', heading: 'hydraulic flow', takes: amount('flow'), example: '3.3 gpm', also: ['implement flow', 'hydraulic flow to implements', 'pump flow'] },
  { field: 'hydraulics.remotes', heading: 'hydraulic remotes', takes: { as: 'whole' }, example: '1', also: ['remotes', 'remote valves', 'rear remotes'] },
  { field: 'attachmentInterface', heading: 'attachment interface', takes: text, example: 'pin-on', also: ['loader interface', 'quick attach', 'coupler'] },
  { field: 'rops.kind', heading: 'ROPS', takes: choice('fixed', 'folding', 'cab', 'none'), example: 'folding', also: ['ROPS kind', 'roll-over protection'], ...row },
  { field: 'rops.certified', heading: 'ROPS certified', takes: yesNo, example: 'yes', ...row },
  { field: 'axleHousing', heading: 'rear axle housing', takes: choice('cast-iron', 'aluminium'), example: 'cast-iron', also: ['axle housing'] },
  { field: 'notTogether', heading: 'not together', takes: { as: 'pairs' }, example: 'backhoe + hitch', also: ['cannot be on together', 'not at once'], ...row },
  { field: 'listPrice.price', heading: 'list price', takes: money, example: '17350', also: ['new list price', 'listenpreis', 'neupreis'] },
  { field: 'listPrice.year', heading: 'list price year', takes: year, example: '2026', also: ['year of list price'] },
  { field: 'partsSupport', heading: 'parts support', takes: text, example: 'wear parts on the shelf', also: ['parts'] },
];

const tyres: readonly Heading[] = [
  { field: 'tyres[].type', heading: 'tyre type', takes: choice('turf', 'industrial', 'agricultural'), example: 'industrial', also: ['tire type', 'tyre', 'tire'], ifBad: 'part' },
  { field: 'tyres[].size', heading: 'tyre size', takes: text, example: 'rear 25 in tall', also: ['tire size'] },
  { field: 'tyres[].fill', heading: 'tyre fill', takes: choice('none', 'liquid'), example: 'none', also: ['tire fill'], ifBad: 'part' },
  { field: 'tyres[].wheelSetting', heading: 'tyre wheel setting', takes: text, example: 'as delivered', also: ['tire wheel setting'] },
  { field: 'tyres[].widthOverRear', heading: 'tyre width over rear', takes: length, example: '49 in', also: ['tire width over rear', 'width', 'overall width', 'width over rear tyres', 'width over rear tires', 'breite', 'largeur', 'anchura'], ifBad: 'part' },
  { field: 'tyres[].inflation', heading: 'tyre inflation', takes: amount('pressure'), example: '14 psi', also: ['tire inflation', 'tyre pressure', 'tire pressure'] },
  { field: 'tyres[].fillMass', heading: 'tyre fill mass', takes: mass, example: '165 lb', also: ['tire fill mass', 'tire fill weight'] },
  { field: 'tyres[].frontLimit', heading: 'tyre front limit', takes: mass, example: '1640 lb', also: ['tire front limit'] },
  { field: 'tyres[].rearLimit', heading: 'tyre rear limit', takes: mass, example: '2170 lb', also: ['tire rear limit'] },
];

const others: readonly Heading[] = [
  ...fitting('midPto', 'mid PTO'),
  { field: 'midPto.speed', heading: 'mid PTO speed', takes: amount('rotation'), example: '2080 rpm' },
  { field: 'decks[].id', heading: 'deck id', takes: id, example: 'rill-deck-51', ifBad: 'part' },
  { field: 'decks[].width', heading: 'deck width', takes: length, example: '51 in', also: ['belly deck width', 'mower deck width', 'belly deck', 'mower deck'], ifBad: 'part' },
  { field: 'decks[].lift', heading: 'deck lift', takes: choice('with-hitch', 'independent'), example: 'with-hitch' },
  ...fitting('decks[]', 'deck'),
  ...fitting('backhoe', 'backhoe'),
  { field: 'backhoe.digDepth', heading: 'backhoe dig depth', takes: length, example: '69 in', also: ['dig depth'] },
  { field: 'backhoe.centreBehind', heading: 'backhoe centre behind axle', takes: length, example: '30 in', also: ['backhoe center behind axle'] },
  { field: 'transmissions[].kind', heading: 'transmission', takes: choice('hydrostatic', 'power-reverser', 'gear'), example: 'hydrostatic', also: ['transmission kind', 'transmission type', 'getriebe', 'transmision'], ifBad: 'part' },
  { field: 'transmissions[].ranges', heading: 'transmission ranges', takes: { as: 'whole' }, example: '2', also: ['ranges'] },
  ...fitting('transmissions[]', 'transmission').map((heading) => ({ ...heading, also: [] })),
  { field: 'cabs[].id', heading: 'cab id', takes: id, example: 'rill-plus-cab', ifBad: 'part' },
  { field: 'cabs[].heat', heading: 'cab heat', takes: yesNo, example: 'yes', also: ['cab heating', 'heat'], ifBad: 'part' },
  { field: 'cabs[].airConditioning', heading: 'cab air conditioning', takes: yesNo, example: 'no', also: ['air conditioning', 'cab air'], ifBad: 'part' },
  ...fitting('cabs[]', 'cab'),
  ...fitting('suspensionSeat', 'suspension seat'),
  ...fitting('tiltWheel', 'tilt wheel'),
  ...fitting('cruise', 'cruise'),
  ...fitting('armrests', 'armrests'),
  ...fitting('telescopingDraftLinks', 'telescoping draft links'),
  ...fitting('thirdFunction', 'third function'),
  { field: 'typicalPrices[].price', heading: 'used price', takes: money, example: '14900', also: ['typical price', 'typical used price'], ifBad: 'part' },
  { field: 'typicalPrices[].age', heading: 'used price age', takes: { as: 'number' }, example: '3', also: ['typical price age'], ifBad: 'part' },
  { field: 'typicalPrices[].hours', heading: 'used price hours', takes: { as: 'hours' }, example: '210', also: ['typical price hours'], ifBad: 'part' },
];

export const machineHeadings: readonly Heading[] = [...identity, ...measures, ...drive, ...tyres, ...loaderHeadings, ...others];
