import type { TaskId } from '../../answers/schema.ts';
import type { NotCleared } from '../../needs/need.ts';
import type { CautionId } from '../../reasons/cautions.ts';
import type { Words } from '../../reasons/words/words.ts';
import { heading, item, paragraph } from './layout.ts';
import type { Scene } from './scene.ts';

/** What isn't cleared and why: it heads every result. */
export function notCleared({ result, voice: { words } }: Scene): string[] {
  if (result.notCleared.length === 0) return [];
  return [
    ...heading(words.result.notClearedHeading),
    ...result.notCleared.flatMap(({ id, tasks }) => item('!', words.notCleared[id as NotCleared['id']](words.list(tasks.map((task) => words.tasks[task]))))),
  ];
}

/** A task in words; one of a newer version by the name it came with. */
const taskIn = ({ tasks }: Words, task: string) => (Object.hasOwn(tasks, task) ? tasks[task as TaskId] : task);

/** The cautions that go with every machine, and with this work. */
export const cautions = ({ result, voice: { words } }: Scene): string[] => [
  ...heading(words.result.cautionsHeading),
  ...result.cautions.flatMap(({ id, about = '' }) => item('!', words.cautions[id as CautionId](taskIn(words, about)))),
];

/** The dealer's terms in the language of the sheet, or ours, and how to reach him. */
export function closing({ catalogue: { dealer }, voice: { words } }: Scene): string[] {
  const reach = [dealer.phone, dealer.email, dealer.address, dealer.url].filter((each) => each !== undefined);
  return [
    ...heading(words.result.termsHeading),
    ...paragraph(dealer.terms?.[words.language]?.guidance ?? words.guidance),
    '',
    ...paragraph(`${words.result.contact}: ${[dealer.name, ...reach].join(', ')}`),
  ];
}
