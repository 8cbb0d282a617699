import type { CatalogueDocument } from '../../catalogue/schema.ts';
import { sayGap, sayLift, sayNeedState } from '../../reasons/say-contrast.ts';
import { sayPackagePrice } from '../../reasons/say-package-price.ts';
import { readerFor } from '../../reasons/asking-voice.ts';
import { namesIn, type Voice } from '../../reasons/say.ts';
import type { Contrast } from '../../reasons/schema.ts';
import type { Words } from '../../reasons/words/words.ts';
import { formatNumber } from '../../units/formats.ts';
import { heading, item, paragraph } from './layout.ts';

type Compared = Contrast['gates'][number] | Contrast['lacking']['needs'][number];

/** Why one of two stands above the other, as a sheet of plain text. */
export function comparisonOf(contrast: Contrast, catalogue: CatalogueDocument, words: Words, units: 'us' | 'metric'): string[] {
  const { dealer, machines, units: lot = [] } = catalogue;
  const reader = readerFor(words, units, dealer.locale, dealer.currency);
  const names = namesIn(catalogue, reader);
  const machineOf = (id: string) => (machines.some((machine) => machine.id === id) ? id : lot.find((unit) => unit.id === id)!.machine);
  // A unit has no name of its own: it goes by its machine's and its id, as in the sheet of the shortlist.
  const called = (id: string) => (machineOf(id) === id ? names(id) : `${names(machineOf(id))} (${id})`);
  const voice: Voice = { words, reader, nameOf: (id, machine) => (lot.some((unit) => unit.id === id) && machineOf(id) !== id ? called(id) : names(id, machine)) };

  const { result: { unitVerdict, points }, contrast: said, joins: { colon } } = words;
  const { above, by, sides, gates, criteria, lacking } = contrast;
  const below = sides.find(({ id }) => id !== above)!.id;
  const hundredths = (share: number) => formatNumber(100 * share, reader.locale, { maximumFractionDigits: 1 });

  const standing = sides.flatMap(({ id, standing: verdict, score, price }) => item('-', [
    `${called(id)}${colon}${unitVerdict[verdict]}`, points(hundredths(score), hundredths(1)), sayPackagePrice({ price }, voice),
  ].join(' · ')));
  const need = (compared: Compared) => [
    ...paragraph(words.needs[compared.need] ?? compared.need),
    ...sides.flatMap(({ id }, index) => item('-', `${called(id)}${colon}${sayNeedState(compared.of[index]!, compared, { ...voice, machine: machineOf(id) })}`, 2)),
  ];
  const part = (title: string, lines: readonly string[]) => (lines.length > 0 ? [...heading(title), ...lines] : []);

  return [
    ...paragraph(said.above(called(above), called(below))),
    ...paragraph(said.by[by]),
    '', ...standing,
    ...part(said.mustsHeading, gates.flatMap(need)),
    ...part(`${said.pointsHeading}${colon}${called(sides[0].id)}`, criteria.flatMap((gap) => item(gap.favours === sides[0].id ? '+' : '-', sayGap(gap, sides[0].id, contrast, voice)))),
    ...part(said.lackingHeading, [
      ...lacking.needs.flatMap(need),
      ...(lacking.criteria.length > 0 ? paragraph(said.lackingCriteria(words.list(lacking.criteria.map((each) => said.topics[each])))) : []),
    ]),
    ...part(`${said.liftHeading}${colon}${called(below)}`, sayLift(contrast, called(above), voice).flatMap((each) => item('-', each))),
  ];
}
