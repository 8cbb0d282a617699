import type { Need } from '../../needs/need.ts';
import type { Build } from '../build.ts';
import type { World } from '../candidate.ts';
import type { Verdict } from '../verdict.ts';

/** Judges a demand of one capability on a build. */
export type Judge<D> = (need: Need & D, build: Build, world: World) => Verdict;
