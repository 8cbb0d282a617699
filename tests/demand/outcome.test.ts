import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { answersOf } from '../../src/answers/answers.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { outcomeOf } from '../../src/demand/outcome.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { buyers } from '../handoff/buyers.ts';

const lot = JSON.parse(readFileSync(new URL('../../demo/catalogue.json', import.meta.url), 'utf8')) as CatalogueDocument;
const bare: CatalogueDocument = { ...lot, units: [] };
const outcome = (catalogue: CatalogueDocument, answers: AnswersDocument) => outcomeOf(catalogueOf(catalogue), answersOf(answers));

test.each(buyers)('$name: the machine told first is the first of the shortlist with a unit that stands', ({ answers }) => {
  const { shortlist: standing } = shortlist(lot, answers);
  const first = standing.find(({ units }) => units.some(({ verdict }) => verdict === 'stands'));
  expect(outcome(lot, answers).first).toBe(first?.machine);
});

test.each(buyers)('$name: with an empty lot, what would serve him is what stands at its typical price', ({ answers }) => {
  const { served, would, lacked } = outcome(bare, answers);
  expect(served).toBe('none');
  expect(lacked).toEqual([]);
  expect(would).toEqual(shortlist(bare, answers).shortlist.map(({ machine }) => machine).sort());
});

test('what the nearest unit lacks is told, and bringing in what has it serves', () => {
  const heavy: AnswersDocument = { format: 'acre-to-axle/answers/1', land: { slope: 'flat', overhead: 'open' }, drivers: { least: 'experienced', under18: false }, tasks: [{ task: 'lift-pallets', must: true, weight: { value: 900, unit: 'lb' }, height: { value: 4, unit: 'ft' } }] };
  const small: CatalogueDocument = { ...lot, units: (lot.units ?? []).filter(({ machine }) => machine === 'rill') };
  const { served, lacked, would } = outcome(small, heavy);
  expect(served).toBe('none');
  expect(lacked).toContain('lift-pallets.weight');
  const brought: CatalogueDocument = { ...lot, units: (lot.units ?? []).filter(({ machine }) => machine === 'rill' || would.includes(machine)) };
  expect(outcome(brought, heavy).served).toBe('stands');
});
