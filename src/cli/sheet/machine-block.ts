import type { Criterion } from '../../answers/schema.ts';
import { decisiveSums } from '../../reasons/decisive.ts';
import { sayTradeOff } from '../../reasons/say-contrast.ts';
import { sayRobustness } from '../../reasons/say-robustness.ts';
import { saySpecs } from '../../reasons/say-specs.ts';
import { sayFrame, sayOwning, sayReason } from '../../reasons/say.ts';
import type { Entry, Reason } from '../../reasons/schema.ts';
import { owningParts } from '../../ranking/owning.ts';
import { showAmount } from '../../units/show.ts';
import { item, paragraph, table } from './layout.ts';
import { packageLines } from './package.ts';
import { machineOf, numberIn, type Scene } from './scene.ts';
import { unitFacts, unitsOnLot } from './units-on-lot.ts';
import { workingLines, type Reckoning } from './working.ts';

/** Make, frame, tier and years of a machine. */
export function machineFacts(id: string, scene: Scene): string {
  const { make, frame, tier, years } = machineOf(scene, id);
  const { own, voice } = scene;
  const made = years.meant === 'model' ? own.modelYears : own.builtIn;
  return [make, sayFrame(frame, voice), voice.words.tiers[tier], made(years.from, years.to)].join(', ');
}

/** What would be said again: additions stand with the price, that they stand and their condition above them. */
const saidElsewhere = ({ id }: Reason) => id.startsWith('addition.') || id === 'standing.musts-met' || id === 'condition.unseen';

/** Needs that every machine here meets are named, not told; a slope is always told, for what is said with it. */
const isNamed = ({ id, kind, need = '' }: Reason, { decisive, voice }: Scene) =>
  kind === 'for' && !decisive.has(need) && need in voice.words.needs && !id.startsWith('slope.tip-angle');

function reasonLines(title: string, mark: string, kind: Reason['kind'], entry: Entry, scene: Scene): string[] {
  const { own, voice: { words } } = scene;
  const reasons = entry.reasons.filter((reason) => reason.kind === kind && !saidElsewhere(reason));
  if (reasons.length === 0) return [];
  const named = reasons.filter((reason) => isNamed(reason, scene)).map(({ need }) => words.needs[need!]!);
  const sentences = new Set(reasons.filter((reason) => !isNamed(reason, scene)).map((reason) => sayReason(reason, scene.voice)));
  return [
    '',
    ...paragraph(title, 3),
    ...[...sentences].flatMap((each) => item(mark, each, 3)),
    ...(named.length > 0 ? item(mark, own.alsoMet(words.list(named)), 3) : []),
  ];
}

/** Points by criterion, the weightiest first, and what they add up to. */
function scoreLines(entry: Entry, scene: Scene): string[] {
  const { contributions, score } = entry;
  const { own, voice: { words } } = scene;
  const ofHundred = (share: number) => numberIn(scene, Math.round(share * 1000) / 10, 1);
  const parts = Object.entries(contributions).sort(([, a], [, b]) => b.weight - a.weight);
  const rows = parts.map(([criterion, { points, weight }]) =>
    [words.criteria[criterion as Criterion], words.result.points(ofHundred(points), ofHundred(weight))]);
  const unknown = parts.flatMap(([criterion, { missing = [] }]) => (missing.length === 0 ? [] : item(
    '?', `${words.criteria[criterion as Criterion]}${words.joins.colon}${own.notKnown(saySpecs(missing, words))}`, 3,
  )));
  return [
    '', ...paragraph(words.result.scoreHeading, 3), ...table([...rows, [own.total, words.result.points(ofHundred(score), ofHundred(1))]], 5), ...unknown,
    ...sayRobustness(entry, scene.result.shortlist.length, scene.voice).flatMap((each) => paragraph(each, 3)),
  ];
}

/** What it costs to own and run, by its parts. */
function owningLines({ owning }: Entry, scene: Scene): string[] {
  const { voice } = scene;
  const { result } = voice.words;
  return [
    '', ...paragraph(result.owningHeading, 3), ...paragraph(sayOwning(owning, voice), 3),
    ...('missing' in owning ? [] : table(owningParts.map((part) => [result.owningParts[part], showAmount(owning.parts[part]!, 'money', voice.reader)]), 5)),
  ];
}

/** The sums behind the needs that tell the machines apart. */
const reckonings = (entry: Entry, { decisive, voice: { words } }: Scene): Reckoning[] =>
  decisiveSums(entry, decisive).map(({ need, sums }) => ({ of: words.needs[need] ?? need, sums }));

/** One machine that stands, or that the dealer must be asked about: reasons, price, score, units and working. */
export function machineBlock(entry: Entry, scene: Scene): string[] {
  const { own, voice: { nameOf, words } } = scene;
  const reckoned = entry.unit ? `${own.reckonedFor(entry.unit)}${words.joins.colon}${unitFacts(entry.unit, scene)}` : own.reckonedTypical;
  return [
    '',
    ...item(`${entry.rank}.`, nameOf(entry.machine)),
    ...paragraph(machineFacts(entry.machine, scene), 3),
    ...scene.result.tradeOffs.filter(({ machines }) => machines.includes(entry.machine)).flatMap((each) => paragraph(sayTradeOff(each, scene.voice), 3)),
    ...paragraph(reckoned, 3),
    ...reasonLines(words.result.why, '+', 'for', entry, scene),
    ...reasonLines(words.result.drawbacks, '-', 'against', entry, scene),
    ...reasonLines(words.result.unknowns, '?', 'unknown', entry, scene),
    ...reasonLines(own.mind, '!', 'caution', entry, scene),
    '',
    ...packageLines(entry.package, scene),
    ...owningLines(entry, scene),
    ...scoreLines(entry, scene),
    '',
    ...unitsOnLot(entry, scene),
    ...workingLines([
      ...reckonings(entry, scene), ...('working' in entry.owning ? [{ of: words.result.owningHeading, sums: entry.owning.working }] : []),
    ], 3, scene),
  ];
}
