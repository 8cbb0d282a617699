import type { Entry, Shortlist } from '../../reasons/schema.ts';

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
