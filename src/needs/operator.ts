import type { Answers } from '../answers/answers.ts';
import type { RuleBook } from '../trade/book.ts';
import type { Need, NotCleared } from './need.ts';

/** What is asked of every machine, whatever the buyer wants: a ROPS, a belt, an exhaust as it was built, no recall open. */
export function needsOfOperator(answers: Answers): Need[] {
  const gate = { must: true, safety: true, working: [] } as const;
  const overhead = answers.land?.overhead;
  return [
    { ...gate, id: 'operator.rops', capability: 'rops', from: [], rule: 'rops.power' },
    { ...gate, id: 'operator.seat-belt', capability: 'seat-belt', from: [], rule: 'rops.power' },
    { ...gate, id: 'operator.exhaust', capability: 'exhaust.intact', from: [] },
    { ...gate, id: 'operator.recall', capability: 'recall', from: [] },
    ...(typeof overhead === 'number' ? [{
      ...gate, id: 'operator.overhead', capability: 'height.working', atMost: overhead, from: ['land.overhead'], rule: 'overhead.clearance',
    } as const] : []),
  ];
}

/** What the buyer left unsaid about who drives and what hangs overhead. */
export function notClearedByOperator(answers: Answers, _book: RuleBook): NotCleared[] {
  const tasks = answers.tasks?.map(({ task }) => task) ?? [];
  const { least, under18 } = answers.drivers ?? {};
  return [
    ...(least === undefined || under18 === undefined ? [{ id: 'drivers.unsaid', tasks, from: ['drivers.least', 'drivers.under18'] } as const] : []),
    ...(answers.land?.overhead === undefined ? [{ id: 'overhead.unsaid', tasks, from: ['land.overhead'] } as const] : []),
  ];
}
