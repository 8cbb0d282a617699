import { inSi, type InSi } from '../units/quantity.ts';
import type { CatalogueDocument, ImplementDocument, MachineDocument, UnitDocument } from './schema.ts';

/**
 * The catalogue as the core wants it: every amount a quantity in SI. The dealer's own rule values stay as
 * they were given, for only the rule book knows their units.
 */
export type Catalogue = InSi<Omit<CatalogueDocument, 'rules'>> & Pick<CatalogueDocument, 'rules'>;

export const catalogueOf = ({ rules, ...document }: CatalogueDocument): Catalogue => ({ ...inSi(document), ...(rules && { rules }) });

export type Machine = InSi<MachineDocument>;
export type Unit = InSi<UnitDocument>;
export type Implement = InSi<ImplementDocument>;
export type Loader = NonNullable<Machine['loaders']>[number];
export type Deck = NonNullable<Machine['decks']>[number];
export type Backhoe = NonNullable<Machine['backhoe']>;
export type Cab = NonNullable<Machine['cabs']>[number];
export type Dealer = Catalogue['dealer'];
