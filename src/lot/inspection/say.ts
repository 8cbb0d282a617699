import { capital } from '../../reasons/capital.ts';
import { saySource, type Voice } from '../../reasons/say.ts';
import { showAmount } from '../../units/show.ts';
import type { LotWords, SaidWhy, YearPart } from '../words/words.ts';
import type { Inspection, InspectionItem } from './inspection.ts';
import type { ItemKind } from './items.ts';

export interface SaidItem {
  name: string;
  /** When it is done, in words. */
  when: string;
  kind: ItemKind;
  why: string;
  how: string;
  notes: readonly string[];
  source: string;
}

/** An inspection list in words, cautions first. */
export interface SaidInspection {
  title: string;
  explained: string;
  cautionsHeading: string;
  cautions: readonly string[];
  items: readonly SaidItem[];
}

const silent: SaidWhy = { hours: '', age: '', perYear: '', year: '', from: '', to: '', wear: '', mass: '', told: '', parts: '' };

function sayItem({ id, kind, why, fromNeeds, source }: InspectionItem, { words, reader }: Voice, { inspection }: LotWords): SaidItem {
  const figures = Object.fromEntries(Object.entries(why.figures ?? {}).map(([name, { value, unit }]) => [name, unit === 'year' ? String(value) : showAmount(value, unit, reader)]));
  const parts = words.list((why.parts ?? []).map((part) => inspection.parts[part as YearPart]));
  const needs = [...new Set(fromNeeds.flatMap((need) => (words.needs[need] ? [words.needs[need]] : [])))];
  return {
    ...inspection.items[id], kind, when: inspection.kinds[kind],
    why: inspection.whys[why.id]({ ...silent, ...figures, told: why.told ?? '', parts }),
    notes: [...(why.ruledOut ? [inspection.ruledOut] : []), ...(needs.length > 0 ? [inspection.forNeeds(words.list(needs))] : [])],
    source: capital(saySource(source, words), words.language),
  };
}

/** What to look at on one unit, in words. */
export const sayInspection = ({ items, cautions }: Inspection, { voice, lot }: { voice: Voice; lot: LotWords }): SaidInspection => ({
  title: lot.inspection.title, explained: lot.inspection.explained, cautionsHeading: lot.inspection.cautionsHeading,
  cautions: cautions.map((caution) => lot.inspection.cautions[caution]),
  items: items.map((item) => sayItem(item, voice, lot)),
});
