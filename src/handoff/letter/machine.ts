import type { TaskId } from '../../answers/schema.ts';
import { reasonMarks } from '../../reasons/reason-marks.ts';
import { sayPackagePrice } from '../../reasons/say-package-price.ts';
import { sayAddition, sayBecause, sayReason } from '../../reasons/say.ts';
import type { Entry, PackageEntry, Reason, UnitEntry } from '../../reasons/schema.ts';
import { dayIn } from '../../units/day.ts';
import { formatNumber } from '../../units/formats.ts';
import { showAmount } from '../../units/show.ts';
import type { Extent } from './extent.ts';
import type { Telling } from './telling.ts';

/** Additions stand with the price; that it stands, and that nobody has seen it, is said above all of them. */
export const saidElsewhere = ({ id }: Reason) => id.startsWith('addition.') || id === 'standing.musts-met' || id === 'condition.unseen';

export const taskOf = ({ shortlist }: Telling, need: string): TaskId | undefined => shortlist.needs.find(({ id }) => id === need)?.task;

function reasonLines(entry: Entry, { reasons, drawbacks, details }: Extent, { voice }: Telling): string[] {
  const told = entry.reasons.filter((reason) => !saidElsewhere(reason));
  const said = (...kinds: Reason['kind'][]) => [...new Set(told.filter(({ kind }) => kinds.includes(kind)).map((reason) => `${reasonMarks[reason.kind]} ${sayReason(reason, voice)}`))];
  const fors = said('for');
  const left = fors.length - reasons;
  return [
    ...fors.slice(0, reasons), ...(details && left > 0 ? [`${reasonMarks.for} ${voice.words.result.moreReasons(left)}`] : []),
    ...said('against', 'unknown', 'caution').slice(0, drawbacks),
  ];
}

/** What must be bought besides, each with its price where that is known. */
export function additionTexts({ additions, unpriced }: PackageEntry, { voice }: Telling): string[] {
  const { result, joins } = voice.words;
  const isAsked = (what: string, id: string | undefined) => unpriced.some((each) => each.what === what && each.id === id);
  return additions.map((addition) => {
    const price = addition.price !== undefined ? showAmount(addition.price, 'money', voice.reader) : isAsked(addition.what, addition.id) ? result.priceUnknown : '';
    return `${sayAddition(addition, voice)}${price && `${joins.colon}${price}`}`;
  });
}

/** Year, hours, price and the day of the price, as far as they are known. */
function unitFacts(id: string, { catalogue, voice, own }: Telling): string {
  const unit = catalogue.units?.find((each) => each.id === id);
  const { reader, words } = voice;
  return [
    ...(unit?.year === undefined ? [] : [String(unit.year)]),
    ...(unit?.hours === undefined ? [] : [words.result.hours(formatNumber(unit.hours, reader.locale, { maximumFractionDigits: 0 }))]),
    ...(unit?.price === undefined ? [] : [showAmount(unit.price.value, 'money', reader)]),
    ...(unit?.price === undefined || unit.priceDate === undefined ? [] : [own.priceOf(dayIn(reader.locale, unit.priceDate))]),
  ].join(', ');
}

export function unitText({ unit, verdict, package: packaged, because }: UnitEntry, telling: Telling): string {
  const { voice } = telling;
  const { result, joins } = voice.words;
  const facts = unitFacts(unit, telling);
  const rest = verdict === 'stands' ? [`${result.package}${joins.colon}${sayPackagePrice(packaged, voice)}`]
    : because.slice(0, 1).map((each) => sayBecause(each, verdict === 'ruled-out' ? 'failed' : 'unknown', taskOf(telling, each.need), voice));
  return `${unit}${facts && ` (${facts})`}${joins.colon}${[result.unitVerdict[verdict], ...rest].join('. ')}`;
}

/** One machine that stands, or that the dealer must be asked about. */
export function machineLines(entry: Entry, extent: Extent, telling: Telling): string[] {
  const { voice } = telling;
  const { result, joins } = voice.words;
  const units = entry.units.length === 0 ? [result.noUnits] : [`${result.unitsHeading(entry.units.length)}${joins.colon.trimEnd()}`, ...entry.units.map((unit) => `* ${unitText(unit, telling)}`)];
  const name = `${entry.rank}. ${voice.nameOf(entry.machine)}`;
  const price = sayPackagePrice(entry.package, voice);
  // Where there is room for no more, a machine is a line.
  if (!extent.details && extent.reasons === 0) return [`${name}${joins.colon}${price}`];
  return [
    '', name, `${result.package}${joins.colon}${price}`,
    ...(extent.details ? additionTexts(entry.package, telling).map((each) => `* ${each}`) : []),
    ...reasonLines(entry, extent, telling),
    ...(extent.details ? units : []),
  ];
}
