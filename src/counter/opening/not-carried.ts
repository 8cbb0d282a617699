import type { AnswersDocument, TaskId } from '../../answers/schema.ts';

/** What no link carries, for somebody writes it or it says who he is: it has to be asked for anew. */
export type NotCarried = 'delivery' | 'tradeIn' | 'owned' | 'material' | 'species';

const lacks = ({ tasks = [], unsure = [] }: AnswersDocument, id: TaskId, question: string, ...keys: readonly string[]) =>
  !unsure.includes(question) && tasks.some((task) => task.task === id && keys.every((key) => (task as Record<string, unknown>)[key] === undefined));

/** Whether it may have been said, as far as the answers that did come along tell. */
const mayBeMissing: Readonly<Record<NotCarried, (answers: AnswersDocument) => boolean>> = {
  delivery: ({ haul }) => haul !== undefined && haul.delivery === undefined,
  tradeIn: ({ budget }) => budget !== undefined && budget.tradeIn === undefined,
  owned: ({ owned = [] }) => owned.length > 0,
  material: (answers) => lacks(answers, 'move-loose', 'loose', 'material'),
  species: (answers) => lacks(answers, 'handle-logs', 'logs', 'weight', 'species'),
};

/** What may have been said and isn't in answers that came by a link, a code or a typed line. */
export const notCarried = (answers: AnswersDocument): NotCarried[] =>
  (Object.keys(mayBeMissing) as NotCarried[]).filter((each) => mayBeMissing[each](answers));
