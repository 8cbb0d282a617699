import { sayPackagePrice } from '../../reasons/say-package-price.ts';
import { sayAddition } from '../../reasons/say.ts';
import type { AdditionEntry, PackageEntry } from '../../reasons/schema.ts';
import { showAmount } from '../../units/show.ts';
import { item, paragraph } from './layout.ts';
import { numberIn, type Scene } from './scene.ts';

const money = (value: number, { voice }: Scene) => showAmount(value, 'money', voice.reader);

/** An implement is left out of the price of a buyer who asked for it without. */
const isCounted = ({ what }: AdditionEntry, { answers }: Scene) =>
  what !== 'implement' || !answers.budget?.includes || answers.budget.includes.includes('implements');

function addition(entry: AdditionEntry, unpriced: readonly AdditionEntry[], scene: Scene): string[] {
  const { own, voice: { words } } = scene;
  const asked = unpriced.some(({ what, id }) => what === entry.what && id === entry.id);
  const parts = [
    ...(entry.price === undefined ? [] : [money(entry.price, scene)]),
    ...(entry.labourHours ? [own.fittingHours(words.result.hours(numberIn(scene, entry.labourHours)))] : []),
    ...(asked ? [own.askPrice] : []),
    ...(isCounted(entry, scene) ? [] : [own.notCounted]),
  ];
  return item('-', `${sayAddition(entry, scene.voice)}${parts.length > 0 ? `${words.joins.colon}${parts.join(', ')}` : ''}`, 3);
}

/** Labour of all that is fitted, so that the parts of a price add up to it. */
function fitting(additions: readonly AdditionEntry[], scene: Scene): string[] {
  const rate = scene.catalogue.dealer.labourRate?.value;
  const hours = additions.filter((each) => isCounted(each, scene)).reduce((sum, { labourHours = 0 }) => sum + labourHours, 0);
  if (rate === undefined || hours === 0) return [];
  return item('-', scene.voice.words.result.fitting(numberIn(scene, hours), money(hours * rate, scene)), 3);
}

/** What machine and additions cost together, and what each of them adds. */
export function packageLines({ price, additions, unpriced }: PackageEntry, scene: Scene): string[] {
  const { own, voice: { words: { result, list, joins } } } = scene;
  const { includes } = scene.answers.budget ?? {};
  const alone = price && (price.machineLow === price.machineHigh
    ? money(price.machineLow, scene) : result.packageRange(money(price.machineLow, scene), money(price.machineHigh, scene)));
  return [
    ...paragraph(`${result.package}${joins.colon}${sayPackagePrice({ price, unpriced }, scene.voice)}`, 3),
    ...(alone && additions.length > 0 ? item('-', result.machineAlone(alone), 3) : []),
    ...additions.flatMap((entry) => addition(entry, unpriced, scene)),
    ...fitting(additions, scene),
    ...(includes ? paragraph(own.includes(list(includes.map((each) => own.included[each]))), 3) : []),
  ];
}
