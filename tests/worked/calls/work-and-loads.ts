import { frontBallast, rearAxleLoad } from '../../../src/trade/formulas/axle-loads.ts';
import { baleVolume, massAtMoisture, massOfVolume } from '../../../src/trade/formulas/bale-mass.ts';
import { heapVolume } from '../../../src/trade/formulas/bucket.ts';
import { draftByArea, draftByWidth, draftOfTool } from '../../../src/trade/formulas/draft.ts';
import {
  drawbarFromPto, drawbarPower, powerInHand, ptoFromFlywheel,
} from '../../../src/trade/formulas/drawbar-power.ts';
import { groundPressure } from '../../../src/trade/formulas/ground-pressure.ts';
import { leastOf } from '../../../src/trade/formulas/least-of.ts';
import { loadsWanted, timeForLoads } from '../../../src/trade/formulas/loads.ts';
import { logMass } from '../../../src/trade/formulas/log-mass.ts';
import { tieDownsWanted, tongueLoad } from '../../../src/trade/formulas/securing.ts';
import { snowVolume } from '../../../src/trade/formulas/snow.ts';
import { greatestTowed, rearOverturnPull, towingPull } from '../../../src/trade/formulas/towing.ts';
import { tractionPull } from '../../../src/trade/formulas/traction.ts';
import { turnForce } from '../../../src/trade/formulas/turn-force.ts';
import type { Working } from '../../../src/trade/working.ts';
import { known, type Given } from '../given.ts';

/** Names of inputs that only these examples use. */
export type WorkInput =
  | 'a' | 'b' | 'c' | 'coefficient' | 'cycle' | 'depth' | 'diameter' | 'draft' | 'dry' | 'flywheel' | 'frontLoad'
  | 'grade' | 'gravity' | 'hydraulic' | 'inflation' | 'loaded' | 'loads' | 'massOnDriven' | 'moisture' | 'opening'
  | 'perLoad' | 'power' | 'ptoPower' | 'ratio' | 'rearAxle' | 'rolling' | 'soil' | 'stiffness' | 'times'
  | 'total' | 'towed' | 'tyres' | 'unitDraft' | 'volume';

export const workAndLoads = {
  'draft.tool': (g) => known(draftOfTool(g, g.soil, g.speed, g.width, g.depth)),
  'draft.by-width': (g) => draftByWidth(g.width, g.perWidth),
  'draft.by-area': (g) => draftByArea(g.width, g.depth, g.unitDraft),
  'power.drawbar': (g) => drawbarPower(g.draft, g.speed),
  'power.drawbar-left': (g) => drawbarFromPto(g.ptoPower, g.share),
  'pto.of-flywheel': (g) => ptoFromFlywheel(g.flywheel, g.share),
  'power.wanted': (g) => powerInHand(g.power, g.share),
  'traction.pull': (g) => tractionPull(g.massOnDriven, g.coefficient, g.gravity),
  'tow.pull': (g) => towingPull(g),
  'tow.greatest-mass': (g) => greatestTowed(g.tractor, g.ratio),
  'overturn.rear-pull': (g) => rearOverturnPull(g.frontLoad, g.wheelbase, g.height, g.gravity),
  'log.mass': (g) => logMass(g.density, g.diameter, g.length),
  'bale.volume': (g) => baleVolume(g.diameter, g.width),
  'mass.of-volume': (g) => massOfVolume(g.volume, g.density),
  'mass.at-moisture': (g) => known(massAtMoisture(g.dry, g.moisture)),
  'bucket.heap': (g) => known(heapVolume(g.width, g.opening)),
  // A count has no unit that an expectation could be written in.
  'loads.count': (g) => loadsWanted(g.volume, g.perLoad).result.value,
  'loads.time': (g) => timeForLoads(g.loads, g.cycle),
  'snow.volume': (g) => snowVolume(g.length, g.width, g.depth),
  'lift.least': (g) => known(leastOf({ ...g })),
  'ballast.front': (g) => frontBallast(g),
  'axle.rear-load': (g) => rearAxleLoad(g.total, g.front),
  'ground.pressure': (g) => groundPressure(g.inflation, g.stiffness),
  'haul.tie-downs': (g) => tieDownsWanted(g.mass, g.share),
  'haul.tongue': (g) => tongueLoad(g.loaded, g.share),
  'slope.turn-force': (g) => turnForce(g.times),
} satisfies Record<string, (given: Given) => Working | number>;
