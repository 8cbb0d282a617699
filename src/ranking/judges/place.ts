import type { DemandOf } from '../../needs/need.ts';
import { headroom, parking, passage } from '../../trade/formulas/clearance.ts';
import { atMost } from '../../units/compare.ts';
import type { Quantity } from '../../units/quantity.ts';
import type { Build } from '../build.ts';
import { unknown, wantsAtMost, type Verdict } from '../verdict.ts';
import type { Judge } from './judging.ts';
import { widthsOverTyres } from './tool.ts';

type Length = Quantity<'length'>;

const widest = (tyres: number, { mower }: Build) => Math.max(tyres, mower?.kind === 'belly' ? mower.deck.part.width : 0) as Length;

/**
 * A passage as wide as the machine on its tyres, its deck on, and room on both sides. A unit whose tyres
 * are not known may pass on some and not on others: unknown. A machine not yet chosen passes if some do.
 */
export const judgeWidth: Judge<DemandOf<'width'>> = ({ atMost: opening }, build, { book }) => {
  const room = book.value('place.side-clearance') as Length;
  const verdicts = widthsOverTyres(build.machine, build.unit).map((tyres): Verdict => {
    const working = passage(widest(tyres, build), room);
    return wantsAtMost(working.result.value, opening, { unit: 'm', workings: [working] });
  }).sort((a, b) => a.has! - b.has!);
  const [narrowest] = verdicts;
  if (!narrowest) return unknown('tyres');
  const some = verdicts.some(({ outcome }) => outcome === 'met');
  const all = verdicts.every(({ outcome }) => outcome === 'met');
  return build.unit && some && !all ? unknown('units.tyres.type') : narrowest;
};

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
  const path = build.loader ? 'lengthWithLoader' : 'length';
  const long = build.machine[path] ?? build.machine.lengthWithLoader;
  if (long === undefined) return unknown(path);
  const working = parking(long, book.value('place.depth-clearance') as Length);
  return wantsAtMost(working.result.value, depth, { unit: 'm', workings: [working] });
};

export const judgeDeckWidth: Judge<DemandOf<'trailer.deck-width'>> = ({ atMost: deck }, build, { book }) => {
  const room = book.value('haul.deck-side') as Length;
  const verdicts = widthsOverTyres(build.machine, build.unit).map((tyres) => {
    const working = passage(tyres as Length, room);
    return wantsAtMost(working.result.value, deck, { unit: 'm', workings: [working] });
  }).sort((a, b) => a.has! - b.has!);
  const passing = verdicts.filter(({ outcome }) => outcome === 'met');
  if (verdicts.length === 0) return unknown('tyres');
  if (build.unit && passing.length > 0 && passing.length < verdicts.length) return unknown('units.tyres.type');
  return passing[0] ?? verdicts[0]!;
};

export const judgeDeckLength: Judge<DemandOf<'trailer.deck-length'>> = ({ atMost: deck }, build) => {
  const long = build.machine.lengthWithLoader;
  if (long === undefined) return unknown('lengthWithLoader');
  return { outcome: atMost(long, deck) ? 'met' : 'failed', has: long, wants: deck, unit: 'm', bound: 'at-most', workings: [] };
};
