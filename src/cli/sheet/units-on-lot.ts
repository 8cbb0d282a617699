import type { TaskId } from '../../answers/schema.ts';
import { sayPackagePrice } from '../../reasons/say-package-price.ts';
import { sayBecause, sayReason } from '../../reasons/say.ts';
import type { Entry, UnitEntry } from '../../reasons/schema.ts';
import { showAmount } from '../../units/show.ts';
import { item, paragraph } from './layout.ts';
import { numberIn, unitOf, type Scene } from './scene.ts';

/** Year, hours and price of a unit, as far as they are known. */
export function unitFacts(id: string, scene: Scene): string {
  const { year, hours, price } = unitOf(scene, id);
  const { words, reader } = scene.voice;
  return [
    ...(year === undefined ? [] : [String(year)]),
    ...(hours === undefined ? [] : [words.result.hours(numberIn(scene, hours))]),
    ...(price === undefined ? [] : [showAmount(price.value, 'money', reader)]),
  ].join(', ');
}

export const taskOfNeed = ({ result }: Scene, id: string): TaskId | undefined => result.needs.find((need) => need.id === id)?.task;

type Told = Pick<Entry, 'unit' | 'because'>;

function unitLines({ unit, verdict, because, reasons, ...entry }: UnitEntry, told: Told, scene: Scene): string[] {
  const { words } = scene.voice;
  const facts = unitFacts(unit, scene);
  const price = verdict === 'ruled-out' ? '' : `. ${words.result.package}${words.joins.colon}${sayPackagePrice(entry.package, scene.voice)}`;
  // What is true of this unit alone; of the one the machine goes by it has been said above.
  const own = unit === told.unit ? [] : reasons.filter(({ id }) => id.startsWith('unit.') && id !== 'unit.service-record');
  const saidAbove = new Set(told.because.map((each) => JSON.stringify(each)));
  const causes = because.filter((each) => !saidAbove.has(JSON.stringify(each)));
  const outcome = verdict === 'ruled-out' ? 'failed' : 'unknown';
  return [
    ...item('-', `${unit}${facts && ` (${facts})`}${words.joins.colon}${words.result.unitVerdict[verdict]}${price}`, 3),
    ...causes.flatMap((each) => item('', sayBecause(each, outcome, taskOfNeed(scene, each.need), scene.voice), 4)),
    ...own.flatMap((reason) => item('', sayReason(reason, scene.voice), 4)),
  ];
}

/** Every unit of a machine on the lot with its verdict. */
export function unitsOnLot({ units, ...told }: Entry, scene: Scene): string[] {
  const { result } = scene.voice.words;
  return units.length === 0
    ? paragraph(result.noUnits, 3)
    : [...paragraph(result.unitsHeading(units.length), 3), ...units.flatMap((unit) => unitLines(unit, told, scene))];
}
