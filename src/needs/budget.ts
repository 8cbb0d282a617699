import type { Answers } from '../answers/answers.ts';
import type { Need } from './need.ts';

/** A firm limit rules out; any other only weighs. */
export function needsOfBudget(answers: Answers): Need[] {
  const { limit, firm, includes } = answers.budget ?? {};
  if (!limit) return [];
  const delivery = answers.haul?.delivery;
  return [{
    id: 'budget.limit', capability: 'price', atMost: limit.value, currency: limit.currency,
    ...(includes && { includes }), ...(typeof delivery === 'number' && { delivery }),
    must: firm === true, safety: false, from: ['budget.limit', 'budget.firm'], working: [],
  }];
}
