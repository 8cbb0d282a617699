import { sayBecause } from '../../reasons/say.ts';
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

/** What would change the answer: which machines come back without a need or a task. */
export function changes(scene: Scene): string[] {
  const { words, nameOf } = scene.voice;
  const lines = scene.result.changes.flatMap(({ need, task, stands, asks }) => {
    const machines = words.list([...stands.map((id) => nameOf(id)), ...asks.map((id) => `${nameOf(id)} (${words.result.unitVerdict.ask})`)]);
    return item('-', task ? words.result.withoutTask(words.tasks[task], machines) : words.result.withoutNeed(words.needs[need!] ?? need!, machines));
  });
  return lines.length === 0 ? [] : [...heading(words.result.changesHeading), ...lines];
}
