import { answersFormat, type AnswersDocument, type TaskDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument, UnitDocument } from '../../src/catalogue/schema.ts';
import type { Shortlist } from '../../src/reasons/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { lineUp, withUnits } from './catalogue-for-tests.ts';

export type Verdict = 'stands' | 'ask' | 'ruled-out';

/** Answers of a buyer who left nothing unsaid that safety asks: flat and open ground, a grown, experienced driver. */
export const saying = (more: Omit<Partial<AnswersDocument>, 'format'> = {}): AnswersDocument => ({
  format: answersFormat,
  drivers: { least: 'experienced', under18: false },
  ...more,
  land: { slope: 'flat', overhead: 'open', ...more.land },
});

/** Answers of such a buyer with tasks, each of them a must. */
export const mustDo = (...tasks: TaskDocument[]) => saying({ tasks: tasks.map((task) => ({ ...task, must: true })) });

/** Answers of such a buyer for whom some comforts are musts. */
export const mustHave = (comfort: NonNullable<AnswersDocument['comfort']>, more: Partial<AnswersDocument> = {}) =>
  saying({ ...more, comfort: { ...comfort, must: Object.keys(comfort) as NonNullable<typeof comfort.must> } });

/** Every machine of a shortlist with its verdict. */
export const verdicts = (result: Shortlist): Record<string, Verdict> => Object.fromEntries([
  ...result.shortlist.map(({ machine }) => [machine, 'stands'] as const),
  ...result.askDealer.map(({ machine }) => [machine, 'ask'] as const),
  ...result.ruledOut.map(({ machine }) => [machine, 'ruled-out'] as const),
]);

const withVerdict = (wanted: Verdict) => (catalogue: CatalogueDocument, answers: AnswersDocument): string[] => {
  const found = verdicts(shortlist(catalogue, answers));
  return catalogue.machines.map(({ id }) => id).filter((id) => found[id] === wanted);
};

/** Machines that stand, in the order of the line-up. */
export const standing = withVerdict('stands');
/** Machines to ask the dealer about, in the order of the line-up. */
export const toAsk = withVerdict('ask');
/** Machines ruled out, in the order of the line-up. */
export const out = withVerdict('ruled-out');

/** Needs because of which a machine is ruled out, or is to be asked about. */
export function because({ shortlist: standing, askDealer, ruledOut }: Shortlist, machine: string): string[] {
  const place = [...standing, ...askDealer, ...ruledOut].find((each) => each.machine === machine);
  if (!place) throw new Error(`there is no ${machine}`);
  return place.because.map(({ need }) => need);
}

/** Every unit of a shortlist. */
export const unitsIn = ({ shortlist: standing, askDealer, ruledOut }: Shortlist) =>
  [...standing, ...askDealer, ...ruledOut].flatMap(({ units }) => units);

/** How one unit, alone on the lot of the line-up, is judged. */
export function unitOf(unit: UnitDocument, answers: AnswersDocument, catalogue = lineUp()) {
  const found = unitsIn(shortlist(withUnits(catalogue, unit), answers)).find((each) => each.unit === unit.id);
  if (!found) throw new Error(`there is no ${unit.id}`);
  return found;
}

/** What a machine that isn't ruled out must be given, as its entry tells it. */
export function additionsOf(catalogue: CatalogueDocument, answers: AnswersDocument, machine: string) {
  const { shortlist: standing, askDealer } = shortlist(catalogue, answers);
  const entry = [...standing, ...askDealer].find((each) => each.machine === machine);
  if (!entry) throw new Error(`${machine} is ruled out`);
  return entry.package.additions;
}
