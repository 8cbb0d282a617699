import type { CatalogueDocument, MachineDocument, UnitDocument } from '../../src/catalogue/schema.ts';
import { lineUp, soundUnit } from './catalogue-for-tests.ts';

/** The deluxe mid as two generations of one line, the earlier altered, its years up to the last before the later, or into its first. */
export function twoGenerations(earlier: Partial<MachineDocument>, { to = 2014, units = [] as readonly UnitDocument[] } = {}): CatalogueDocument {
  const catalogue = lineUp();
  const later = catalogue.machines.find(({ id }) => id === 'mid-deluxe')!;
  return {
    ...catalogue,
    machines: [
      ...catalogue.machines.filter((each) => each !== later),
      { ...later, line: 'mid', years: { from: 2015, meant: 'model' } },
      { ...later, ...earlier, id: 'mid-deluxe-earlier', name: 'Mid deluxe, earlier', line: 'mid', years: { from: 2008, to, meant: 'model' } },
    ],
    units: [...units],
  };
}

/** A unit of the later generation that was sold in its first year, so that it may be of the earlier. */
export const onTheEdge = (more: Partial<UnitDocument> = {}) => soundUnit('on-the-edge', 'mid-deluxe', { year: 2015, yearKind: 'sale', transmission: 'hydrostatic', ...more });
