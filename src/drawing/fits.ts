import { narrowestTyres } from '../ranking/candidate.ts';
import type { RuleBook } from '../trade/book.ts';
import { headroom, passage } from '../trade/formulas/clearance.ts';
import { atLeast, atMost } from '../units/compare.ts';
import type { Quantity } from '../units/quantity.ts';
import type { BuyersThings } from './buyers-things.ts';
import type { Outfit } from './outfit.ts';

type Length = Quantity<'length'>;
export type FitId = 'door.width' | 'door.height' | 'gate.width' | 'trailer.length' | 'trailer.width' | 'bale.height' | 'pallet.height' | 'log.height';

/** Whether a machine does what one of the buyer's things asks, by given figures alone. */
export interface Fit {
  id: FitId;
  outcome: 'yes' | 'no' | 'unknown';
  /** What the thing leaves or asks [m]. */
  wanted: number;
  /** What the machine takes, with the room left round it, or reaches [m]. */
  has?: number;
}

const fit = (id: FitId, has: number | undefined, wanted: number, holds: (has: number, wanted: number) => boolean): Fit =>
  (has === undefined ? { id, outcome: 'unknown', wanted } : { id, has, wanted, outcome: holds(has, wanted) ? 'yes' : 'no' });

/** Room on each side of an opening. */
export const sideRoom = (book: RuleBook) => book.value('place.side-clearance');

/** Between two sides on its narrowest tyres; a unit on tyres nobody named has to pass on any it may have. */
function between(id: FitId, outfit: Outfit, opening: number, room: number, over: number): Fit {
  const wants = (width: number) => passage(Math.max(width, over) as Length, room as Length).result.value;
  const narrowest = narrowestTyres(outfit);
  const judged = fit(id, narrowest && wants(narrowest.widthOverRear), opening, atMost);
  const { unit, machine: { tyres = [] } } = outfit;
  const varies = unit !== undefined && unit.tyres?.type === undefined && tyres.some(({ widthOverRear }) => !atMost(wants(widthOverRear), opening));
  return judged.outcome === 'yes' && varies ? { ...judged, outcome: 'unknown' } : judged;
}

function underDoor({ machine: { height, rops }, unit, cab }: Outfit, door: number, book: RuleBook): Fit {
  const under = (tall: number | undefined) => fit(
    'door.height', tall === undefined ? undefined : headroom(tall as Length, book.value('place.height-clearance') as Length).result.value, door, atMost,
  );
  if (cab) return under(height?.cab);
  const kind = unit?.rops?.kind ?? rops?.kind;
  if (kind !== undefined && kind !== 'unknown') return under(kind === 'folding' ? height?.ropsFolded : height?.ropsUp);
  const [standing, folded] = [under(height?.ropsUp), under(height?.ropsFolded)];
  return standing.outcome === folded.outcome ? standing : { id: 'door.height', outcome: 'unknown', wanted: door };
}

export function fitsOf(outfit: Outfit, { door, gate, trailer, loads }: BuyersThings, book: RuleBook): Fit[] {
  const { deck = 0, loader, machine } = outfit;
  return [
    ...(door && !door.width.assumed ? [between('door.width', outfit, door.width.value, sideRoom(book), deck)] : []),
    ...(door && !door.height.assumed ? [underDoor(outfit, door.height.value, book)] : []),
    ...(gate ? [between('gate.width', outfit, gate.value, sideRoom(book), deck)] : []),
    ...(trailer?.length === undefined ? [] : [fit('trailer.length', machine.lengthWithLoader, trailer.length, atMost)]),
    ...(trailer?.width === undefined ? [] : [between('trailer.width', outfit, trailer.width, book.value('haul.deck-side'), 0)]),
    ...loads.flatMap(({ id, wanted }): Fit[] => {
      if (wanted === undefined) return [];
      // A machine known to be without a loader lifts nothing; of one nobody described that isn't known.
      if (!loader) return [{ id: `${id}.height`, outcome: machine.loaders === undefined ? 'unknown' : 'no', wanted }];
      return [fit(`${id}.height`, loader.fullHeight, wanted, atLeast)];
    }),
  ];
}
