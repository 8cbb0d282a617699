import { sayPackagePrice } from '../../reasons/say-package-price.ts';
import { readerFor } from '../../reasons/asking-voice.ts';
import { decisiveNeeds } from '../../reasons/decisive.ts';
import { namesIn, sayFrame, sayReason } from '../../reasons/say.ts';
import type { Entry } from '../../reasons/schema.ts';
import { ruleBook } from '../../trade/book.ts';
import { dayIn } from '../../units/day.ts';
import type { Language } from '../languages.ts';
import { cautions, closing, notCleared } from './closing.ts';
import { demands } from './demands.ts';
import { heading, item, paragraph } from './layout.ts';
import { machineBlock } from './machine-block.ts';
import { notesOf } from './notes.ts';
import { changes, ruledOut } from './ruled-out.ts';
import { machineOf, type Scene } from './scene.ts';
import { waysOut } from './ways-out.ts';

const title = ({ catalogue, voice: { words, reader } }: Scene): string[] => [
  ...paragraph(words.result.title),
  ...paragraph(catalogue.dealer.name),
  ...paragraph(words.result.asOf(dayIn(reader.locale, catalogue.asOf))),
];

/** True of every machine, so it is said once above them all. */
const unseen = { id: 'condition.unseen', kind: 'unknown', weight: 0, figures: {} } as const;

/** The whole order in a few lines, for whoever reads no further. */
const atAGlance = (entries: readonly Entry[], scene: Scene): string[] => (entries.length < 2 ? [] : [
  '',
  ...entries.flatMap((entry) => item(`${entry.rank}.`, `${scene.voice.nameOf(entry.machine)}${scene.voice.words.joins.colon}${sayPackagePrice(entry.package, scene.voice)}`)),
]);

/** The answer in a line: the frame and the trim of the first machine. */
function lead(scene: Scene): string[] {
  const [first] = scene.result.shortlist;
  if (!first) return [];
  const { frame, tier } = machineOf(scene, first.machine);
  const { words } = scene.voice;
  return paragraph(words.result.lead(sayFrame(frame, scene.voice), words.tiers[tier]));
}

function standing(scene: Scene): string[] {
  const { result, voice: { words } } = scene;
  const many = result.shortlist.length;
  return [
    ...heading(many === 0 ? words.result.none : words.result.standing(many)),
    ...lead(scene),
    ...(many === 0 ? [] : paragraph(sayReason(unseen, scene.voice))),
    ...atAGlance(result.shortlist, scene),
    ...result.shortlist.flatMap((entry) => machineBlock(entry, scene)),
  ];
}

function toAsk(scene: Scene): string[] {
  const { result, voice: { words } } = scene;
  if (result.askDealer.length === 0) return [];
  return [
    ...heading(words.result.askHeading),
    ...paragraph(words.result.askExplained),
    ...result.askDealer.flatMap((entry) => machineBlock(entry, scene)),
  ];
}

/** A shortlist as a sheet of plain text, in the order a careful dealer would tell it. */
export function sheetOf(told: Pick<Scene, 'result' | 'catalogue' | 'answers'>, { words, own }: Language, units: 'us' | 'metric'): string[] {
  const { dealer, rules } = told.catalogue;
  const reader = readerFor(words, units, dealer.locale, dealer.currency);
  const voice = { words, reader, nameOf: namesIn(told.catalogue, reader) };
  const scene: Scene = { ...told, voice, own, notes: notesOf(voice, own, ruleBook(rules)), decisive: decisiveNeeds(told.result) };
  const parts = [title, notCleared, demands, standing, toAsk, waysOut, ruledOut, changes].flatMap((part) => part(scene));
  // The notes come last of the reckoning, when every sum has been said.
  return [...parts, ...scene.notes.lines(), ...cautions(scene), ...closing(scene)];
}
