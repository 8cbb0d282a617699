import type { WorkingEntry } from '../../reasons/schema.ts';
import { cliWords } from '../words.ts';
import { item, paragraph } from './layout.ts';
import type { Scene } from './scene.ts';

/**
 * An angle at which a machine tips must not be read as a slope it may work on: it is compared, and never
 * shown to a buyer. The shortlist document has it.
 */
const isShown = ({ formula }: WorkingEntry) => formula !== 'slope.tip-angle';

/** Sums under a title, each once. */
export function workingLines(workings: readonly WorkingEntry[], indent: number, scene: Scene): string[] {
  const sums = new Map(workings.filter(isShown).map((working) => [JSON.stringify(working), working]));
  if (sums.size === 0) return [];
  return ['', ...paragraph(cliWords.working, indent), ...[...sums.values()].flatMap((each) => item('-', scene.notes.say(each), indent))];
}
