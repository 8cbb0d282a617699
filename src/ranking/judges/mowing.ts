import type { Machine } from '../../catalogue/catalogue.ts';
import type { DemandOf } from '../../needs/need.ts';
import { mowingHours } from '../../trade/formulas/mowing-hours.ts';
import { mowingRate } from '../../trade/formulas/mowing-rate.ts';
import type { Quantity } from '../../units/quantity.ts';
import type { Build, Mower } from '../build.ts';
import type { World } from '../candidate.ts';
import { failed, met, moot, unknown, wantsAtMost } from '../verdict.ts';
import type { Judge } from './judging.ts';
import { judgeTool } from './tool.ts';

/** Why a machine has no belly mower: for want of a mid-PTO, of a deck, or of someone who knows. */
const noBelly = ({ midPto, decks }: Machine) => {
  if (midPto === undefined || midPto.availability === 'unknown') return unknown('midPto');
  return midPto.availability !== 'none' && decks === undefined ? unknown('decks') : failed();
};

/** Why it has no rear mower: no PTO to drive it, none chosen, or none the dealer lists. */
function noRear({ rearPto }: Machine, { implements: sold, owned }: World) {
  if (rearPto === undefined) return unknown('rearPto');
  const listed = [...sold, ...owned].some(({ kind }) => kind === 'finish-mower');
  return rearPto.speeds.length === 0 || listed ? failed() : unknown('implements.finish-mower');
}

export const judgeMower: Judge<DemandOf<'mower'>> = (need, build, world) => {
  const { mower, machine } = build;
  if (!mower) {
    const [belly, rear] = [noBelly(machine), noRear(machine, world)];
    if (need.deck !== 'either') return need.deck === 'belly' ? belly : rear;
    return belly.outcome === 'unknown' ? belly : rear;
  }
  if (mower.kind === 'rear') return judgeTool(mower.mower, build, world);
  if (mower.deck.have === 'unknown') return unknown('decks');
  return mower.midPto === 'unknown' ? unknown('midPto') : met();
};

const widthOf = (mower: Mower) => (mower.kind === 'belly' ? mower.deck.part.width : mower.mower.implement.width);

/** Hours on one mow, with what mows it. Where nothing can, the need for a mower says so, not this one. */
export const judgeMowerHours: Judge<DemandOf<'mower.hours'>> = (need, build: Build, { book }) => {
  const width = build.mower && widthOf(build.mower);
  if (width === undefined) return build.mower ? unknown('mower.width') : moot();
  const rate = mowingRate({
    speed: book.value('mow.speed') as Quantity<'speed'>, width,
    overlap: book.value('mow.overlap'), efficiency: book.value(`mow.efficiency.${need.obstacles}`),
  });
  const hours = mowingHours(need.area, rate.result.value as Quantity<'areaRate'>, book.value('mow.labour'));
  const workings = [rate, hours];
  const has = hours.result.value;
  return need.atMost === undefined
    ? met({ has, unit: 's', bound: 'at-most', workings })
    : wantsAtMost(has, need.atMost, { unit: 's', workings });
};
