import { sayConflict, sayWay } from '../../reasons/say-ways-out.ts';
import { heading, item, paragraph } from './layout.ts';
import type { Scene } from './scene.ts';

/** Where nothing fits: what stands in the way, and every way out of it. */
export function waysOut({ result, voice }: Scene): string[] {
  const { conflicts: { sets, complete }, waysOut: ways } = result;
  const { waysOut: words } = voice.words;
  return [
    ...(sets.length === 0 ? [] : [...heading(words.conflictsHeading), ...sets.flatMap((set) => item('-', sayConflict(set, voice)))]),
    ...(complete ? [] : paragraph(words.moreConflicts)),
    ...(ways.length === 0 ? [] : [...heading(words.heading), ...paragraph(words.explained)]),
    ...ways.flatMap((entry, index) => {
      const { way, hire } = sayWay(entry, result, voice);
      return [...item(`${index + 1}.`, way), ...hire.flatMap((each) => paragraph(each, 3))];
    }),
  ];
}
