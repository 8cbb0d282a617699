/** What ranking costs, against what it can't beat and against what it must: ratios in one run, answers checked equal. */
import { readFileSync } from 'node:fs';
import { answersOf } from '../../src/answers/answers.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { evaluate } from '../../src/ranking/evaluate.ts';
import { byPlace } from '../../src/ranking/order.ts';
import { rank } from '../../src/ranking/rank.ts';
import { sharesOf } from '../../src/ranking/robustness.ts';
import { weightingCount, weightingsOf } from '../../src/ranking/weightings.ts';
import { reasonsOf } from '../../src/reasons/reasons-of.ts';
import { robustnessEntries } from '../../src/reasons/robustness-entry.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { millionths } from '../../src/units/whole-parts.ts';
import { gatesOf, ruleEngine, typedLoop, weightedLoop } from './contenders.ts';
import { largeLot } from './large-lot.ts';
import { heapAfter, line, medianOf, ratio, shown } from './measure.ts';

const read = <T>(path: string) => JSON.parse(readFileSync(path, 'utf8')) as T;
const demo = read<CatalogueDocument>('demo/catalogue.json');
const buyer = read<AnswersDocument>('demo/answers/hay-and-barn.json');

/** The same buyer with a bale a little heavier each time, so that nothing is known from the time before. */
let bale = 600;
const another = (): AnswersDocument => ({
  ...buyer, tasks: buyer.tasks!.map((task) => (task.task === 'lift-bales' ? { ...task, weight: { value: (bale += 0.37), unit: 'lb' } } : task)),
});

function sameOrAbort(name: string, found: unknown, wanted: unknown) {
  if (JSON.stringify(found) !== JSON.stringify(wanted)) throw new Error(`${name}: the contenders differ, so their times mean nothing`);
}

/** Every unit judged by itself, as whoever knows nothing of units alike would. */
function oneByOne(document: CatalogueDocument) {
  const catalogue = catalogueOf(document);
  const answers = answersOf(buyer);
  const ranking = rank(catalogue, answers);
  const evaluations = (catalogue.units ?? []).map((unit) =>
    evaluate({ machine: catalogue.machines.find(({ id }) => id === unit.machine)!, unit }, ranking.needs, ranking.world));
  for (const { machine, units } of [...ranking.standing, ...ranking.toAsk, ...ranking.ruledOut]) {
    const places = units.map(({ unit, weighed }) => ({ id: unit.id, standing: weighed.standing, score: weighed.score, low: weighed.price?.low ?? Infinity }));
    sameOrAbort(`order of ${machine.id}`, places, [...places].sort(byPlace));
    for (const { unit, weighed } of units) {
      sameOrAbort(unit.id, weighed.standing, evaluations[(catalogue.units ?? []).indexOf(unit)]!.standing);
    }
  }
  return evaluations;
}

async function lotOf(count: number) {
  const document = largeLot(demo, count);
  const gates = gatesOf(oneByOne(count > 10_000 ? largeLot(demo, 10_000) : document));
  const engine = ruleEngine(gates);
  const passing = typedLoop(gates);
  sameOrAbort('gates', await engine(), passing);
  const floor = medianOf(() => typedLoop(gates));
  const general = count > 10_000 ? undefined : await medianOf(engine);

  const heap = heapAfter(() => catalogueOf(document));
  const catalogue = heap.made;
  const same = answersOf(buyer);
  rank(catalogue, same);
  const again = medianOf(() => rank(catalogue, same));
  const changed = medianOf(() => rank(catalogue, answersOf(another())));
  const first = (answers: AnswersDocument) => {
    const read = answersOf(answers);
    const ranking = rank(catalogue, read);
    robustnessEntries(ranking, read);
    return ranking.standing.slice(0, 3).map(({ best }) => reasonsOf(best, ranking));
  };
  const told = medianOf(() => first(another()));
  const cold = medianOf(() => rank(catalogueOf(document), same));
  const whole = count > 10_000 ? undefined : medianOf(() => shortlist(document, another(), [], catalogue));
  console.log(line(
    [String(count), 9], [shown(again), 10], [shown(changed), 10], [shown(told), 10], [shown(cold), 10], [shown(whole), 10],
    [shown(general), 11], [shown(count > 10_000 ? undefined : floor), 9], [general === undefined ? '–' : ratio(general, again), 11], [`${(heap.bytes / 1e6).toFixed(1)} MB`, 9],
  ));
}

function weightings(rows: number) {
  const values = Array.from({ length: rows }, (_, row) => Array.from({ length: 6 }, (_value, column) => ((row * 7_919 + column * 104_729) % 1_009) / 1_009));
  const columns = Array.from({ length: 6 }, (_, column) => Float64Array.from(values, (row) => Math.round(row[column]! * millionths)));
  const weights = weightingsOf(2, 4);
  const ours = sharesOf(values, 2);
  sameOrAbort('first places', ours.map(({ first }) => Math.round(first * weightingCount)), [...weightedLoop(columns, weights)]);
  const floor = medianOf(() => weightedLoop(columns, weights));
  const shares = medianOf(() => sharesOf(values, 2));
  console.log(line([String(rows), 9], [shown(shares), 12], [shown(floor), 12], [ratio(shares, floor), 8]));
}

console.log('\nRanking a lot, ms of processor time, median; twelve machines, 21 needs, the implements of the demo\n');
console.log(line(['units', 9], ['again', 10], ['changed', 10], ['+ reasons', 10], ['cold', 10], ['shortlist', 10], ['rule engine', 11], ['floor', 9], ['eng./again', 11], ['catalogue', 9]));
for (const count of [100, 1_000, 10_000, 100_000]) await lotOf(count);
console.log(`
again      the same answers once more: packages, gates, scores, order of all units
changed    one answer changed, so that a load is judged anew
+ reasons  the same with ${weightingCount} weightings and the reasons of the first three
cold       a catalogue never seen before
shortlist  one answer changed, and everything: reasons for all, what would change it, ways out
rule engine, floor: the verdict on the gates alone, with figures handed to them; neither chooses packages`);
console.log(`\n${weightingCount} weightings, ms of processor time, median\n`);
console.log(line(['machines', 9], ['shares', 12], ['bare loop', 12], ['ratio', 8]));
for (const rows of [12, 100, 1_000]) weightings(rows);
