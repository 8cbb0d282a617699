import type { Answers } from '../answers/answers.ts';
import type { Need } from './need.ts';

/**
 * A firm limit rules out; any other only weighs. What a loan may cost a month is held against the dealer's
 * own terms. Whoever wants the dealer to look after it wants a make he looks after.
 */
export function needsOfBudget(answers: Answers): Need[] {
  const { limit, firm, includes, pay, monthly, service } = answers.budget ?? {};
  const delivery = answers.haul?.delivery;
  const base = { safety: false, working: [] } as const;
  return [
    ...(limit ? [{
      ...base, id: 'budget.limit', capability: 'price', atMost: limit.value, currency: limit.currency,
      ...(includes && { includes }), ...(typeof delivery === 'number' && { delivery }),
      must: firm === true, from: ['budget.limit', 'budget.firm'],
    } as const] : []),
    ...(pay === 'loan' && monthly ? [{
      ...base, id: 'budget.monthly', capability: 'instalment', atMost: monthly.value, currency: monthly.currency,
      must: firm === true, from: ['budget.monthly', 'budget.firm'],
    } as const] : []),
    ...(service === 'dealer' || service === 'pickup' ? [{
      ...base, id: 'budget.service', capability: 'serviced', must: false, from: ['budget.service'],
    } as const] : []),
  ];
}
