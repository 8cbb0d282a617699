import type { Answers } from '../answers/answers.ts';
import type { Criterion } from '../answers/schema.ts';
import { overtakingWeights } from '../ranking/overtaking.ts';
import type { Ranking } from '../ranking/rank.ts';
import { sharesOf } from '../ranking/robustness.ts';
import { ranksOf } from '../ranking/weights.ts';
import { millionths } from '../units/whole-parts.ts';
import type { Entry } from './schema.ts';

type RobustnessEntry = Pick<Entry, 'firstShare' | 'topThreeShare' | 'tiedWith' | 'overtakes'>;

/**
 * How firm the order of those that stand is, one entry each: over all weightings that agree with what the
 * buyer ranked, by what each is worth at best. Only the second is told what would put it first.
 */
export function robustnessEntries({ standing, weights }: Pick<Ranking, 'standing' | 'weights'>, { priorities = [] }: Pick<Answers, 'priorities'>): RobustnessEntry[] {
  if (standing.length === 0) return [];
  const { ranked, rest } = ranksOf(priorities, Object.keys(weights) as Criterion[]);
  const inOrder = [...ranked, ...rest];
  const values = standing.map(({ best }) => inOrder.map((criterion) => best.values[criterion]?.value ?? 0));
  const shares = sharesOf(values, ranked.length);
  const overtaking = standing.length > 1 ? overtakingWeights(values, 1, inOrder.map((criterion) => weights[criterion]!), ranked.length) : undefined;
  return standing.map(({ machine, best }, index) => {
    const tiedWith = standing.filter((other) => other.machine !== machine && other.best.score === best.score).map((other) => other.machine.id);
    return {
      firstShare: shares[index]!.first,
      topThreeShare: shares[index]!.topThree,
      ...(tiedWith.length > 0 && { tiedWith }),
      ...(index === 1 && overtaking && {
        overtakes: Object.fromEntries(inOrder.map((criterion, column) => [criterion, overtaking[column]! / millionths])),
      }),
    };
  });
}
