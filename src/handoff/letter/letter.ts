import type { NotCleared } from '../../needs/need.ts';
import { sayTerms } from '../../reasons/say-terms.ts';
import { sayConflict, sayWay } from '../../reasons/say-ways-out.ts';
import { sayBecause, sayCaution, sayFrame, sayReason } from '../../reasons/say.ts';
import { dayIn } from '../../units/day.ts';
import { onOneLine } from '../one-line.ts';
import { whole, type Extent } from './extent.ts';
import { machineLines, taskOf } from './machine.ts';
import type { Telling } from './telling.ts';

/** A shortlist as text for a mail: each line a paragraph, or blank. */
export interface Letter {
  subject: string;
  lines: readonly string[];
}

const section = (heading: string, lines: readonly string[]) => (lines.length > 0 ? ['', heading.toUpperCase(), ...lines] : []);

/** True of every machine, so it is said once above them all. */
const unseen = { id: 'condition.unseen', kind: 'unknown', weight: 0, figures: {} } as const;

const head = ({ details }: Extent, { catalogue, voice: { words, reader } }: Telling) =>
  [words.result.title, ...(details ? [catalogue.dealer.name] : []), words.result.asOf(dayIn(reader.locale, catalogue.asOf))];

function notCleared({ details }: Extent, { shortlist, voice: { words } }: Telling): string[] {
  const { result, list, joins, tasks: names } = words;
  const open = shortlist.notCleared;
  if (open.length === 0) return [];
  if (!details) return ['', `! ${result.notClearedHeading}${joins.colon}${list([...new Set(open.flatMap(({ tasks }) => tasks))].map((task) => names[task]))}`];
  return section(result.notClearedHeading, open.map(({ id, tasks }) => `! ${words.notCleared[id as NotCleared['id']](list(tasks.map((task) => names[task])))}`));
}

function standing(extent: Extent, telling: Telling): string[] {
  const { shortlist: { shortlist }, catalogue, voice } = telling;
  const { result, tiers } = voice.words;
  const first = catalogue.machines.find(({ id }) => id === shortlist[0]?.machine);
  if (!first) return ['', result.none];
  return [
    '', result.standing(shortlist.length), ...(extent.details ? [result.lead(sayFrame(first.frame, voice), tiers[first.tier])] : []), sayReason(unseen, voice),
    ...shortlist.slice(0, extent.machines).flatMap((entry) => machineLines(entry, extent, telling)),
  ];
}

function toAsk(extent: Extent, telling: Telling): string[] {
  const { shortlist: { askDealer }, voice: { words, nameOf } } = telling;
  const { result } = words;
  if (askDealer.length === 0 || extent.machines === 0) return [];
  if (!extent.details) return ['', `${result.askHeading}${words.joins.colon}${words.list(askDealer.map(({ machine }) => nameOf(machine)))}`];
  return section(result.askHeading, [result.askExplained, ...askDealer.flatMap((entry) => machineLines(entry, extent, telling))]);
}

function waysOut({ shortlist, voice }: Telling): string[] {
  const { conflicts: { sets, complete }, waysOut: ways } = shortlist;
  const { waysOut: words } = voice.words;
  return [
    ...section(words.conflictsHeading, [...sets.map((set) => `– ${sayConflict(set, voice)}`), ...(complete ? [] : [words.moreConflicts])]),
    ...section(words.heading, ways.flatMap((each) => { const { way, hire } = sayWay(each, shortlist, voice); return [`* ${way}`, ...hire]; })),
  ];
}

function ruledOut(telling: Telling): string[] {
  const { shortlist: { ruledOut: out }, voice } = telling;
  const { result, joins } = voice.words;
  return section(result.ruledOutHeading(out.length), out.map(({ machine, because }) =>
    `– ${voice.nameOf(machine)}${joins.colon}${because.map((each) => sayBecause(each, 'failed', taskOf(telling, each.need), voice)).join(' ')}`));
}

const cautions = ({ details }: Extent, { shortlist, voice, own }: Telling) => (details
  ? section(voice.words.result.cautionsHeading, shortlist.cautions.map((caution) => `! ${sayCaution(caution, voice)}`))
  : ['', `! ${own.cautionsInShort}`]);

/** The dealer's own terms in the language of the letter, or ours, and how to reach him. */
function closing({ details }: Extent, { catalogue: { dealer }, voice: { words } }: Telling): string[] {
  const reach = [dealer.phone, dealer.email, ...(details ? [dealer.address, dealer.url] : [])].filter((each) => each !== undefined);
  const terms = sayTerms(dealer, words);
  return [
    ...(details ? section(words.result.termsHeading, [terms]) : ['', terms]),
    '', `${words.result.contact}${words.joins.colon}${[dealer.name, ...reach].join(', ')}`,
  ];
}

/** A shortlist as a letter; where it tells less than the whole it says so, right at its head. */
export function letterOf(telling: Telling, extent: Extent = whole): Letter {
  const { catalogue, own, link } = telling;
  return {
    subject: onOneLine(own.subject(catalogue.dealer.name)),
    lines: [
      ...head(extent, telling),
      ...(extent === whole ? [] : ['', link ? own.shortened.withLink : own.shortened.alone]),
      ...notCleared(extent, telling),
      ...standing(extent, telling),
      ...waysOut(telling),
      ...toAsk(extent, telling),
      ...(extent.details ? ruledOut(telling) : []),
      ...cautions(extent, telling),
      ...closing(extent, telling),
      ...(link ? ['', own.goOn, link] : []),
    ].map(onOneLine),
  };
}
