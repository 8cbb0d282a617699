import { requestFormat } from '../../src/request/names.ts';
import type { RequestDocument } from '../../src/request/schema.ts';

export const aRequest: RequestDocument = {
  format: requestFormat,
  kind: 'shortlist',
  dealer: 'demo-lot',
  answers: { format: 'acre-to-axle/answers/1', land: { slope: 'flat' }, tasks: [{ task: 'mow-lawn', must: true }] },
  address: 'ann@buyer.example',
  consent: { mail: true, dealerCopy: true, statistics: false },
  contact: { name: 'Ann O’Neill-Müller', phone: '+1 (555) 010-0199', goodTime: 'evening' },
  language: 'en',
  units: 'us',
  seen: { catalogue: { id: 'demo-lot', version: 'sha256:abc' }, rules: { version: '1' } },
};
