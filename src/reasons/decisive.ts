import type { Entry, Shortlist, WorkingEntry } from './schema.ts';

const failedIn = ({ reasons, units, package: { additions } }: Entry) => [
  ...reasons.flatMap(({ id, need }) => (need && id.endsWith('.failed') ? [need] : [])),
  ...units.flatMap(({ because, verdict }) => (verdict === 'ruled-out' ? because.map(({ need }) => need) : [])),
  ...additions.flatMap((addition) => addition.for),
];

/** The needs that tell the machines apart or cost money: some machine fails them, or something is bought for them. */
export const decisiveNeeds = ({ shortlist, askDealer, ruledOut }: Shortlist): ReadonlySet<string> => new Set([
  ...[...shortlist, ...askDealer].flatMap(failedIn),
  ...ruledOut.flatMap(({ because }) => because.map(({ need }) => need)),
]);

/**
 * An angle at which a machine tips must not be read as a slope it may work on: it is compared, and never
 * shown to a buyer. The shortlist document has it.
 */
export const isShownToBuyers = ({ formula }: WorkingEntry) => formula !== 'slope.tip-angle';

/** The sums behind the needs that tell the machines apart, by need. */
export const decisiveSums = ({ reasons }: Entry, decisive: ReadonlySet<string>): { need: string; sums: readonly WorkingEntry[] }[] =>
  reasons.flatMap(({ need = '', working = [] }) => (decisive.has(need) ? [{ need, sums: working }] : []));
