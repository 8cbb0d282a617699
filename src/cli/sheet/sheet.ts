import { namesIn, readerFor, sayReason } from '../../reasons/say.ts';
import type { Entry } from '../../reasons/schema.ts';
import { ruleBook } from '../../trade/book.ts';
import type { Words } from '../../reasons/words/words.ts';
import { cautions, closing, notCleared } from './closing.ts';
import { decisiveNeeds } from './decisive.ts';
import { demands } from './demands.ts';
import { heading, paragraph, table } from './layout.ts';
import { machineBlock } from './machine-block.ts';
import { notesOf } from './notes.ts';
import { priceOf } from './package.ts';
import { changes, ruledOut } from './ruled-out.ts';
import type { Scene } from './scene.ts';

const title = ({ catalogue, voice: { words } }: Scene): string[] => [
  ...paragraph(words.result.title),
  ...paragraph(catalogue.dealer.name),
  ...paragraph(words.result.asOf(catalogue.asOf)),
];

/** True of every machine, so it is said once above them all. */
const unseen = { id: 'condition.unseen', kind: 'unknown', weight: 0, figures: {} } as const;

/** The whole order in a few lines, for whoever reads no further. */
const atAGlance = (entries: readonly Entry[], scene: Scene): string[] => (entries.length < 2 ? [] : [
  '',
  ...table(entries.map((entry) => [`${entry.rank}. ${scene.voice.nameOf(entry.machine)}`, priceOf(entry.package, scene)])),
]);

function standing(scene: Scene): string[] {
  const { result, voice: { words } } = scene;
  const many = result.shortlist.length;
  return [
    ...heading(many === 0 ? words.result.none : words.result.standing(many)),
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
export function sheetOf(told: Pick<Scene, 'result' | 'catalogue' | 'answers'>, { words, units }: { words: Words; units: 'us' | 'metric' }): string[] {
  const { dealer, rules } = told.catalogue;
  const reader = readerFor(words, units, dealer.locale, dealer.currency);
  const voice = { words, reader, nameOf: namesIn(told.catalogue, reader) };
  const scene: Scene = { ...told, voice, notes: notesOf(voice, ruleBook(rules)), decisive: decisiveNeeds(told.result) };
  const parts = [title, notCleared, demands, standing, toAsk, ruledOut, changes].flatMap((part) => part(scene));
  // The notes come last of the reckoning, when every sum has been said.
  return [...parts, ...scene.notes.lines(), ...cautions(scene), ...closing(scene)];
}
