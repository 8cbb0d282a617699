import type { DemandOf } from '../../needs/need.ts';
import { have } from '../candidate.ts';
import { failed, met, unknown, wantsAtLeast, type Judge } from '../verdict.ts';

/** A backhoe only where the machine's own years take one, and deep enough. */
export const judgeBackhoe: Judge<DemandOf<'backhoe'>> = (need, build, { asOfYear }) => {
  const { backhoe } = build.machine;
  const state = have(build, 'backhoe', backhoe, asOfYear);
  if (state === 'never') return failed();
  if (state === 'unknown' || !backhoe) return unknown('backhoe');
  const additions = state === 'can-add' ? [{
    what: 'backhoe' as const, for: [need.id],
    ...(backhoe.price && { price: backhoe.price.value }),
    ...(backhoe.labourHours !== undefined && { labourHours: backhoe.labourHours }),
    ...(backhoe.mass !== undefined && { mass: backhoe.mass }),
  }] : [];
  if (need.atLeast === undefined) return met({ additions });
  if (backhoe.digDepth === undefined) return unknown('backhoe.digDepth');
  return wantsAtLeast(backhoe.digDepth, need.atLeast, { unit: 'm', workings: [], additions });
};
