import { sayBecause } from '../../reasons/say.ts';
import { changesTold, sayChange } from '../../reasons/say-ways-out.ts';
import { heading, item, paragraph } from './layout.ts';
import { machineFacts } from './machine-block.ts';
import type { Scene } from './scene.ts';
import { taskOfNeed } from './units-on-lot.ts';

/** Why not the rest: every gate that each of them fails. */
export function ruledOut(scene: Scene): string[] {
  const { result, voice } = scene;
  if (result.ruledOut.length === 0) return [];
  return [
    ...heading(voice.words.result.ruledOutHeading(result.ruledOut.length)),
    ...result.ruledOut.flatMap(({ machine, because }) => [
      ...paragraph(`${voice.nameOf(machine)} (${machineFacts(machine, scene)})`),
      ...because.flatMap((each) => item('-', sayBecause(each, 'failed', taskOfNeed(scene, each.need), voice), 2)),
    ]),
  ];
}

/** What would change the answer: which machines come back without a need or a task, or with a bound moved. */
export function changes(scene: Scene): string[] {
  const { result, voice } = scene;
  // Where nothing fits the ways out say it all.
  if (result.waysOut.length > 0 || result.changes.length === 0) return [];
  return [...heading(voice.words.result.changesHeading), ...changesTold(result).flatMap((change) => item('-', sayChange(change, voice)))];
}
