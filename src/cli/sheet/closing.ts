import type { NotCleared } from '../../needs/need.ts';
import { sayTerms } from '../../reasons/say-terms.ts';
import { sayCaution } from '../../reasons/say.ts';
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

/** The cautions that go with every machine, and with this work. */
export const cautions = ({ result, voice }: Scene): string[] => [
  ...heading(voice.words.result.cautionsHeading),
  ...result.cautions.flatMap((caution) => item('!', sayCaution(caution, voice))),
];

/** The dealer's terms in the language of the sheet, or ours, and how to reach him. */
export function closing({ catalogue: { dealer }, voice: { words } }: Scene): string[] {
  const reach = [dealer.phone, dealer.email, dealer.address, dealer.url].filter((each) => each !== undefined);
  return [
    ...heading(words.result.termsHeading),
    ...paragraph(sayTerms(dealer, words)),
    '',
    ...paragraph(`${words.result.contact}${words.joins.colon}${[dealer.name, ...reach].join(', ')}`),
  ];
}
