import type { DemandOf } from '../../needs/need.ts';
import { headroom, parking, passage } from '../../trade/formulas/clearance.ts';
import { atMost } from '../../units/compare.ts';
import type { Quantity } from '../../units/quantity.ts';
import type { Build } from '../build.ts';
import { tyresOf } from '../candidate.ts';
import { unknown, wantsAtMost, type Verdict } from '../verdict.ts';
import type { Judge } from './judging.ts';

type Length = Quantity<'length'>;

/**
 * Whether a build passes between two sides with room on both, over its tyres or over something wider. A
 * unit whose tyres are not known may pass on some and not on others: unknown. A machine not yet chosen
 * passes if it does on its narrowest.
 */
function between(build: Build, opening: Length, room: Length, wider = 0): Verdict {
  const verdicts = tyresOf(build).map(({ widthOverRear: tyres }): Verdict => {
    const working = passage(Math.max(tyres, wider) as Length, room);
    return wantsAtMost(working.result.value, opening, { unit: 'm', workings: [working] });
  }).sort((a, b) => a.has! - b.has!);
  const [narrowest] = verdicts;
  if (!narrowest) return unknown('tyres');
  const some = verdicts.some(({ outcome }) => outcome === 'met');
  const all = verdicts.every(({ outcome }) => outcome === 'met');
  return build.unit && some && !all ? unknown('units.tyres.type') : narrowest;
}

/** A passage is as wide as the machine on its tyres, its deck on, and room on both sides. */
export const judgeWidth: Judge<DemandOf<'width'>> = ({ atMost: opening }, build, { book }) =>
  between(build, opening, book.value('place.side-clearance') as Length, build.mower?.kind === 'belly' ? build.mower.deck.part.width : 0);

/** Under a door a folding ROPS may lie folded, slowly and for that alone; a cab never folds. */
export const judgeStoredHeight: Judge<DemandOf<'height.stored'>> = ({ atMost: door }, build, { book }) => {
  const { height, rops } = build.machine;
  const under = (path: 'cab' | 'ropsFolded' | 'ropsUp'): Verdict => {
    const tall = height?.[path];
    if (tall === undefined) return unknown(`height.${path}`);
    const working = headroom(tall, book.value('place.height-clearance') as Length);
    return wantsAtMost(working.result.value, door, { unit: 'm', workings: [working] });
  };
  if (build.cab) return under('cab');
  const kind = build.unit?.rops?.kind ?? rops?.kind;
  if (kind !== undefined && kind !== 'unknown') return under(kind === 'folding' ? 'ropsFolded' : 'ropsUp');
  // Nobody looked whether it folds: where that decides, it is to be asked about.
  const standing = under('ropsUp');
  return standing.outcome === under('ropsFolded').outcome ? standing : unknown('rops.kind');
};

/** At work the ROPS stands: what hangs lower than it and its clearance rules out. */
export const judgeWorkingHeight: Judge<DemandOf<'height.working'>> = ({ atMost: lowest }, build, { book }) => {
  const path = build.cab ? 'cab' : 'ropsUp';
  const tall = build.machine.height?.[path];
  if (tall === undefined) return unknown(`height.${path}`);
  const working = headroom(tall, book.value('overhead.clearance') as Length);
  return wantsAtMost(working.result.value, lowest, { unit: 'm', workings: [working] });
};

export const judgeLength: Judge<DemandOf<'length'>> = ({ atMost: depth }, build, { book }) => {
  // Of a machine nobody says whether it has a loader, it is as long as with one.
  const path = build.loader || (build.machine.loaders === undefined && build.unit?.fitted?.loader !== false) ? 'lengthWithLoader' : 'length';
  const long = build.machine[path] ?? build.machine.lengthWithLoader;
  if (long === undefined) return unknown(path);
  const working = parking(long, book.value('place.depth-clearance') as Length);
  return wantsAtMost(working.result.value, depth, { unit: 'm', workings: [working] });
};

/** On a trailer the tyres stand between the fenders. */
export const judgeDeckWidth: Judge<DemandOf<'trailer.deck-width'>> = ({ atMost: deck }, build, { book }) =>
  between(build, deck, book.value('haul.deck-side') as Length);

export const judgeDeckLength: Judge<DemandOf<'trailer.deck-length'>> = ({ atMost: deck }, build) => {
  const long = build.machine.lengthWithLoader;
  if (long === undefined) return unknown('lengthWithLoader');
  return { outcome: atMost(long, deck) ? 'met' : 'failed', has: long, wants: deck, unit: 'm', bound: 'at-most', workings: [] };
};
