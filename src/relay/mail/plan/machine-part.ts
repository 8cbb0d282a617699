import { reasonMarks } from '../../../reasons/reason-marks.ts';
import { sayPackagePrice } from '../../../reasons/say-package-price.ts';
import { sayReason } from '../../../reasons/say.ts';
import type { Entry, Reason } from '../../../reasons/schema.ts';
import { additionTexts, saidElsewhere, unitText } from '../../../handoff/letter/machine.ts';
import type { Telling } from '../../../handoff/letter/telling.ts';
import type { Line, MachinePart } from '../parts.ts';
import { safeLink } from '../safe-link.ts';
import type { Extent } from './extent.ts';

const plain = (lines: readonly string[]): Line[] => lines.map((text) => ({ text }));

function photoOf(id: string, { catalogue, voice: { words } }: Telling): Pick<Line, 'links'> {
  const href = safeLink(catalogue.units?.find((each) => each.id === id)?.photo);
  return href === undefined ? {} : { links: [{ href, text: words.result.stock.photo(id) }] };
}

/** One machine that stands, or that the dealer must be asked about: price, what it takes besides, what speaks for it and against it, and its units. */
export function machinePart(entry: Entry, extent: Extent, telling: Telling): MachinePart {
  const { voice } = telling;
  const { result, joins } = voice.words;
  const told = entry.reasons.filter((reason) => !saidElsewhere(reason));
  const said = (...kinds: Reason['kind'][]) => [...new Set(told.filter(({ kind }) => kinds.includes(kind)).map((reason) => `${reasonMarks[reason.kind]} ${sayReason(reason, voice)}`))];
  const fors = said('for');
  const more = fors.length - extent.reasons;
  const units = entry.units.map(({ unit, ...rest }): Line => ({ text: `* ${unitText({ unit, ...rest }, telling)}`, ...photoOf(unit, telling) }));
  const groups = [
    { heading: result.additionsHeading, lines: plain(additionTexts(entry.package, telling).map((each) => `* ${each}`)) },
    { heading: result.why, lines: plain([...fors.slice(0, extent.reasons), ...(more > 0 ? [`${reasonMarks.for} ${result.moreReasons(more)}`] : [])]) },
    { heading: result.drawbacks, lines: plain(said('against').slice(0, extent.drawbacks)) },
    { heading: result.unknowns, lines: plain(said('unknown', 'caution').slice(0, extent.drawbacks)) },
    ...(!extent.units ? [] : units.length > 0 ? [{ heading: result.unitsHeading(units.length), lines: units }] : [{ heading: result.noUnits, lines: [] }]),
  ];
  return {
    kind: 'machine',
    name: `${entry.rank}. ${voice.nameOf(entry.machine)}`,
    price: `${result.package}${joins.colon}${sayPackagePrice(entry.package, voice)}`,
    groups: groups.filter(({ heading, lines }) => lines.length > 0 || heading === result.noUnits),
  };
}
