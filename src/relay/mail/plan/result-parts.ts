import { taskOf } from '../../../handoff/letter/machine.ts';
import type { NotCleared } from '../../../needs/need.ts';
import { sayConflict, sayWay } from '../../../reasons/say-ways-out.ts';
import { sayBecause, sayCaution, sayFrame, sayReason } from '../../../reasons/say.ts';
import type { Entry } from '../../../reasons/schema.ts';
import type { MailInput } from '../input.ts';
import type { Block, Part } from '../parts.ts';
import type { Extent } from './extent.ts';
import { lineUpPart } from './line-up-part.ts';
import { machinePart } from './machine-part.ts';
import { tellingOf } from './telling-of.ts';

const block = (heading: string, lines: readonly string[]): Block[] => (lines.length > 0 ? [{ kind: 'block', heading, lines }] : []);

/** True of every machine, so it is said once above them all. */
const unseen = { id: 'condition.unseen', kind: 'unknown', weight: 0, figures: {} } as const;

/** What was left unsaid, or is beyond what can be cleared, by task: it heads every result. */
export function notCleared({ shortlist, voice: { words } }: MailInput): Block[] {
  const alerts = shortlist.notCleared.map(({ id, tasks }) => `! ${words.notCleared[id as NotCleared['id']](words.list(tasks.map((task) => words.tasks[task])))}`);
  return alerts.length > 0 ? [{ kind: 'block', heading: words.result.notClearedHeading, alerts, lines: [] }] : [];
}

/** Machines one by one, and the names of those there is no room for. */
function machines(entries: readonly Entry[], extent: Extent, input: MailInput): Part[] {
  const telling = tellingOf(input);
  const rest = entries.slice(extent.machines).slice(0, extent.others).map(({ rank, machine }) => `${rank}. ${input.voice.nameOf(machine)}`);
  return [
    ...entries.slice(0, extent.machines).map((entry) => machinePart(entry, extent, telling)),
    ...(rest.length > 0 ? [{ kind: 'block' as const, lines: rest }] : []),
  ];
}

function standing(extent: Extent, input: MailInput): Part[] {
  const { shortlist: { shortlist }, catalogue, voice } = input;
  const { result, tiers } = voice.words;
  const first = catalogue.machines.find(({ id }) => id === shortlist[0]?.machine);
  if (!first) return [{ kind: 'block', lines: [result.none] }];
  const none = (catalogue.units ?? []).length === 0 ? [result.stock.none] : [];
  const head = [result.standing(shortlist.length), result.lead(sayFrame(first.frame, voice), tiers[first.tier]), sayReason(unseen, voice), ...none];
  return [{ kind: 'block', lines: head }, ...machines(shortlist, extent, input)];
}

function waysOut({ shortlist, voice }: MailInput): Block[] {
  const { conflicts: { sets, complete }, waysOut: ways } = shortlist;
  const { waysOut: words } = voice.words;
  return [
    ...block(words.conflictsHeading, [...sets.map((set) => `– ${sayConflict(set, voice)}`), ...(complete ? [] : [words.moreConflicts])]),
    ...block(words.heading, ways.flatMap((each) => { const { way, hire } = sayWay(each, shortlist, voice); return [`* ${way}`, ...hire]; })),
  ];
}

function toAsk(extent: Extent, input: MailInput): Part[] {
  const { shortlist: { askDealer }, voice: { words: { result } } } = input;
  return askDealer.length === 0 ? [] : [...block(result.askHeading, [result.askExplained]), ...machines(askDealer, extent, input)];
}

function ruledOut({ others }: Extent, input: MailInput): Block[] {
  const { shortlist: { ruledOut: out }, voice } = input;
  const { result, joins } = voice.words;
  const telling = tellingOf(input);
  return block(result.ruledOutHeading(out.length), out.slice(0, others).map(({ machine, because }) =>
    `– ${voice.nameOf(machine)}${joins.colon}${because.map((each) => sayBecause(each, 'failed', taskOf(telling, each.need), voice)).join(' ')}`));
}

export const cautions = ({ shortlist, voice }: MailInput): Block[] => block(voice.words.result.cautionsHeading, shortlist.cautions.map((caution) => `! ${sayCaution(caution, voice)}`));

/** A shortlist as a buyer is told it: what stands, what it takes besides, what to ask, and why not the others. */
export function resultParts(extent: Extent, input: MailInput): Part[] {
  const drawn = lineUpPart(input);
  return [
    ...standing(extent, input), ...waysOut(input), ...toAsk(extent, input), ...ruledOut(extent, input), ...(drawn ? [drawn] : []),
  ];
}
