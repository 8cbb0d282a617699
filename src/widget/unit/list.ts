import type { Unit } from '../../catalogue/catalogue.ts';
import { inspectionOf } from '../../lot/inspection/inspection.ts';
import { sayInspection } from '../../lot/inspection/say.ts';
import type { UnitView } from './view.ts';

/** The list for one unit and one buyer, in words, each item by its id. */
export function listOf({ candidate: { machine }, considered: { needs, world }, voice, words: { lot } }: UnitView, unit: Unit) {
  const found = inspectionOf(unit, machine, needs, world);
  const said = sayInspection(found, { voice, lot });
  return { ...said, items: said.items.map((item, index) => ({ ...item, id: found.items[index]!.id })) };
}

export type SaidList = ReturnType<typeof listOf>;
