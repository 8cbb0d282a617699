import { taskOf, type Answers } from '../answers/answers.ts';
import type { RuleBook } from '../trade/book.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Need, NotCleared } from './need.ts';

/** What is asked of every machine, whatever the buyer wants: a ROPS, a belt, an exhaust as it was built, no recall open. */
export function needsOfOperator(answers: Answers, book: RuleBook): Need[] {
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
    ...needsOfHealth(answers, book),
  ];
}

/**
 * What a day in the seat does to ears and back, against the values from which something is to be done: for
 * those who said how long they mow, or want a cab or a smooth seat. Whoever can't work a clutch wants a
 * drive without one.
 */
function needsOfHealth(answers: Answers, book: RuleBook): Need[] {
  const wish = { must: false, safety: false, working: [] } as const;
  const hours = taskOf(answers, 'mow-lawn')?.hours;
  const { cab = 'none', smoothSeat = false } = answers.comfort ?? {};
  const day = hours ?? (book.value('operator.day-hours') as Quantity<'time'>);
  const from = (said: string) => [hours === undefined ? said : 'tasks.mow-lawn.hours'];
  const legs = answers.drivers?.limits === 'legs' || answers.drivers?.limits === 'both';
  return [
    ...(hours === undefined && cab === 'none' ? [] : [{ ...wish, id: 'operator.noise', capability: 'noise', day, from: from('comfort.cab'), rule: 'noise.action' } as const]),
    ...(hours === undefined && !smoothSeat ? [] : [{ ...wish, id: 'operator.vibration', capability: 'vibration', day, from: from('comfort.smoothSeat'), rule: 'vibration.action' } as const]),
    ...(legs ? [{ ...wish, id: 'drivers.legs', capability: 'transmission', kinds: ['hydrostatic', 'power-reverser'], from: ['drivers.limits'] } as const] : []),
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
