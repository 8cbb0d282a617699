import type { MachineDocument, UnitDocument } from '../catalogue/schema.ts';
import { atLeast, atMost } from '../units/compare.ts';
import { quantity, toSi, type Unit } from '../units/quantity.ts';
import type { Check, Figure } from './plausible.ts';

const hp: Unit = 'hp';
const pinsOnly = (ahead: { value: number }) => ahead.value === 0;
/** The distance ahead of the pins at which sheets of figures give the second lift. */
const ratedAhead = quantity('length', 500, 'mm');
const isRatedAhead = (ahead: { value: number; unit: string }) => {
  const si = toSi(ahead as { value: number; unit: Unit }) as number;
  return atLeast(si, ratedAhead) && atMost(si, ratedAhead);
};

const money = (price: { value: number; currency: string } | undefined): Figure | undefined => price && { value: price.value, unit: price.currency };

/** What of a machine is held against bounds; what comes first is doubted first. */
export function checksOfMachine({ engine, mass, hitch, height, length, wheelbase, rearTrack, grossMass, backhoe, ...rest }: MachineDocument): Check[] {
  const power = { field: 'engine.power', figure: engine?.power };
  const bare = { field: 'mass', figure: mass };
  const { tyres = [], loaders = [], decks = [] } = rest;
  return [
    { ...power, rule: 'power' },
    { ...bare, rule: 'mass' },
    { ...bare, rule: 'mass-by-power', by: power, each: hp },
    { field: 'wheelbase', figure: wheelbase, rule: 'wheelbase' },
    { field: 'length', figure: length, rule: 'length' },
    { field: 'wheelbase', figure: wheelbase, rule: 'wheelbase-by-length', by: { field: 'length', figure: length } },
    { field: 'height.ropsUp', figure: height?.ropsUp, rule: 'height' },
    { field: 'height.cab', figure: height?.cab, rule: 'height' },
    { field: 'engine.ptoPower', figure: engine?.ptoPower, rule: 'pto-by-power', by: power },
    { field: 'hitch.lift610', figure: hitch?.lift610, rule: 'hitch-by-mass', by: bare },
    { field: 'grossMass', figure: grossMass, rule: 'gross-by-mass', by: bare },
    ...tyres.map(({ widthOverRear }, at): Check => ({ field: `tyres[${at + 1}].widthOverRear`, figure: widthOverRear, rule: 'width' })),
    { field: 'rearTrack', figure: rearTrack, rule: 'track-by-width', by: { field: 'tyres[1].widthOverRear', figure: tyres[0]?.widthOverRear } },
    ...decks.map(({ width }, at): Check => ({ field: `decks[${at + 1}].width`, figure: width, rule: 'deck-width' })),
    { field: 'backhoe.digDepth', figure: backhoe?.digDepth, rule: 'dig-depth' },
    ...loaders.flatMap(({ ratings, fullHeight }, at): Check[] => {
      const pins = { field: `loaders[${at + 1}].ratings.pins`, figure: ratings.find(({ ahead }) => pinsOnly(ahead))?.load };
      const far = { field: `loaders[${at + 1}].ratings.ahead500`, figure: ratings.find(({ ahead }) => isRatedAhead(ahead))?.load };
      return [
        { ...pins, rule: 'loader-by-power', by: power, each: hp },
        { ...pins, rule: 'loader-by-mass', by: bare },
        { ...far, rule: 'lift-ahead', by: pins },
        { field: `loaders[${at + 1}].fullHeight`, figure: fullHeight, rule: 'loader-height' },
      ];
    }),
  ];
}

/** The same of a unit, beside its machine. */
export function checksOfUnit({ hours, price }: UnitDocument, machine: MachineDocument | undefined): Check[] {
  return [
    { field: 'hours', figure: hours === undefined ? undefined : { value: hours, unit: 'h' }, rule: 'hours' },
    { field: 'price', figure: money(price), rule: 'price-by-list', by: { field: 'listPrice.price', figure: money(machine?.listPrice?.price) } },
  ];
}
