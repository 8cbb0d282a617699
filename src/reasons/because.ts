import { isFailedGate, isOpenGate, type Judged } from '../ranking/verdict.ts';
import type { Because } from './schema.ts';

/** Why a candidate is ruled out, or must be asked about: each gate that failed or is unknown. */
export const becauseOf = (judged: readonly Judged[], outcome: 'failed' | 'unknown'): Because[] =>
  judged.filter(outcome === 'failed' ? isFailedGate : isOpenGate).flatMap(({ need, verdict }) => {
    const { has, wants, unit, bound, by, missing } = verdict;
    return [{
      need: need.id,
      capability: need.capability,
      ...(has !== undefined && { has }),
      ...(wants !== undefined && { wants }),
      ...(unit && { unit }),
      ...(bound && { bound }),
      ...(by && { by }),
      ...(need.rule && { rule: need.rule }),
      ...(missing && { missing: [...missing] }),
    }];
  });
