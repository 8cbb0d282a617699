import type { DemandOf } from '../../needs/need.ts';
import { failed, met, unknown, wantsAtLeast } from '../verdict.ts';
import type { Judge } from './judging.ts';

/** A backhoe only where the machine's own years take one, and deep enough. */
export const judgeBackhoe: Judge<DemandOf<'backhoe'>> = (need, { backhoe, machine }) => {
  if (!backhoe) return machine.backhoe === undefined ? unknown('backhoe') : failed();
  if (backhoe.have === 'unknown') return unknown('backhoe');
  if (need.atLeast === undefined) return met();
  const { digDepth } = backhoe.part;
  return digDepth === undefined ? unknown('backhoe.digDepth') : wantsAtLeast(digDepth, need.atLeast, { unit: 'm', workings: [] });
};
