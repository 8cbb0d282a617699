/** The least a catalogue must hold to be one. */
export const minimalCatalogue = () => ({
  format: 'acre-to-axle/catalogue/1',
  id: 'a-lot',
  asOf: '2026-04-30',
  dealer: { name: 'The dealer', currency: 'USD', units: 'us', locale: 'en-US' },
  frames: [{ id: 'small', name: 'Small', order: 2 }],
  machines: [
    {
      id: 'small-standard', name: 'Small, standard', make: 'House make', frame: 'small', tier: 'standard',
      years: { from: 2012, to: 2018, meant: 'model' }, tyres: [],
    },
  ],
});

/** A copy of a document with one value put at a path. */
export function withAt(document: object, path: readonly (string | number)[], value: unknown): object {
  const copy = structuredClone(document);
  const last = path.at(-1)!;
  const holder = path.slice(0, -1).reduce((at, key) => (at as never)[key], copy as object);
  Object.defineProperty(holder, last, { value, enumerable: true, configurable: true, writable: true });
  return copy;
}
