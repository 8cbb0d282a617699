import { answersOf, type Answers } from '../answers/answers.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import { catalogueOf } from '../catalogue/catalogue.ts';
import type { CatalogueDocument } from '../catalogue/schema.ts';
import { notCleared } from '../needs/all.ts';
import type { Need } from '../needs/need.ts';
import { owningOf } from '../ranking/owning.ts';
import { rank, type Placed, type Ranking, type Weighed } from '../ranking/rank.ts';
import { figureIds, rulesVersion } from '../trade/book.ts';
import { toMillionth } from '../units/compare.ts';
import { becauseOf } from './because.ts';
import { changesOf } from './changes.ts';
import { cautionsOf } from './cautions.ts';
import { contrast, sideOf } from './contrast.ts';
import { packageEntry } from './package-entry.ts';
import { reasonsOf } from './reasons-of.ts';
import { robustnessEntries } from './robustness-entry.ts';
import { waysOut } from './ways-out.ts';
import { shortlistFormat, type Entry, type Shortlist, type UnitEntry } from './schema.ts';
import { tradeOffsOf } from './trade-offs.ts';

function boundOf(need: Need): Pick<Shortlist['needs'][number], 'bound'> {
  const bound = (is: 'at-least' | 'at-most', value: number, unit: string) => ({ bound: { is, value, unit } });
  if (need.capability === 'price') return bound('at-most', need.atMost, 'money');
  if (need.capability === 'instalment') return bound('at-most', need.atMost, 'money');
  if (need.capability === 'tow.mass') return bound('at-least', need.towed, 'kg');
  if ((need.capability === 'loader.lift' || need.capability === 'hitch.lift') && need.load !== undefined) return bound('at-least', need.load, 'kg');
  if (need.capability === 'slope.tip-angle') return bound('at-least', need.slope, 'rad');
  if (need.capability === 'mower.hours') return need.atMost === undefined ? {} : bound('at-most', need.atMost, 's');
  if ('atLeast' in need && need.atLeast !== undefined) return bound('at-least', need.atLeast, 'm');
  if ('atMost' in need) return bound('at-most', need.atMost, need.capability.startsWith('trailer.p') || need.capability.startsWith('trailer.t') ? 'kg' : 'm');
  return {};
}

const needEntry = (need: Need): Shortlist['needs'][number] => ({
  id: need.id,
  capability: need.capability,
  must: need.must,
  safety: need.safety,
  ...(need.task && { task: need.task }),
  from: [...need.from],
  ...(need.rule && { rule: need.rule }),
  ...boundOf(need),
  working: [...need.working],
});

function contributionsOf({ values }: Weighed, { weights }: Ranking): Entry['contributions'] {
  return Object.fromEntries(
    Object.entries(values).map(([criterion, { value, figure, unit, anchors, missing, workings }]) => {
      const weight = weights[criterion as keyof typeof weights] ?? 0;
      return [criterion, {
        weight: toMillionth(weight),
        ...(value !== undefined && { value: toMillionth(value) }),
        points: toMillionth(weight * (value ?? 0)),
        ...(figure !== undefined && { figure }),
        ...(unit && { unit }),
        ...(anchors && { anchors: [...anchors] as [number, number] }),
        ...(missing && missing.length > 0 && { missing: [...missing] }),
        ...(workings && { working: [...workings] }),
      }];
    }),
  );
}

const unitEntries = ({ units }: Placed, ranking: Ranking): UnitEntry[] =>
  units.map(({ unit, weighed }) => ({
    unit: unit.id,
    verdict: weighed.standing,
    score: weighed.score,
    package: packageEntry(weighed, ranking.world),
    // A unit leaves the working out: the entry of its machine has it.
    reasons: reasonsOf(weighed, ranking).map(({ working: _working, ...reason }) => reason),
    because: becauseOf(weighed.judged, weighed.standing === 'ruled-out' ? 'failed' : 'unknown'),
  }));

/** What it costs to own, by the year and by the hour, or what is missing to say so. */
function owningEntry(best: Weighed, answers: Answers, world: Ranking['world']): Entry['owning'] {
  const owning = owningOf(best, answers, world);
  if (!('parts' in owning)) return { missing: [...owning] };
  const { workings, parts, ...rest } = owning;
  return { ...rest, parts: { ...parts }, working: [...workings] };
}

const entryOf = (placed: Placed, index: number, ranking: Ranking, answers: Answers): Entry => {
  const { best, machine } = placed;
  return {
    machine: machine.id,
    rank: index + 1,
    score: best.score,
    contributions: contributionsOf(best, ranking),
    ...(placed.standing === 'stands' && index > 0 && { behind: contrast(sideOf(ranking.standing[0]!), sideOf(placed), ranking) }),
    ...(best.build.unit && { unit: best.build.unit.id }),
    package: packageEntry(best, ranking.world),
    owning: owningEntry(best, answers, ranking.world),
    reasons: reasonsOf(best, ranking),
    because: becauseOf(best.judged, 'unknown'),
    units: unitEntries(placed, ranking),
  };
};

function unknownsOf(ranking: Ranking): Shortlist['unknowns'] {
  return [...ranking.standing, ...ranking.toAsk].flatMap(({ machine, best }) =>
    best.judged.flatMap(({ need, verdict }) => (verdict.outcome === 'unknown'
      ? [{
          machine: machine.id,
          ...(best.build.unit && { unit: best.build.unit.id }),
          need: need.id,
          missing: [...(verdict.missing ?? [])],
        }]
      : [])),
  );
}

/**
 * The whole way: a dealer's catalogue and a buyer's answers, both already read and without faults, to the
 * shortlist. Pure and deterministic: the same documents give the same bytes everywhere.
 *
 * @param unknownTasks  tasks of a newer version that the reader set aside; each becomes a caution
 * @param catalogue  the same catalogue in SI, from whoever reckons with it again: what was judged is then remembered
 */
export function shortlist(
  catalogueDocument: CatalogueDocument, answersDocument: AnswersDocument, unknownTasks: readonly string[] = [], catalogue = catalogueOf(catalogueDocument),
): Shortlist {
  const answers = answersOf(answersDocument);
  const ranking = rank(catalogue, answers);
  const { world, needs } = ranking;
  const robustness = robustnessEntries(ranking, answers);
  return {
    format: shortlistFormat,
    catalogue: {
      id: catalogueDocument.id,
      ...(catalogueDocument.version && { version: catalogueDocument.version }),
      asOf: catalogueDocument.asOf,
    },
    rules: { version: rulesVersion, dealers: figureIds.filter((id) => world.book.isDealers(id)) },
    needs: needs.map(needEntry),
    notCleared: notCleared(answers, world.book).map((each) => ({ ...each, tasks: [...each.tasks], from: [...each.from] })),
    shortlist: ranking.standing.map((placed, index) => ({ ...entryOf(placed, index, ranking, answers), ...robustness[index] })),
    tradeOffs: tradeOffsOf(ranking),
    askDealer: ranking.toAsk.map((placed, index) => entryOf(placed, index, ranking, answers)),
    ruledOut: ranking.ruledOut.map((placed) => ({
      machine: placed.machine.id,
      because: becauseOf(placed.inGeneral.judged, 'failed'),
      units: unitEntries(placed, ranking),
    })),
    changes: changesOf(ranking, catalogue, answers),
    ...waysOut(ranking, catalogue, answers),
    cautions: cautionsOf(answers, needs, unknownTasks, world.book),
    unknowns: unknownsOf(ranking),
  };
}
