import type { CatalogueDocument, UnitDocument } from '../../src/catalogue/schema.ts';

/** Numbers from 0 up to 1, the same each time: Lehmer's generator as Park and Miller published it in 1988. */
function chance(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}

/**
 * A lot of any size out of a small one: copies of its units, each with a price, year and hours of its own, and
 * with other tyres, belts, loaders and decks as a yard has them, so that it isn't the same few over again.
 */
export function largeLot(catalogue: CatalogueDocument, count: number): CatalogueDocument {
  const next = chance(2026);
  const one = <T>(all: readonly T[]) => all[Math.floor(next() * all.length)]!;
  const known = (catalogue.units ?? []).filter(({ status }) => status !== 'sold');
  const units = Array.from({ length: count }, (_, index): UnitDocument => {
    const from = one(known);
    const fitted = { ...from.fitted, loader: next() < 0.7, deck: next() < 0.3, ...(next() < 0.5 && { cab: next() < 0.2 }) };
    const { loader, deck, ...rest } = from;
    return {
      ...rest, id: `unit-${index}`, fitted,
      ...(fitted.loader && loader && { loader }), ...(fitted.deck && deck && { deck }),
      hours: Math.round(next() * 3_000),
      price: { value: 6_000 + Math.round(next() * 45_000), currency: catalogue.dealer.currency },
      tyres: { type: one(['turf', 'industrial', 'agricultural']), liquid: next() < 0.2 },
      seatBelt: next() < 0.95,
    };
  });
  return { ...catalogue, units };
}
