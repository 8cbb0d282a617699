import type { CatalogueDocument, MachineDocument, UnitDocument } from '../catalogue/schema.ts';

/** A figure that is missing: on which, and of how many. Its words say what that costs. */
export interface Unknown {
  figure: UnknownFigure;
  sheet: 'machines' | 'units';
  ids: readonly string[];
  of: number;
}

const none = (list: readonly unknown[] | undefined) => list === undefined || list.length === 0;
const loaderLacks = (lacks: (loader: NonNullable<MachineDocument['loaders']>[number]) => boolean) =>
  ({ loaders }: MachineDocument) => loaders !== undefined && loaders.some((loader) => loader.availability !== 'none' && lacks(loader));

/** What a machine may lack that a buyer's questions hang on, what costs most first. */
const ofMachines = {
  mass: ({ mass }: MachineDocument) => !mass,
  loaders: ({ loaders }: MachineDocument) => loaders === undefined,
  loaderLift: loaderLacks(({ ratings }) => ratings.length === 0),
  loaderLiftAhead: loaderLacks(({ ratings }) => ratings.length === 1),
  loaderHeight: loaderLacks(({ fullHeight, ratings }) => !fullHeight && ratings.length > 0),
  hitchLift: ({ hitch }: MachineDocument) => !hitch?.lift610,
  width: ({ tyres }: MachineDocument) => none(tyres),
  height: ({ height }: MachineDocument) => !height?.ropsUp && !height?.cab,
  length: ({ length, lengthWithLoader }: MachineDocument) => !length && !lengthWithLoader,
  ptoPower: ({ engine }: MachineDocument) => !engine?.ptoPower,
  rearTrack: ({ rearTrack }: MachineDocument) => !rearTrack,
  centreOfMass: ({ centreOfMassHeight }: MachineDocument) => !centreOfMassHeight,
  frontAxleShare: ({ frontAxleShare }: MachineDocument) => frontAxleShare === undefined,
  axleLimits: ({ frontAxleLimit, rearAxleLimit }: MachineDocument) => !frontAxleLimit || !rearAxleLimit,
  grossMass: ({ grossMass }: MachineDocument) => !grossMass,
  towedMass: ({ towedMass }: MachineDocument) => !towedMass,
  decks: ({ decks }: MachineDocument) => decks === undefined,
  transmissions: ({ transmissions }: MachineDocument) => none(transmissions),
  rops: ({ rops }: MachineDocument) => !rops,
  listPrice: ({ listPrice }: MachineDocument) => !listPrice,
};
const ofUnits = {
  unitPrice: ({ price }: UnitDocument) => !price,
  unitHours: ({ hours }: UnitDocument) => hours === undefined,
  unitYear: ({ year }: UnitDocument) => year === undefined,
  unitLoader: ({ fitted }: UnitDocument) => fitted?.loader === undefined,
  unitRops: ({ rops }: UnitDocument) => !rops,
  unitBelt: ({ seatBelt }: UnitDocument) => seatBelt === undefined,
  unitShield: ({ ptoShield }: UnitDocument) => ptoShield === undefined,
  unitRecall: ({ recallOpen }: UnitDocument) => recallOpen === undefined,
};
export type UnknownFigure = keyof typeof ofMachines | keyof typeof ofUnits;

/** What is unknown in a catalogue; units that are sold are left alone. */
export function unknownsOf({ machines, units = [] }: CatalogueDocument): Unknown[] {
  const lot = units.filter(({ status }) => status !== 'sold');
  const told = <E extends { id: string }>(sheet: Unknown['sheet'], entries: readonly E[], lacks: Readonly<Record<string, (entry: E) => boolean>>) =>
    Object.entries(lacks).map(([figure, isLacking]): Unknown => ({
      figure: figure as UnknownFigure, sheet, ids: entries.filter(isLacking).map(({ id }) => id), of: entries.length,
    }));
  return [...told('machines', machines, ofMachines), ...told('units', lot, ofUnits)].filter(({ ids }) => ids.length > 0);
}
