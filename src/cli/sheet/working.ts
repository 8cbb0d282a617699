import { isShownToBuyers } from '../../reasons/decisive.ts';
import type { WorkingEntry } from '../../reasons/schema.ts';
import { item, paragraph } from './layout.ts';
import type { Scene } from './scene.ts';

/** Sums that led to one figure, or to one need. */
export interface Reckoning {
  of?: string;
  sums: readonly WorkingEntry[];
}

/** Sums under a title, each by what it was reckoned for, and told once. */
export function workingLines(reckonings: readonly Reckoning[], indent: number, scene: Scene): string[] {
  const { colon } = scene.voice.words.joins;
  const told = new Set<string>();
  const isNew = (sum: WorkingEntry) => !told.has(JSON.stringify(sum)) && told.add(JSON.stringify(sum));
  const lines = reckonings.flatMap(({ of, sums }) => {
    const fresh = sums.filter(isShownToBuyers).filter(isNew);
    return fresh.length === 0 ? [] : [
      ...(of ? paragraph(`${of}${colon}`, indent) : []),
      ...fresh.flatMap((sum) => item('-', scene.notes.say(sum), indent)),
    ];
  });
  return lines.length === 0 ? [] : ['', ...paragraph(scene.own.working, indent), ...lines];
}
