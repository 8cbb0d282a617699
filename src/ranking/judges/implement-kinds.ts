import type { ImplementKind } from '../../catalogue/schema.ts';
import type { FigureId } from '../../trade/book.ts';

/** How fast it goes, how much of the time it works, and how often over the same ground. */
export interface Pace {
  speed: FigureId;
  efficiency: FigureId;
  passes?: FigureId;
  swath?: FigureId;
}

/** What the trade knows of a kind of implement, by the rules that say so. */
export interface Traits {
  /** It cuts or works the ground, so that it must cover the width over the rear tyres. */
  covers?: true;
  /** PTO power where its maker says none: by its width, by what it takes, or whole. */
  power?: { rule: FigureId; by: 'width' | 'capacity' | 'whole' };
  /** Draft by its width; a disk goes by its depth and the soil, a plough by the section it turns. */
  draft?: FigureId | 'disk' | 'plough';
  pace?: Pace;
  /** In snow it goes at another. */
  snowPace?: Pace;
  /** It is lifted with what it holds. */
  hopper?: true;
}

const grading = { speed: 'grade.speed', efficiency: 'grade.efficiency', passes: 'grade.passes' } as const;

/** One row a kind: a new one is added here and in the schema. */
export const traitsOf: Readonly<Record<ImplementKind, Traits>> = {
  'pallet-forks': {},
  'bale-spear': {},
  'rear-bale-spear': {},
  grapple: {},
  'ballast-box': {},
  wagon: {},
  'rotary-cutter': { covers: true, power: { rule: 'cut.power.grass', by: 'width' }, pace: { speed: 'cut.speed', efficiency: 'cut.efficiency' } },
  'flail-mower': { covers: true, power: { rule: 'cut.power.flail', by: 'width' }, pace: { speed: 'cut.speed', efficiency: 'cut.efficiency' } },
  'finish-mower': { covers: true, power: { rule: 'mow.power', by: 'width' } },
  tiller: { covers: true, power: { rule: 'till.power', by: 'width' }, pace: { speed: 'till.speed', efficiency: 'till.efficiency' } },
  'box-blade': { covers: true, draft: 'grade.draft', pace: grading },
  'rear-blade': { covers: true, draft: 'grade.draft', pace: grading, snowPace: { speed: 'snow.speed', efficiency: 'snow.efficiency' } },
  'landscape-rake': { covers: true, draft: 'drag.draft', pace: grading },
  'drag-harrow': { draft: 'drag.draft', pace: { speed: 'drag.speed', efficiency: 'drag.efficiency' } },
  disk: { covers: true, draft: 'disk', pace: { speed: 'field.speed', efficiency: 'field.efficiency' } },
  plough: { draft: 'plough', pace: { speed: 'field.speed', efficiency: 'field.efficiency' } },
  cultivator: { covers: true, draft: 'disk', pace: { speed: 'field.speed', efficiency: 'field.efficiency' } },
  'post-hole-digger': { power: { rule: 'hole.power', by: 'whole' } },
  chipper: { power: { rule: 'chip.power', by: 'capacity' } },
  'snow-blower': { covers: true, power: { rule: 'snow.blower-power', by: 'width' }, pace: { speed: 'snow.blower-speed', efficiency: 'snow.efficiency' } },
  spreader: { hopper: true, pace: { speed: 'spread.speed', efficiency: 'spread.efficiency', swath: 'spread.swath' } },
  sprayer: { hopper: true, pace: { speed: 'spread.speed', efficiency: 'spread.efficiency' } },
  'disk-mower': { power: { rule: 'hay.mower-power', by: 'width' }, pace: { speed: 'hay.speed', efficiency: 'hay.efficiency' } },
  baler: { power: { rule: 'hay.baler-power', by: 'whole' } },
};
