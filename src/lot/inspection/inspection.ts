import type { Machine, Unit } from '../../catalogue/catalogue.ts';
import type { Need } from '../../needs/need.ts';
import type { World } from '../../ranking/candidate.ts';
import type { Source } from '../../trade/record.ts';
import { itemIds, items, type ItemId, type ItemKind, type ItemRow, type Why } from './items.ts';
import { lookOf } from './look.ts';

/** One thing to look at on one unit. */
export interface InspectionItem {
  id: ItemId;
  kind: ItemKind;
  safety: boolean;
  /** What is known of this unit, or isn't, so that it is on the list. */
  why: Why;
  /** Ids of the buyer's demands it is looked at for. */
  fromNeeds: readonly string[];
  /** Place on the list, from 1. */
  order: number;
  source: Source;
}

/** Said with every list: the operator's manual before all. */
export const inspectionCautions = ['manual', 'engine-off', 'under-pressure', 'raised', 'indoors', 'bystanders', 'licensed'] as const;
export type InspectionCaution = (typeof inspectionCautions)[number];

export interface Inspection {
  unit: string;
  machine: string;
  items: readonly InspectionItem[];
  cautions: readonly InspectionCaution[];
  /** What rules it out until it is mended, by item. */
  ruledOut: readonly ItemId[];
}

const rank = ({ why, safety }: Pick<InspectionItem, 'why' | 'safety'>) => (why.ruledOut ? 0 : safety ? 1 : 2);

/**
 * What to look at on one unit, for what the buyer wants of it: only what applies, what rules it out first,
 * then what may hurt someone, then the rest.
 */
export function inspectionOf(unit: Unit, machine: Machine, needs: readonly Need[], world: World): Inspection {
  const look = lookOf(unit, machine, needs, world);
  const found = itemIds.flatMap((id) => {
    const { kind, safety, source, serves = [], why: reason }: ItemRow = items[id];
    const why = reason(look);
    const fromNeeds = needs.filter(({ capability }) => serves.some((start) => capability.startsWith(start))).map((need) => need.id);
    return why ? [{ id, kind, safety, why, fromNeeds, source }] : [];
  });
  const ordered = [...found].sort((a, b) => rank(a) - rank(b) || itemIds.indexOf(a.id) - itemIds.indexOf(b.id));
  return {
    unit: unit.id, machine: machine.id, items: ordered.map((item, index) => ({ ...item, order: index + 1 })), cautions: inspectionCautions,
    ruledOut: ordered.filter(({ why }) => why.ruledOut).map(({ id }) => id),
  };
}
