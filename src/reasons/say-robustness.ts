import type { Answers } from '../answers/answers.ts';
import { criteria, type Criterion } from '../answers/schema.ts';
import { ranksOf } from '../ranking/weights.ts';
import { formatNumber } from '../units/formats.ts';
import type { Voice } from './say.ts';
import type { Entry } from './schema.ts';
import type { Often } from './words/words.ts';

/** Of ten ways; close to all or to none it is said so, for a share of the sample is no finer than a hundredth or two. */
function oftenOf(share: number): Often {
  if (share >= 1) return 'every';
  if (share <= 0) return 'none';
  const ofTen = Math.round(share * 10);
  return ofTen === 0 ? 'hardly-any' : ofTen === 10 ? 'nearly-every' : ofTen;
}

/** More changes at once nobody keeps in mind; the document holds them all. */
const changesTold = 3;

/** What would put the second first: the weights that change most, the greatest change first, in as few digits as show it. */
function sayOvertaking({ contributions, overtakes }: Entry, { words, reader }: Voice): string {
  if (!overtakes) return words.robustness.neverFirst;
  const changes = criteria.flatMap((criterion) => {
    const from = contributions[criterion]?.weight, to = overtakes[criterion];
    return from === undefined || to === undefined ? [] : [{ criterion, from, to }];
  }).sort((a, b) => Math.abs(b.to - b.from) - Math.abs(a.to - a.from));
  for (const maximumFractionDigits of [0, 1]) {
    const format = (share: number) => formatNumber(100 * share, reader.locale, { maximumFractionDigits });
    const shown = changes.map(({ criterion, from, to }) => ({ criterion, from: format(from), to: format(to) })).filter(({ from, to }) => from !== to);
    // A weight is only ever gained where another is lost.
    if (shown.length < 2) continue;
    const told = shown.slice(0, changesTold).map(({ criterion, from, to }) => words.robustness.weightChange(words.criteria[criterion], from, to));
    return words.robustness.overtakes(words.list(told), shown.length > changesTold);
  }
  return words.robustness.overtakesByAHair;
}

/**
 * How firm the place of a machine is, in sentences: ties, how often it comes first or among the first three,
 * and what would put the second first. Nothing where it stands alone, or doesn't stand.
 */
export function sayRobustness(entry: Entry, standing: number, voice: Voice): string[] {
  const { words: { list, robustness }, nameOf } = voice;
  const { firstShare, topThreeShare, tiedWith = [], rank } = entry;
  if (firstShare === undefined || topThreeShare === undefined || standing < 2) return [];
  const tied = tiedWith.length > 0 ? [robustness.tiedWith(list(tiedWith.map((id) => nameOf(id))))] : [];
  return [
    ...tied,
    robustness.first(oftenOf(firstShare)),
    ...(standing > 3 && firstShare < 1 ? [robustness.topThree(oftenOf(topThreeShare))] : []),
    ...(rank === 2 && tied.length === 0 ? [sayOvertaking(entry, voice)] : []),
  ];
}

/** Where the weights come from: the order the buyer gave, as far as it can tell machines apart here. */
export function sayWeights({ contributions }: Pick<Entry, 'contributions'>, { priorities = [] }: Pick<Answers, 'priorities'>, { words }: Voice): string {
  const { ranked } = ranksOf(priorities, Object.keys(contributions) as Criterion[]);
  return ranked.length > 0 ? words.result.weightsFrom(words.list(ranked.map((criterion) => words.criteria[criterion]))) : words.result.weightsAlike;
}
